using System.Collections.Immutable;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Roles;

namespace BridgeForm.Project;

/// <summary>A hole the user asks for in every member of a kind. Metres.</summary>
/// <param name="Part">Which members: of a role that takes holes.</param>
/// <param name="Face">The face the bit enters.</param>
/// <param name="FromEnd">Along the piece from the named end: the long point of the foot end (left end of a base) or of the far end.</param>
/// <param name="FromFarEnd">Measured from the head (right end of a base) instead of the foot.</param>
/// <param name="Across">From the middle of the face.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Depth">Depth; null when through.</param>
public sealed record HoleParameters(
    Role Part, DrilledFace Face, double FromEnd, bool FromFarEnd, double Across, double Diameter, double? Depth);

/// <summary>Faces as people name them.</summary>
public enum DrilledFace
{
    /// <summary>A wide face (of a square base: the one towards A).</summary>
    Wide,

    /// <summary>The narrow face; of a base its top.</summary>
    Top,

    /// <summary>The opposite narrow face; of a base its bottom.</summary>
    Bottom,
}

/// <summary>Keys under <c>holes</c>, how they are read, and whether they lie in the wood.</summary>
internal static class HoleSection
{
    public static KeySpec Keys => Define.OptionalMap(
        "holes", "Holes of your own, in every member of a kind", [.. RoleTable.All.Where(r => r.TakesHoles).Select(HolesIn)]);

    /// <summary>All holes, by the order of the table of roles.</summary>
    public static ImmutableArray<HoleParameters> Read(FileValues v) =>
        [.. RoleTable.All.Where(r => r.TakesHoles).SelectMany(r => Holes(v, r))];

    public static void Check(CheckedFile f)
    {
        foreach (var facts in RoleTable.All.Where(r => r.TakesHoles))
        {
            var name = facts.Name;
            if (!f.Good($"frames.{name}.section", $"frames.{name}.length", "frames.base.flat", "frames.brace.foot", "holes." + name))
            {
                continue;
            }

            var holes = f.Parameters.Frames.Holes.Where(h => h.Part == facts.Role).ToList();
            var paths = f.Values.Items("holes." + name).ToList();
            for (var i = 0; i < paths.Count; i++)
            {
                One(f, paths[i], name, holes[i]);
            }
        }
    }

    private static KeySpec HolesIn(RoleFacts facts) =>
        HolesIn(facts.Name, char.ToUpperInvariant(facts.Many[0]) + facts.Many[1..], facts.Axis == RoleAxis.Across
        ? "From the middle of the face; on the side up, on top and bottom towards A"
        : "From the middle of the face; on the wide face outward from the bridge's middle, so that left and right are mirror images; on "
            + "top and bottom towards B");

    private static KeySpec HolesIn(string name, string description, string across) => Define.List(
        name,
        description,
        Define.Map(
            "",
            "A hole",
            [
                Define.Choice("face", "The face the bit enters; of a base, top and bottom as it lies", "wide", "wide", "top", "bottom"),
                Define.Length(
                    "from_end", "Along the piece from the long point of its foot (left end of a base)", "0 in", "40 ft", "3 in", "75 mm"),
                Define.Length("from_far_end", "Along the piece from the long point of its head (right end of a base), in place "
                    + "of from_end", "0 in", "40 ft"),
                Define.Length("across", across, "-12 in", "12 in", "0 in", "0 mm"),
                Define.Length("diameter", "Diameter", "1/16 in", "6 in").Needed("3/8 in", "10 mm"),
                Define.Length("depth", "Depth of a blind hole", "1/16 in", "24 in") with { DefaultNote = "through" },
            ]) with
        { OneOf = ["from_end", "from_far_end"] },
        0,
        100);

    private static IEnumerable<HoleParameters> Holes(FileValues v, RoleFacts facts) =>
        v.Items("holes." + facts.Name).Select(p => Hole(v, p, facts.Role));

    private static HoleParameters Hole(FileValues v, string path, Role part)
    {
        var face = v.Text(path + ".face") switch
        {
            "top" => DrilledFace.Top,
            "bottom" => DrilledFace.Bottom,
            _ => DrilledFace.Wide,
        };
        var far = v.NumberOrNull(path + ".from_far_end");
        return new HoleParameters(
            part,
            face,
            far ?? v.NumberOrNull(path + ".from_end") ?? 0,
            far is not null,
            v.Number(path + ".across"),
            v.Number(path + ".diameter"),
            v.NumberOrNull(path + ".depth"));
    }

    private static void One(CheckedFile f, string path, string name, HoleParameters hole)
    {
        if (
            !f.Good(
                path, path + ".from_end", path + ".from_far_end", path + ".across", path + ".diameter", path + ".depth", path + ".face"))
        {
            return;
        }

        var (length, across, through) = Stick(f.Parameters.Frames, hole);
        if (length <= 0)
        {
            // A brace for which there is no place: told where it is written.
            return;
        }

        if (hole.Diameter >= across || hole.Diameter > length)
        {
            f.Stop(FaultCode.HoleTooWide, path + ".diameter", $"a hole of {f.Size(hole.Diameter)} leaves no wood beside it in the {name}, "
                + $"{f.Size(Math.Min(across, length))} there; write less, or use a larger section");
            return;
        }

        var r = hole.Diameter / 2;
        if (hole.FromEnd < r || hole.FromEnd > length - r)
        {
            f.Stop(FaultCode.HoleOutsidePart, path + (hole.FromFarEnd ? ".from_far_end" : ".from_end"), $"the hole is not inside the "
                + $"{name}, {f.Length(length)} long; allowed is {f.AtLeast(r)} to {f.AtMost(length - r)}");
        }

        if (Math.Abs(hole.Across) + r >= across / 2)
        {
            var most = (across / 2) - r;
            var right =
                f.Down(most) > 0 ? $"write less than {f.AtMost(most)} to either side of its middle" : "leave across out, or drill less";
            f.Stop(FaultCode.HoleOffFace, path + ".across", $"the hole runs out of its face, {f.Size(across)} wide; {right}");
        }

        if (hole.Depth >= through)
        {
            f.Stop(FaultCode.HoleThrough, path + ".depth", $"depth: '{f.Written(path + ".depth")}' goes through the {name}, "
                + $"{f.Size(through)}; leave depth out for a hole right through");
        }
    }

    private static (double Length, double Across, double Through) Stick(FrameParameters frames, HoleParameters hole)
    {
        var wide = hole.Face == DrilledFace.Wide;
        var (length, section) = hole.Part switch
        {
            Role.Post => (frames.Post.Length, frames.Post.Section),
            Role.Brace => (frames.Brace.Length, frames.Brace.Section),
            Role.Base => (frames.Base.Length, frames.Base.Section),
            _ => throw new ArgumentOutOfRangeException(nameof(hole), hole.Part, "Takes holes, and nobody knows how long it is."),
        };
        if (hole.Part == Role.Base)
        {
            return wide ? (length, frames.Base.Depth, frames.Base.Along) : (length, frames.Base.Along, frames.Base.Depth);
        }

        return wide ? (length, section.Width, section.Thickness) : (length, section.Thickness, section.Width);
    }
}
