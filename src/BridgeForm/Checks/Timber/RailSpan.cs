namespace BridgeForm.Checks.Timber;

/// <summary>A rail as a simple beam from post to post under the load on infill.</summary>
internal static class RailSpan
{
    private const double Infill = 50 * Quantities.Units.PoundForce;
    private const double Side = Quantities.Units.MetresPerFoot;

    private const string Source = "IRC Table R301.5 and ASCE 7 4.5.1.2: 50 lbf on 1 ft² of infill";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rail-bending",
        "Guard rail pushed outward",
        "50 lbf on one foot of one rail, M = P/4·(L − a/2) of a simple beam from post to post, fb = M / S on its flat side, against Fb'. Rails thinner than 2 in are reckoned as No. 3 of their species, unless the project file gives values: 1x lumber is stress-rated only if so stamped.",
        $"NDS 3.3 (ASD); {Source}; NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>None for a guard without rails.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        var guard = context.Parameters.Guard;
        if (guard.RailHeights.IsEmpty && guard.RailCount == 0)
        {
            yield break;
        }

        var words = context.People();
        var (span, where) = CapSpans.Longest(context.Layout);
        var length = Math.Min(Side, span);
        var moment = Infill / 4 * (span - (length / 2));
        var bends = new RectangularSection(guard.Rail.Width, guard.Rail.Thickness);
        var stress = moment / bends.Modulus;
        yield return WoodCheck.Stress(
            Declared,
            words,
            stress,
            LumberValues.Find(context.Parameters, guard.RailStock, guard.Rail)?.Bending(LoadDuration.Guard, flat: true),
            $"{guard.Rail.Name}, L = {words.Length(span)} ({where}): M = {words.Pounds(Infill)} / 4 × (L − {words.Length(length)} / 2) = {words.Moment(moment)}; "
            + $"fb = M / {words.Modulus(bends.Modulus)} = {words.Stress(stress)}; {Source}",
            LumberValues.Missing(context.Parameters, guard.RailStock, guard.Rail));
    }
}
