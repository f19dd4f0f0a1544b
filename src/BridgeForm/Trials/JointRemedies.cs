using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Trials;

/// <summary>
/// Plates that pass where a joint of post and brace is left to an engineer, or fails: on the braces as they are, else on braces as
/// thick as the base, and standing further out, which leaves less to hold. Each is tried by the joints' own checks.
/// </summary>
public static class JointRemedies
{
    // Two hands further out; beyond that the base and its ropes are another design.
    private const int MostOut = 6;

    /// <summary>Empty where all joints are described and pass, and where a table lacks their wood.</summary>
    /// <param name="layout">Where all lies, for how far apart posts stand.</param>
    /// <param name="work">What was found out about the ropes, for how far bases lean.</param>
    /// <param name="checks">Those that are to be cured; others than of joints are left alone.</param>
    /// <param name="token">Asked before each joint.</param>
    public static ImmutableArray<Remedy> Find(
        BridgeLayout layout, RopeWork work, IEnumerable<CheckResult> checks, CancellationToken token = default)
    {
        var asked = checks
            .Where(c => c is { Status: CheckStatus.Fail or CheckStatus.Engineer, NotChecked: null })
            .Select(c => (Check: c, Place: PlaceOf(c.Id)))
            .Where(c => c.Place is not null)
            .ToList();
        if (asked.Count == 0)
        {
            return [];
        }

        var parameters = layout.Parameters;
        var places = asked.Select(c => c.Place!.Value).ToList();
        var found = Designs(parameters).Select(d => (d.Words, Joints: Choose(layout, work, d.Parameters, places, token)))
            .FirstOrDefault(d => !d.Joints.IsEmpty);
        return
        [
            .. asked.Select(c => found.Joints.IsDefaultOrEmpty
                ? new Remedy(
                    c.Check.Id,
                    "Preliminary: no plates of the list passed on these posts, braces and bases, nor on braces as thick as the base and up "
                        + $"to {Out(parameters, MostOut)} further out; a brace still further out, or a lower guard, leaves less to hold.")
                : Told(parameters, c.Check.Id, found.Joints.Single(j => j.Place == c.Place), found.Words)),
        ];
    }

    /// <summary>
    /// Joints of the lightest plates that pass, all asked for or none: each keeps clear of those before it, and of those that the bridge
    /// has already.
    /// </summary>
    /// <param name="layout">Where all lies, for how far apart posts stand.</param>
    /// <param name="work">What was found out about the ropes.</param>
    /// <param name="parameters">The bridge.</param>
    /// <param name="places">Which joints.</param>
    /// <param name="token">Asked before each joint.</param>
    public static ImmutableArray<JointParameters> Choose(
        BridgeLayout layout, RopeWork work, BridgeParameters parameters, IReadOnlyList<JointPlace> places,
        CancellationToken token = default)
    {
        var loads = BaseLoads.Of(layout, BridgeMasses.Weigh(layout, token), work);
        var frames = parameters.Frames;
        var now = parameters with { Frames = frames with { Joints = [.. frames.Joints.Where(j => !places.Contains(j.Place))] } };
        var chosen = ImmutableArray.CreateBuilder<JointParameters>();
        foreach (var place in places)
        {
            token.ThrowIfCancellationRequested();
            if (JointChoice.Find(layout, now, place, loads) is not { } joint)
            {
                return [];
            }

            now = JointTrial.With(now, joint);
            chosen.Add(joint);
        }

        return chosen.ToImmutable();
    }

    /// <summary>A joint as it is written under <c>joints</c>: <c>{ bolt: 5/16 in, count: 3, … }</c>.</summary>
    /// <param name="plates">Its plates; they come out as wide and long as their bolts ask for.</param>
    /// <param name="units">Of the file.</param>
    public static string Written(PlateJoint plates, UnitSystem units)
    {
        var words = new QuantityText(units);
        string Bolts(BoltPattern p) => $"bolt: {words.Size(p.Bolt)}, count: {NumberText.By("0", p.Count)}, spacing: {words.Size(p.Spacing)}"
            + (p.Lines > 1 ? $", lines: 2, apart: {words.Size(p.Apart)}" : "");
        return $"{{ {Bolts(plates.Strut)}, end: {words.Size(plates.End)}, carrier: {{ {Bolts(plates.Carrier)}, depth: "
            + $"{words.Size(plates.Depth)}, shift: {words.Size(plates.Shift)} }} }}";
    }

    private static Remedy Told(BridgeParameters parameters, string id, JointParameters joint, string on)
    {
        var path = JointSection.PathOf(joint.Place);
        var written = Written(joint.Plates!, parameters.Units);
        return new Remedy(
            id,
            $"Preliminary: the lightest plates of the list that pass{on}: {path}: {written}. A licensed engineer confirms the joint"
                + (on.Length > 0 ? "; look at all other checks again." : "."))
        {
            Write = (on.Length > 0 ? on[" with ".Length..].Replace(" and ", ", ", StringComparison.Ordinal) + ", " : "")
                + $"{path} {written}",
        };
    }

    private static JointPlace? PlaceOf(string id) => Enum.GetValues<JointPlace>().Cast<JointPlace?>()
        .FirstOrDefault(p => string.Equals(id, "guard-joint-" + JointSection.NameOf(p!.Value), StringComparison.Ordinal));

    private static string Out(BridgeParameters parameters, int steps) => new QuantityText(parameters.Units).Size(steps * Step(parameters));

    private static double Step(BridgeParameters parameters) =>
        parameters.Units == UnitSystem.Metric ? 25 * Rounding.Millimetre : Units.MetresPerInch;

    /// <summary>
    /// The bridge as it is, then with braces as thick as its bases, further and further out as long as the base has room.
    /// </summary>
    private static IEnumerable<(BridgeParameters Parameters, string Words)> Designs(BridgeParameters parameters)
    {
        yield return (parameters, "");
        var frames = parameters.Frames;
        if (frames.Brace.Length <= 0 || Alike(parameters) is not { } section)
        {
            yield break;
        }

        foreach (var steps in Enumerable.Range(0, MostOut + 1))
        {
            var foot = Rounding.Up(frames.Brace.Foot, Step(parameters) / 4) + (steps * Step(parameters));
            var (at, along, _) = BraceGeometry.FromFoot(frames.Post, frames.Brace.Lean, foot);
            var brace = frames.Brace with { Section = section, Foot = at, Length = along };
            var made = frames.Base with { Length = Math.Max(frames.Base.Length, 2 * (foot + (Step(parameters) / 2))) };
            if (foot + (Step(parameters) / 2) <= frames.Base.Length / 2 || IsRoomy(parameters))
            {
                yield return (
                    parameters with { Frames = frames with { Brace = brace, Base = made } },
                    $" with frames.brace.section {section.Name} and frames.brace.foot "
                        + new QuantityText(parameters.Units).Size(foot));
            }
        }
    }

    // Where a rule makes the base's length it follows the brace.
    private static bool IsRoomy(BridgeParameters parameters) =>
        parameters.Chosen.Any(c => string.Equals(c.Path, "frames.base.length", StringComparison.Ordinal));

    // As thick as the base along the bridge, the next in width; null where the stock sells none.
    private static Section? Alike(BridgeParameters parameters)
    {
        var (frames, now) = (parameters.Frames, parameters.Frames.Brace.Section);
        return parameters.StockNamed(frames.Brace.Stock).Sections
            .Where(s => Math.Abs(s.Thickness - frames.Base.Along) <= Tolerances.Seating && s.Width >= now.Width - Tolerances.Seating)
            .MinBy(s => s.Width);
    }
}
