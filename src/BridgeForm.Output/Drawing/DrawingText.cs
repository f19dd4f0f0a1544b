using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>
/// Figures as they stand on drawings: inches and feet with their signs, millimetres without, since the title block names the
/// unit.
/// </summary>
/// <param name="Units">Units of the project.</param>
internal sealed record DrawingText(UnitSystem Units)
{
    /// <summary>Full figures with unit, for tables and notes.</summary>
    public QuantityText Words { get; } = new(Units) { InSigns = true };

    /// <summary>Feet, inches and sixteenths, or millimetres are what people measure with.</summary>
    public bool Imperial => Units == UnitSystem.Imperial;

    /// <summary>Size of a part: <c>40-1/2"</c> or <c>1028.7</c>.</summary>
    public string Size(double metres) => Bare(Words.Size(metres));

    /// <summary>What is there at the least, rounded down: <c>39-1/4"</c> or <c>997</c>.</summary>
    public string LeastSize(double metres) => Bare(Words.LeastSize(metres));

    /// <summary>Length of the bridge or a level: <c>30'-0"</c> or <c>9144</c>.</summary>
    public string Length(double metres) => Bare(Words.Length(metres));

    /// <summary>A level above or below zero, with its sign.</summary>
    public string Level(double metres)
    {
        var text = Length(Math.Abs(metres));
        return string.Equals(text, Length(0), StringComparison.Ordinal) ? text : (metres < 0 ? "−" : "+") + text;
    }

    /// <summary>How B lies to A: a rise, or a fall where it is lower.</summary>
    public static string RiseWord(double rise) => rise < 0 ? "fall" : "rise";

    /// <summary>Degrees to 0.1.</summary>
    public static string Angle(double radians) => Numbers.DegreeText(radians);

    /// <summary>A slope as degrees and as rise over run.</summary>
    public static string Slope(double radians)
    {
        var run = Math.Abs(1 / Elementary.Tan(radians));
        return Math.Abs(radians) < Tolerances.Level ? "level" : $"{Angle(Math.Abs(radians))} (1 : {Numbers.Fixed(run, 1)})";
    }

    private static string Bare(string text) => text.Replace(" mm", "", StringComparison.Ordinal);
}
