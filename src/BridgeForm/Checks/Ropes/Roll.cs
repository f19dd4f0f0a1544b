using BridgeForm.Loads;
using BridgeForm.Ropes.Modes;

namespace BridgeForm.Checks.Ropes;

/// <summary>Whether the section stays upright: deck and people stand above the two ropes.</summary>
internal static class Roll
{
    /// <summary>Below this factor the check fails: own figure, twice what theory asks for a perfect bridge.</summary>
    public const double Least = 2;

    /// <summary>Below this factor it is worth a second look: own figure.</summary>
    public const double Comfortable = 3;

    private const string Source = "own figures: fails below 2, look below 3; closed form of the shallow cable (Irvine, Cable Structures, 1981, from memory)";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "roll",
        "Section stays upright on its ropes",
        "Roll factor π²·s² / (8·f·h) of the whole deck loaded and empty (s between the ropes, f the loaded sag, h the height of "
            + "all weights over the ropes, people's centre 1.0 m above the deck: common practice, no source), multiplied by "
            + "(Ω / 2π)² where the whole bridge rolls to one side more easily than its halves against each other "
            + "(λ² below 4π²), and by (n·sin(π/n) / π)², for odd n also 1 − 1/n², for its n bays; with a single frame "
            + "s² / (4·f·h)·(1 + λ²/16). It says how many times as high the weights could stand, not how many times as heavy they could "
            + "be. Uniform loads on a level bridge, deck free to move sideways; loads on one side or on part of the deck, point "
            + "loads, heat together with people, wind and side stays are not in it. A licensed engineer decides.",
        Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The least factor of all cases with a load that is the same all along.</summary>
    public static CheckResult Of(CheckContext context)
    {
        if (context.Layout.Bays < 2)
        {
            return Outcome.ForEngineer(Declared, 0, "1", Source, "no frame hangs between the supports: nothing stands on the ropes alone");
        }

        var standing = Standing(context).ToList();
        var unsolved = standing.Where(s => s.Case.Shape is null).Select(s => s.Case.Id).ToList();
        var solved = standing.Where(s => s.Case.Shape is not null).Select(s => Factor(context, s.Case, s.Weight)).ToList();
        var unknown = unsolved.Count == 0
            ? ""
            : $"no shape of the ropes in {string.Join(", ", unsolved)}: whether the section stays upright there is not known";
        var worst = solved.MinBy(f => f.Factor);

        // A case that is not known does not excuse one that fails.
        if (worst is null || (unsolved.Count > 0 && worst.Factor >= Least))
        {
            return Outcome.ForEngineer(Declared, 0, "1", Source, unknown);
        }

        var words = Words(context, worst) + (unknown.Length > 0 ? $" Besides, {unknown}." : "");
        var result = Outcome.AtLeast(Declared, worst.Factor, Least, "1", Source, words);
        return result.Status == CheckStatus.Pass && worst.Factor < Comfortable ? result with { Status = CheckStatus.Warn } : result;
    }

    /// <summary>Cases with one load all along, each with what stands on the ropes in it.</summary>
    private static IEnumerable<(LoadCaseResult Case, StandingWeight Weight)> Standing(CheckContext context)
    {
        var loads = context.Parameters.Loads;
        var dead = StandingWeight.Dead(context);
        var people = StandingWeight.Area(context, loads.Live, StandingWeight.PeopleOverDeck);
        var snow = StandingWeight.Area(context, loads.Snow ?? 0, 0);
        foreach (var of in context.Cases)
        {
            var own = loads.Cases.FirstOrDefault(c => string.Equals(c.Id, of.Id, StringComparison.Ordinal));
            StandingWeight? on = of.Id switch
            {
                "dead" or "hot" => dead,
                "live-full" => dead + people,
                "snow" => dead + snow,
                "live-snow" => dead + people.Times(LoadCases.TogetherShare) + snow.Times(LoadCases.TogetherShare),
                _ when own is { From: null, To: null } => dead + StandingWeight.Area(context, own.Live, StandingWeight.PeopleOverDeck),
                _ => null,
            };
            if (on is { } weight)
            {
                yield return (of, weight);
            }
        }
    }

    private static RollFactor Factor(CheckContext context, LoadCaseResult of, StandingWeight weight)
    {
        var (shape, site) = (of.Shape!, context.Parameters.Site);
        var span = shape.Nodes[^1].X - shape.Nodes[0].X;
        var stretching = span * (1 + (8 * shape.Sag * shape.Sag / (span * span)));
        var behind = (site.A.Backstay?.Length ?? 0) + (site.B.Backstay?.Length ?? 0);
        var lambdaSquared = CableFormulas.LambdaSquared(span, shape.Sag, shape.Horizontal, shape.AxialStiffness)
            * stretching / (stretching + behind);
        var (spacing, bays) = (context.Parameters.Ropes.Spacing, context.Layout.Bays);
        return new RollFactor(
            of.Id, shape.Sag, weight.Height, lambdaSquared,
            bays == 2 ? null : RollFormulas.Antisymmetric(spacing, shape.Sag, weight.Height) * RollFormulas.FewBays(bays),
            bays == 2
                ? RollFormulas.OneFrame(spacing, shape.Sag, weight.Height, lambdaSquared)
                : RollFormulas.Antisymmetric(spacing, shape.Sag, weight.Height) * RollFormulas.FewBays(bays) * RollFormulas.SymmetricShare(lambdaSquared));
    }

    private static string Words(CheckContext context, RollFactor worst)
    {
        var (words, spacing, bays) = (context.People(), context.Parameters.Ropes.Spacing, context.Layout.Bays);
        var measures = $"s {words.Length(spacing)}, f {words.Length(worst.Sag)}, h {words.Length(worst.Height)}, λ² {CheckWords.Plain(worst.LambdaSquared)}";
        var formula = worst.Halves is { } halves
            ? $"π²·s² / (8·f·h) × {CheckWords.Plain(RollFormulas.FewBays(bays))} for {bays} bays = {CheckWords.Plain(halves)}, halves against each other; all to one side {CheckWords.Plain(worst.Together)}"
            : $"s² / (4·f·h)·(1 + λ²/16) = {CheckWords.Plain(worst.Together)}, a single frame";
        var wanted = worst.Factor < Comfortable
            ? $" By this formula, base and weights left as they are, ropes {words.Length(spacing * Math.Sqrt(Comfortable / worst.Factor))} apart would give {CheckWords.Plain(Comfortable)}; less sag helps where the halves decide, a larger rope where all to one side does."
            : "";
        return $"{measures}: {formula}; least {CheckWords.Plain(worst.Factor)} in case {worst.Case}, needed {CheckWords.Plain(Least)}, comfortable {CheckWords.Plain(Comfortable)}. "
            + "The factor says how many times as high the weights could stand, not how many times as heavy they could be. "
            + $"Not looked at: load on one side or part of the deck, point loads, people in the heat, slope between the supports, wind, side stays.{wanted} A licensed engineer decides.";
    }

    private sealed record RollFactor(string Case, double Sag, double Height, double LambdaSquared, double? Halves, double Together)
    {
        public double Factor => Math.Min(Halves ?? double.PositiveInfinity, Together);
    }
}
