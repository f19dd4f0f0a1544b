using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Upright pickets on the inner faces of two rails, in place of more rails.</summary>
/// <param name="Section">Its wide face looks inward. Metres.</param>
/// <param name="Gap">Widest clear gap between two, and the gaps from deck to lower rail and from upper rail to head, metres.</param>
/// <param name="Stock">Stock that they are cut from.</param>
public sealed record PicketParameters(Section Section, double Gap, string Stock)
{
    /// <summary>Rails that carry them.</summary>
    public const int Rails = 2;
}

/// <summary>Keys under <c>guard.pickets</c>, how they are read, and whether they are the only ones to fill the guard.</summary>
internal static class PicketSection
{
    /// <summary>The mapping.</summary>
    public const string Path = "guard.pickets";

    private const string Gap = Path + ".gap";
    private const string Spacing = Path + ".spacing";

    public static KeySpec Keys => Define.OptionalMap(
        "pickets",
        "Upright sticks between two rails, in place of more rails; guard.rails then says of what these two are",
        [
            Define.Section("section", "Its wide face looks inward", "2x2", "45 x 45 mm"),
            Define.Length(
                "gap", "Widest clear gap between two; as much from deck to lower rail and from upper rail to the posts' heads", "1/2 in",
                "12 in", "3-1/2 in", "89 mm"),
            Define.Length("spacing", "Middle to middle at most, in place of gap", "1 in", "24 in") with
            { DefaultNote = "from gap", Example = "5 in", MetricExample = "130 mm" },
            Define.StockName("cedar"),
        ]) with
    { OneOf = ["gap", "spacing"] };

    public static PicketParameters? Read(FileValues v)
    {
        if (!v.Given(Path))
        {
            return null;
        }

        var section = v.Section(Path + ".section");
        return new PicketParameters(
            section, v.Given(Spacing) ? v.Number(Spacing) - section.Width : v.Number(Gap), v.Text(Path + ".stock"));
    }

    public static void Check(CheckedFile f)
    {
        if (f.Parameters.Guard.Pickets is not { } pickets || !f.Good(Path))
        {
            return;
        }

        foreach (var other in (string[])["guard.rails.count", "guard.rails.heights"])
        {
            if (f.Values.Given(other))
            {
                f.Stop(FaultCode.RailsAndPickets, Path, $"pickets: {other} fills the guard with rails as well; to keep the pickets on "
                    + $"their two rails take out {other}, to keep the rails take out {Path}");
            }
        }

        if (f.Good(Spacing, Path + ".section") && pickets.Gap < 0)
        {
            f.Stop(FaultCode.PicketsOverlap, Spacing, $"spacing: pickets of {f.Size(pickets.Section.Width)} lie on each other at "
                + $"'{f.Written(Spacing)}'; write at least {f.AtLeast(pickets.Section.Width)}, or a narrower section");
        }
        else if (f.Good(
            Gap, Spacing, Path + ".section", "guard.rails.section", "deck.layout", "deck.board.section", "deck.stringer.section",
            "frames.post.length", "frames.post.lean"))
        {
            Room(f, pickets);
        }
    }

    private static void Room(CheckedFile f, PicketParameters pickets)
    {
        var p = f.Parameters;
        var room = p.Frames.Post.Length - (p.Deck.Thickness / Elementary.Cos(p.Frames.Post.Lean));
        var needed = PicketParameters.Rails * (pickets.Gap + p.Guard.Rail.Width);
        if (needed > room - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.PicketsWithoutRoom, f.Values.Given(Spacing) ? Spacing : Gap, $"pickets: their two rails of "
                + $"{f.Size(p.Guard.Rail.Width)} and the gaps under and over them, {f.Size(pickets.Gap)} each, do not fit between deck and "
                + $"head, {f.Size(Math.Max(0, room))} along the post; write narrower rails or a smaller gap, or longer posts",
                "guard.rails.section", "frames.post.length");
        }
    }
}
