using BridgeForm.Materials;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>Strength of the ropes where they lie bent over their saddles.</summary>
internal static class SaddleBend
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "saddle-bend",
        "Strength of the ropes over their saddles",
        "The tension of rope-strength against breaking strength × what a bend of D/d = 2 × saddle.radius / rope diameter leaves of it / safety factor. The table's next sharper bend counts; sharper than D/d 1 fails. Bend and ends lie apart, so the weaker of the two counts, not both. For an engineer without saddle.radius, and for strand, cord and ropes of the file, for which the table is not made.",
        BendLoss.Source,
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Pass or fail; engineer where the radius, or the rope's loss, is not known.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var (words, ropes) = (context.People(), context.Parameters.Ropes);
        var tension = RopeStrength.Of(context).Demand;
        if (context.Parameters.Saddle.Radius is not { } radius)
        {
            return Outcome.ForEngineer(
                Declared, tension, "N", Declared.Source,
                $"saddle.radius is not given: how much of their strength the ropes lose over their saddles, pulled by {words.Force(tension)}, is not looked at");
        }

        var ratio = 2 * radius / ropes.Rope.Diameter;
        var bend = $"D/d = 2 × {words.Length(radius)} / {words.Length(ropes.Rope.Diameter)} = {CheckWords.Plain(ratio)}";
        if (ropes.Rope.Kind != RopeKind.WireRope)
        {
            return Outcome.ForEngineer(
                Declared, tension, "N", Declared.Source, $"{bend}; the table is for wire rope: what this rope loses its maker says; it is pulled by {words.Force(tension)}");
        }

        if (BendLoss.Share(ratio) is not { } share)
        {
            return Outcome.AtMost(Declared, tension, 0, "N", Declared.Source, $"{bend}: sharper than any bend of the table; take a larger saddle.radius");
        }

        var allowed = ropes.Rope.BreakingStrength * share / ropes.SafetyFactor;
        return Outcome.AtMost(
            Declared, tension, allowed, "N", $"{Declared.Source}; strength: {ropes.Rope.Source}",
            $"{bend}: {CheckWords.Share(share)} left; {words.Force(tension)} as in rope-strength; allowed {words.Force(ropes.Rope.BreakingStrength)} × "
            + $"{CheckWords.Plain(share)} / {CheckWords.Plain(ropes.SafetyFactor)} = {words.Force(allowed)}");
    }
}
