using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Templates;

/// <summary>The tapered block that turns the work against the fence where the saw's mitre does not reach.</summary>
internal static class WedgeBlock
{
    /// <summary>Length along the fence, metres: no longer than bears the work, so that it is thin where the blade passes.</summary>
    public const double Length = SawPath.Bearing;

    /// <summary>Thickness of the thin end, metres.</summary>
    public const double ThinEnd = SawPath.ThinEnd;

    /// <summary>What keeps fingers on hands. Common practice, no source.</summary>
    public static ImmutableArray<string> Cautions(UnitSystem units) =>
    [
        "Clamp the block to the fence and the work to the block; never hold either by hand.",
        $"Hands {Text(units, h => h.Clear)} clear of the blade, clamps {Text(units, h => h.Clear)} clear of its path along the work. Cut "
            + $"pieces under {Text(units, h => h.Shortest)} in pairs or from longer stock, then to length.",
        "Leave the offcut free to fall away: never trapped between blade and stop, fence or block.",
        "Let the blade stop before you lift it or reach for anything.",
    ];

    private static string Text(UnitSystem units, Func<HoldParameters, double> figure) =>
        new QuantityText(units).Size(figure(HoldParameters.For(units)));

    /// <summary>Thickness of the thick end, metres.</summary>
    public static double Thick(EndCut cut) => ThinEnd + (Length * Elementary.Tan(cut.Wedge));

    /// <summary>The block for every piece with that wedge.</summary>
    public static TemplateBlock Draw(CutUse use, EndCut cut, DisplayUnits units)
    {
        var thick = Thick(cut);
        ImmutableArray<SheetPoint> corners = [new(0, 0), new(Length, 0), new(Length, thick), new(0, ThinEnd)];
        return new TemplateBlock(
            $"Wedge of {Numbers.DegreeText(cut.Wedge)} for {use.Marks}",
            [
                $"Saw set to {Numbers.DegreeText(Math.Abs(cut.Mitre) - cut.Wedge)}, wedge {Numbers.DegreeText(cut.Wedge)}: together "
                    + "the miter of "
                    + $"{Numbers.DegreeText(Math.Abs(cut.Mitre))}. {units.Length(Length)} along the fence, "
                    + $"{units.Length(ThinEnd)} and {units.Length(thick)} thick at its ends; as high as the fence; screw two layers "
                    + "together if need be.",
                .. Cautions(units.System),
            ],
            [
                new SheetPolyline(PageLayers.Cut, [.. corners.Select(p => new SheetVertex(p.X, p.Y))], Closed: true),
                PageText.Left(0.020, 0.004, "this side against the fence", PageText.Normal),
                PageText.Left(Length - 0.055, 0.004, "work against the slope", PageText.Normal),
                .. Angle(cut.Wedge, units),
                Dimension(corners[0], corners[1], new SheetPoint(0, -0.008), units.Length(Length)),
                Dimension(corners[1], corners[2], new SheetPoint(Length + 0.006, 0), units.Length(thick)),
            ]);
    }

    /// <summary>Arc between the fence side's direction and the slope at the thin end, with its value.</summary>
    private static IEnumerable<SheetEntity> Angle(double wedge, DisplayUnits units)
    {
        const double radius = 0.090;
        var start = new SheetPoint(0, ThinEnd);
        yield return new SheetLine(PageLayers.Layout, start, new SheetPoint(radius * 1.1, ThinEnd));
        yield return new SheetArc(PageLayers.Dim, start, radius, 0, wedge);
        yield return PageText.Left(radius + 0.002, ThinEnd + 0.002, Numbers.DegreeText(wedge), PageText.Normal, bold: true);
    }

    private static SheetDimension Dimension(SheetPoint from, SheetPoint to, SheetPoint line, string text) =>
        new(PageLayers.Dim, from, to, line, PageText.Small, text);
}
