using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Preview;

/// <summary>One line about the bridge for people.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Text">Its value, in the project's units.</param>
/// <param name="IsKey">Stands large at the top of the page.</param>
internal sealed record PreviewFact(string Label, string Text, bool IsKey);

/// <summary>What a homeowner asks first.</summary>
internal static class PreviewFacts
{
    /// <summary>Six feet, metres: from here on people count feet and inches, or metres.</summary>
    private const double LongLength = 6 * Quantities.Units.MetresPerFoot;

    /// <summary>One sentence.</summary>
    public static string Lead(BridgeModel model)
    {
        var use = model.Parameters.Use == BridgeUse.Public ? "Public" : "Private";
        return use + " timber footbridge on two ropes";
    }

    /// <summary>Facts in order; the key ones are the length and the guard height.</summary>
    public static ImmutableArray<PreviewFact> Gather(BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        var facts = ImmutableArray.CreateBuilder<PreviewFact>();
        facts.Add(new("Length between supports", Plain(model.Parameters.Site.Span, words), true));
        AddMeasured(facts, "Rail height above the deck", Measured(model, "guard-height"), words, isKey: true);
        AddMeasured(facts, "Clear width between the rails", Measured(model, "clear-width"), words, isKey: false);
        facts.Add(new("Sag of the ropes at mid-span", Plain(model.Rope.Sag, words), false));
        facts.Add(new("Frames", Line($"{model.Frames.Length}, {Plain(Step(model), words)} apart"), false));
        if (Measured(model, "deck-slope") is { } slope)
        {
            facts.Add(new("Steepest part of the deck", PieceWords.Degrees(Elementary.Atan(slope)) + " from level", false));
        }

        facts.Add(new("Ropes", Line($"two, {words.Size(2 * model.Parameters.Ropes.Rope.Radius)} thick"), false));
        facts.Add(new(
            "Wooden parts",
            Line($"{model.Pieces.Sum(p => p.Occurrences.Length)}, of {model.Pieces.Length} kinds"),
            false));
        facts.Add(new("Weight of the wood", words.Mass(model.Pieces.Sum(p => p.Mass * p.Occurrences.Length)), false));
        return facts.ToImmutable();
    }

    /// <summary>What a check measured, metres or rise over run; null when the model has no such check.</summary>
    public static double? Measured(BridgeModel model, string check) =>
        model.Checks.FirstOrDefault(c => string.Equals(c.Id, check, StringComparison.Ordinal))?.Demand;

    /// <summary>A length as one says it: to a sixteenth of an inch or a millimetre, in feet or metres when it is long.</summary>
    public static string Plain(double metres, QuantityText words) => (words.Units, Math.Abs(metres) > LongLength) switch
    {
        (UnitSystem.Metric, true) => NumberText.Rounded(metres, 3) + " m",
        (UnitSystem.Metric, false) => words.Length(Rounding.ToDecimals(metres, 3)),
        (_, true) => words.Length(metres),
        _ => words.Size(metres),
    };

    /// <summary>Greatest straight distance between neighbouring frames, metres.</summary>
    public static double Step(BridgeModel model) =>
        model.Frames.Zip(model.Frames.Skip(1), (a, b) => (b.Node - a.Node).Length).DefaultIfEmpty().Max();

    private static void AddMeasured(
        ImmutableArray<PreviewFact>.Builder facts, string label, double? metres, QuantityText words, bool isKey)
    {
        if (metres is { } value)
        {
            facts.Add(new PreviewFact(label, words.LeastSize(value), isKey));
        }
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
