using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>A standard scale.</summary>
/// <param name="Ratio">True length over length on paper.</param>
/// <param name="Text">As written under a drawing.</param>
internal sealed record DrawingScale(double Ratio, string Text)
{
    /// <summary>Architects' scales of feet and inches (common practice, no source).</summary>
    private static readonly ImmutableArray<DrawingScale> Imperial =
    [
        new(1, "full size"), Inches(2, "6\""), Inches(4, "3\""), Inches(8, "1-1/2\""), Inches(12, "1\""), Inches(16, "3/4\""),
        Inches(24, "1/2\""), Inches(32, "3/8\""), Inches(48, "1/4\""), Inches(64, "3/16\""), Inches(96, "1/8\""),
        Inches(128, "3/32\""), Inches(192, "1/16\""), Inches(384, "1/32\""), Inches(768, "1/64\""), Inches(1536, "1/128\""),
    ];

    /// <summary>Scales of ISO 5455, and 1 : 25, which people use.</summary>
    private static readonly ImmutableArray<DrawingScale> Metric =
        [.. new[] { 1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000 }.Select(r => new DrawingScale(r, Plain(r)))];

    /// <summary>The largest standard scale at which a drawing fits; the smallest of all when none does.</summary>
    /// <param name="all">Those to choose from, largest first.</param>
    /// <param name="width">True width, metres.</param>
    /// <param name="height">True height, metres.</param>
    /// <param name="roomWidth">Room on paper, metres.</param>
    /// <param name="roomHeight">Room on paper, metres.</param>
    public static DrawingScale Fitting(
        ImmutableArray<DrawingScale> all, double width, double height, double roomWidth, double roomHeight)
    {
        return all.FirstOrDefault(s => width <= roomWidth * s.Ratio && height <= roomHeight * s.Ratio) ?? all[^1];
    }

    /// <summary>The standard scales, largest first.</summary>
    public static ImmutableArray<DrawingScale> All(UnitSystem units) => units == UnitSystem.Imperial ? Imperial : Metric;

    private static DrawingScale Inches(int ratio, string foot) => new(ratio, $"{foot} = 1'-0\" ({Plain(ratio)})");

    private static string Plain(int ratio) => "1 : " + ratio.ToString(CultureInfo.InvariantCulture);
}
