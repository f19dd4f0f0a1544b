using BridgeForm.Project.Definition;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>The range of a quantity, checked and in words.</summary>
internal static class AllowedRange
{
    private const int Figures = 4;

    // 102 mm is what a person would write where the bound is 4 in.
    private const int FiguresOfMetricLength = 3;

    public static string? Problem(KeySpec spec, QuantityKind kind, double value, string text, UnitSystem units)
    {
        if (spec.Least is null || spec.Most is null)
        {
            return null;
        }

        var (least, most) = (Bound(kind, spec.Least), Bound(kind, spec.Most));
        var slack = Tolerances.Bound * Math.Max(Math.Abs(least), Math.Abs(most));
        return value >= least - slack && value <= most + slack
            ? null
            : $"{(spec.Name.Length == 0 ? "" : spec.Name + ": ")}{QuantityReader.Quote(text)} is out of range; allowed is "
                + $"{InWords(spec, units)}";
    }

    /// <summary>What to write instead of a value out of range; empty when nothing is known.</summary>
    public static string Hint(KeySpec spec, UnitSystem units) => (spec.RangeInWords ?? InWords(spec, units)) is { Length: > 0 } words
        ? "; allowed is " + words
        : "";

    /// <summary>The range in the units of a project: <c>3 ft to 20000 ft</c>; empty when there is none.</summary>
    public static string InWords(KeySpec spec, UnitSystem units)
    {
        if (spec.Least is null || spec.Most is null)
        {
            return "";
        }

        return spec.Type != ValueForm.Quantity
            ? $"{spec.Least} to {spec.Most}"
            : $"{In(units, spec.Kinds[0], spec.Least, isLeast: true)} to {In(units, spec.Kinds[0], spec.Most, isLeast: false)}";
    }

    private static double Bound(QuantityKind kind, string text) => QuantityReader.Read(kind, text) is { IsRead: true } reading
        ? reading.Value
        : throw new InvalidOperationException($"The definition's range '{text}' cannot be read.");

    // A bound of the other system is rounded inward, so that whoever writes it is not refused.
    private static string In(UnitSystem units, QuantityKind kind, string text, bool isLeast)
    {
        var value = Bound(kind, text);
        var isMetric = units == UnitSystem.Metric;
        var symbol = isMetric ? MetricSymbol(kind, value) : ImperialSymbol(kind, text);
        var figures = isMetric && kind == QuantityKind.Length ? FiguresOfMetricLength : Figures;
        return symbol.Length == 0
            ? text
            : NumberText.Inward(Units.Of(kind).Find(symbol)!.FromSi(value), figures, isLeast) + " " + symbol;
    }

    private static string MetricSymbol(QuantityKind kind, double value) => kind switch
    {
        QuantityKind.Length => Math.Abs(value) < 1 ? "mm" : "m",
        QuantityKind.Force => "kN",
        QuantityKind.Pressure => "kPa",
        QuantityKind.Stress => "MPa",
        QuantityKind.Mass => "kg",
        QuantityKind.MassPerLength => "kg/m",
        QuantityKind.MassPerArea => "kg/m2",
        QuantityKind.Area => "mm2",
        QuantityKind.Density => "kg/m3",
        QuantityKind.Coverage => "m2/l",
        QuantityKind.Temperature => "C",
        _ => "",
    };

    // The definition's ranges are imperial, but for lengths that are told in millimetres everywhere.
    private static string ImperialSymbol(QuantityKind kind, string text) =>
        kind == QuantityKind.Length && text.EndsWith("mm", StringComparison.Ordinal) ? "in" : "";
}
