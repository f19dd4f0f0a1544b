using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A handrail as a simple beam from bracket to bracket.</summary>
internal static class HandrailSpan
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "handrail-bending",
        "Handrail pulled and leaned on",
        "Only with guard.handrail: 200 lbf in the middle, on a public bridge 50 plf as well (by itself), any way: fb = M / S of a simple "
            + "beam from post to post about its weaker way, S = π·d³/32 of a round one, against Fb'. Brackets and their screws are not "
            + "looked at.",
        $"NDS 3.3 (ASD); {GuardPush.Source}, for handrails alike (IBC 1607.8.1, from memory); NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>None without a handrail.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (context.Parameters.Guard.Handrail is not { } handrail)
        {
            yield break;
        }

        var words = context.Words();
        var (span, where, bay) = CapSpans.Longest(context.Layout);
        var (moment, how) = CapSpan.Worst(context, words, span);
        var modulus = Modulus(handrail);
        var stress = moment / modulus;
        yield return WoodCheck.Stress(
            Declared,
            words,
            stress,
            SlenderValues.Find(context.Parameters, handrail.Stock, handrail.Section)?.Bending(LoadDuration.Guard, flat: false),
            $"{handrail.Section.Name}, L = {words.Length(span)} ({where}): {how} = {words.Moment(moment)}; "
                + $"fb = M / {words.Modulus(modulus)} = {words.Stress(stress)}; {GuardPush.Source}",
            LumberValues.Missing(context.Parameters, handrail.Stock, handrail.Section)).On(context.InBay(bay, Role.Handrail));
    }

    /// <summary>Section modulus about the weaker way, m³.</summary>
    private static double Modulus(HandrailParameters handrail)
    {
        var (d, t) = (handrail.Section.Width, handrail.Section.Thickness);
        return handrail.IsRound ? Math.PI * d * d * d / 32 : d * t * t / 6;
    }
}
