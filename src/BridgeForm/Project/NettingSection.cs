using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Netting hung between the caps and one rail a side, in place of more rails.</summary>
/// <param name="Opening">Side of a mesh as it is sold, metres.</param>
/// <param name="Mass">Kilograms on a square metre.</param>
/// <param name="IsStiff">Welded or woven of wire, its meshes keep their shape; else of cord.</param>
/// <param name="Bottom">From the deck's surface to the lower edge of the rail, along the post, metres.</param>
/// <param name="Solidity">Share of its outline that a wind blows against.</param>
/// <param name="Capacity">What one square foot of it holds pushed outward, as its maker declares, newtons; null: not given.</param>
/// <param name="Source">Where that comes from.</param>
public sealed record NetParameters(
    double Opening, double Mass, bool IsStiff, double Bottom, double Solidity, double? Capacity, string Source)
{
    /// <summary>The rail that carries its lower edge.</summary>
    public const int Rails = 1;

    /// <summary>
    /// Largest ball that goes through a mesh, metres: of cord the mesh gives until it is a circle of the same girth.
    /// </summary>
    public double Passes => IsStiff ? Opening : 4 * Opening / Math.PI;
}

/// <summary>Keys under <c>guard.net</c>, how they are read, and whether it is the only one to fill the guard.</summary>
internal static class NettingSection
{
    /// <summary>The mapping.</summary>
    public const string Path = "guard.net";

    private const string Bottom = Path + ".bottom";

    public static KeySpec Keys => Define.OptionalMap(
        "net",
        "Netting hung from the caps to one rail a side, in place of more rails; guard.rails then says of what that one is",
        [
            Define.Length("opening", "Side of a mesh, as it is sold", "1/4 in", "12 in").Needed("2 in", "50 mm"),
            Define.Quantity(QuantityKind.MassPerArea, "mass", "Mass per area", "0.005 lb/ft2", "5 lb/ft2")
                .Needed("0.1 lb/ft2", "0.5 kg/m2"),
            Define.Choice("kind", "Of cord, whose meshes give, or of wire, whose meshes keep their shape", "cord", "cord", "wire"),
            Define.Length("bottom", "From the deck's surface to the rail's lower edge, along the post", "0 in", "12 in", "2 in", "50 mm"),
            Define.Quantity(
                QuantityKind.Share, "solidity", "Share of its outline that a wind blows against; ice and leaves close it", "1 %", "100 %",
                "100 %"),
            Define.Quantity(
                QuantityKind.Force, "capacity", "Push on one square foot that it holds between its lacings, as its maker declares",
                "1 lbf", "10000 lbf"),
            Define.Text("source", "Where the capacity comes from", "the project file"),
        ]);

    public static NetParameters? Read(FileValues v) => v.Given(Path)
        ? new NetParameters(
            v.Number(Path + ".opening"), v.Number(Path + ".mass"), v.Text(Path + ".kind") is "wire", v.Number(Bottom),
            v.Number(Path + ".solidity"), v.NumberOrNull(Path + ".capacity"), v.Text(Path + ".source"))
        : null;

    public static void Check(CheckedFile f)
    {
        if (f.Parameters.Guard.Net is not { } net || !f.Good(Path))
        {
            return;
        }

        foreach (var other in (string[])["guard.rails.count", "guard.rails.heights"])
        {
            if (f.Values.Given(other))
            {
                f.Stop(FaultCode.RailsAndNet, Path, $"net: {other} fills the guard with rails as well; to keep the net on its one rail "
                    + $"take out {other}, to keep the rails take out {Path}");
            }
        }

        if (f.Values.Given(PicketSection.Path))
        {
            f.Stop(FaultCode.PicketsAndNet, Path, $"net: {PicketSection.Path} fills the guard as well; to keep the net take out "
                + $"{PicketSection.Path}, to keep the pickets take out {Path}");
        }
        else if (f.Good(
            Bottom, "guard.rails.section", "deck.layout", "deck.board.section", "deck.stringer.section", "frames.post.length",
            "frames.post.lean"))
        {
            Room(f, net);
        }
    }

    private static void Room(CheckedFile f, NetParameters net)
    {
        var p = f.Parameters;
        var room = p.Frames.Post.Length - (p.Deck.Thickness / Elementary.Cos(p.Frames.Post.Lean));
        if (net.Bottom + p.Guard.Rail.Width > room - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.NetWithoutRoom, Bottom, $"bottom: with '{f.Size(net.Bottom)}' the net's rail of {f.Size(p.Guard.Rail.Width)} "
                + $"does not fit between deck and head, {f.Size(Math.Max(0, room))} along the post; write less, a narrower rail or longer "
                + "posts", "guard.rails.section", "frames.post.length");
        }
    }
}
