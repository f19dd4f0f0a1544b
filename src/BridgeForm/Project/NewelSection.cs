using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Posts on the landings, in line with the bridge's own, at which its guards end.</summary>
/// <param name="Section">Its wide face lies across the bridge. Metres.</param>
/// <param name="Gap">Clear along the bridge between the end frame's post and it, metres.</param>
/// <param name="Height">From the landing's surface to its top, metres; null: level with the cap's top where that ends.</param>
/// <param name="Lean">Outward, radians.</param>
/// <param name="Ends">At which ends they stand.</param>
/// <param name="Stock">Stock that they are cut from.</param>
public sealed record NewelParameters(Section Section, double Gap, double? Height, double Lean, NewelEnds Ends, string Stock)
{
    /// <summary>Whether they stand at an end: support B's, or A's.</summary>
    public bool StandAt(bool b) => Ends == NewelEnds.Both || Ends == (b ? NewelEnds.B : NewelEnds.A);
}

/// <summary>Ends of the bridge at which newels stand.</summary>
public enum NewelEnds
{
    /// <summary>At both.</summary>
    Both,

    /// <summary>At support A alone.</summary>
    A,

    /// <summary>At support B alone.</summary>
    B,
}

/// <summary>Keys under <c>guard.newels</c>, how they are read, and whether they stand on the landings.</summary>
internal static class NewelSection
{
    /// <summary>The mapping.</summary>
    public const string Path = "guard.newels";

    private const string Gap = Path + ".gap";

    // The gap leaves room to turn a nut and lets no 4 in sphere pass: common practice, no source.
    public static KeySpec Keys => Define.OptionalMap(
        "newels",
        "Posts on the landings, in line with the bridge's own, at which its guards end",
        [
            Define.Section("section", "Its wide face lies across the bridge", "4x4", "95 x 95 mm"),
            Define.Length("gap", "Clear along the bridge between the end frame's post and it", "0 in", "3 ft", "2 in", "50 mm"),
            Define.Length("height", "From the landing's surface to its top", "6 in", "8 ft") with
            { DefaultNote = "level with the cap's top", Example = "40 in", MetricExample = "1000 mm" },
            Define.Quantity(QuantityKind.Angle, "lean", "Lean outward, from upright", "0 deg", "44.9 deg") with
            { DefaultNote = "frames.post.lean", Example = "8 deg" },
            Define.Choice("ends", "At which ends they stand", "both", "both", "a", "b"),
            Define.StockName("treated"),
        ]);

    public static NewelParameters? Read(FileValues v) => v.Given(Path)
        ? new NewelParameters(
            v.Section(Path + ".section"), v.Number(Gap), v.NumberOrNull(Path + ".height"),
            v.NumberOrNull(Path + ".lean") ?? v.Number("frames.post.lean"),
            v.Text(Path + ".ends") switch { "a" => NewelEnds.A, "b" => NewelEnds.B, _ => NewelEnds.Both },
            v.Text(Path + ".stock"))
        : null;

    public static void Check(CheckedFile f)
    {
        if (f.Parameters.Guard.Newels is { } newels
            && f.Good(Path, Gap, Path + ".section", "frames.post.section", "frames.base.section", "frames.base.flat"))
        {
            OnLanding(f, newels, f.Parameters.Site.A, "a", newels.StandAt(b: false));
            OnLanding(f, newels, f.Parameters.Site.B, "b", newels.StandAt(b: true));
        }
    }

    // Metres from the end frame's node: the landing begins beyond the base and its gap.
    private static void OnLanding(CheckedFile f, NewelParameters newels, SupportParameters support, string end, bool stands)
    {
        var landing = $"site.{end}.landing";
        if (!stands || !f.Good(landing, landing + ".gap", landing + ".depth"))
        {
            return;
        }

        var (frames, gap) = (f.Parameters.Frames, support.LandingGap ?? 0);
        var (post, edge) = (frames.Post.Section.Thickness / 2, (frames.Base.Along / 2) + gap);
        if (post + newels.Gap < edge - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.NewelOffLanding, Gap, $"gap: with '{f.Size(newels.Gap)}' a newel at {end.ToUpperInvariant()} stands over the "
                + $"base or the landing's gap, where nothing carries it; write at least {f.AtLeast(edge - post)}", landing + ".gap");
        }
        else if (support.LandingDepth is { } depth && post + newels.Gap + newels.Section.Thickness > edge + depth + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.NewelOffLanding, landing + ".depth", $"depth: with '{f.Size(depth)}' the landing ends before the newel's far "
                + $"face; write at least {f.AtLeast(post + newels.Gap + newels.Section.Thickness - edge)}", Gap);
        }
    }
}
