using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// Which face of a base is in tension across a rope channel in each case, and what NDS 4.4.3 says of a notch there. Judged
/// by the moment that the part beyond the rope brings into the channel: inside the rope the base ends on its support, which
/// is the notched end of NDS 3.4.3 and is looked at under base-channel-shear.
/// </summary>
internal static class ChannelFaces
{
    /// <summary>Moments below this are no moment: a tenth of a newton metre, about one inch-pound.</summary>
    public const double Nothing = 0.1;

    private const string Rule =
        "NDS 4.4.3 and 3.2.3, IRC R502.8.1: no notch on the tension side of members 3-1/2 in and thicker except at their ends; else at "
            + "most d/6 deep and d/3 long between the ends, d/4 deep at an end";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "base-channel-notch",
        "Rope channel as a notch in a base",
        "Which face is in tension across the channel in each case, by the moment of what stands beyond the rope (braces outside the ropes "
            + "above all). Bottom in tension: fails in a base 3-1/2 in thick or more, at most d/6 deep and d/3 wide in a thinner one. Top "
            + "in tension in all cases: a notch at a support, at most d/4 unless the net section passes.",
        Rule,
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>None for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var cases = BaseCases.List(context);
        if (cases.IsEmpty)
        {
            yield break;
        }

        var section = BaseSection.Cut(context);
        var words = context.Words();
        var faces = cases.Select(c => new PulledSide(c.Name, Worst(c.Beam, section))).ToList();
        var pulled = faces.Exists(f => f.Moment > Nothing);
        var text = Sides(words, faces);
        var result = pulled && section.Full.Breadth >= Notches.ThickMember - Tolerances.DressedSize
            ? new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, section.Notch, 0, "m", null, Rule,
                $"base {words.Length(section.Full.Breadth)} thick; a thinner base, or ropes under or outside the braces' feet, would be "
                    + $"right; {text}")
            : Depth(context, section, pulled, text);
        yield return result.OnBase(context, section.Frame);
    }

    /// <summary>Moment of a case just outside the ropes: above 0 it pulls the bottom.</summary>
    private sealed record PulledSide(string Name, double Moment);

    /// <summary>The cases by the side in tension, those that pull the bottom first, worst first.</summary>
    private static string Sides(CheckWords words, List<PulledSide> faces)
    {
        var bottom = faces.Where(f => f.Moment > Nothing).OrderByDescending(f => f.Moment)
            .Select(f => $"{f.Name} {words.Moment(f.Moment)}").ToList();
        var top = faces.Where(f => f.Moment <= Nothing).OrderByDescending(f => -f.Moment).ToList();
        return string.Join("; ", (string[])
        [
            .. bottom.Count > 0 ? ["bottom in tension: " + string.Join(", ", bottom)] : Array.Empty<string>(),
            .. top.Count > 0
                ? [$"top in tension, {words.Moment(-top[0].Moment)} at most: " + string.Join(", ", top.Select(f => f.Name))]
                : Array.Empty<string>(),
        ]);
    }

    private static CheckResult Depth(CheckContext context, BaseSection section, bool pulled, string text)
    {
        var words = context.Words();
        var depth = section.Full.Depth;
        var (wide, longest) = (section.Channel.Outer - section.Channel.Inner, Notches.LongestBetween(depth));
        var limit = pulled ? Notches.Between(depth) : Notches.AtEnd(depth);
        if (pulled && wide / longest > Math.Max(1, section.Notch / limit))
        {
            return Outcome.AtMost(
                Declared, wide, longest, "m", Rule, $"channel {words.Length(wide)} wide, d/3 = {words.Length(longest)}; {text}");
        }

        var detail = $"channel {words.Length(section.Notch)} deep, {(pulled ? "d/6" : "d/4")} = {words.Length(limit)}; {text}";
        var result = Outcome.AtMost(Declared, section.Notch, limit, "m", Rule, detail);
        return result.Status == CheckStatus.Fail && !pulled && NetSection.Passes(context)
            ? NetSection.Instead(result)
            : result;
    }

    /// <summary>Moment just outside either rope, the one that pulls the bottom most.</summary>
    private static double Worst(BaseBeam beam, BaseSection section)
    {
        var outside = beam.Support + BaseBeam.Beside;
        return Math.Max(
            Math.Max(beam.Moment(outside), beam.Moment(section.Channel.Outer)),
            Math.Max(beam.Moment(-outside), beam.Moment(-section.Channel.Outer)));
    }
}

/// <summary>Whether what a channel leaves of a base carries its loads.</summary>
internal static class NetSection
{
    /// <summary>Both bending and shear of the net section pass.</summary>
    public static bool Passes(CheckContext context) =>
        BaseBending.Check(context).Concat(BaseShear.Check(context))
            .Where(c => c.Id.StartsWith("base-channel-", StringComparison.Ordinal))
            .All(c => c.Status == CheckStatus.Pass);

    /// <summary>A deep channel that holds by its net section: the depth is no limit then, so it has neither capacity nor ratio.</summary>
    public static CheckResult Instead(CheckResult tooDeep) => tooDeep with
    {
        Status = CheckStatus.Pass,
        Capacity = null,
        Ratio = null,
        Detail = tooDeep.Detail + "; deeper, but the net section passes",
    };
}

/// <summary>Notches in bending members: NDS 3.2.3, 3.4.3 and 4.4.3 (from memory). Metres, newtons, pascals.</summary>
internal static class Notches
{
    /// <summary>Members at least so thick are not notched on the tension side but at their ends (NDS 4.4.3), metres.</summary>
    public const double ThickMember = 3.5 * Quantities.Units.MetresPerInch;

    /// <summary>Deepest notch at an end: d/4.</summary>
    public static double AtEnd(double depth) => depth / 4;

    /// <summary>Deepest notch between the ends, in the outer thirds of the span: d/6.</summary>
    public static double Between(double depth) => depth / 6;

    /// <summary>Longest notch between the ends: d/3.</summary>
    public static double LongestBetween(double depth) => depth / 3;

    /// <summary>Largest hole: d/3 (IRC R502.8.1), here of the face it enters.</summary>
    public static double LargestHole(double depth) => depth / 3;

    /// <summary>V_r' = (2/3)·Fv'·b·d of a full section.</summary>
    public static double Shear(double strength, double breadth, double depth) => 2.0 / 3 * strength * breadth * depth;

    /// <summary>V_r' = (2/3)·Fv'·b·dn·(dn/d)² of a notch on the tension side at a support (NDS 3.4.3.2).</summary>
    public static double ShearAtTensionNotch(double strength, double breadth, double depth, double left) =>
        Shear(strength, breadth, left) * (left / depth) * (left / depth);
}
