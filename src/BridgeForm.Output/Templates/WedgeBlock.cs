using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Templates;

/// <summary>The tapered block that turns the work against the fence where the saw's mitre does not reach.</summary>
internal static class WedgeBlock
{
    /// <summary>What keeps fingers on hands. Common practice, no source.</summary>
    public static ImmutableArray<string> Cautions(UnitSystem units) =>
    [
        "Clamp the block to the fence and the work to the block; never hold either by hand.",
        $"Hands {Text(units, h => h.Clear)} clear of the blade, clamps {Text(units, h => h.Clear)} clear of its path, square to it. Before "
            + "the saw is switched on, bring its head down through the whole cut: it clears every clamp and the stop. Cut "
            + $"pieces under {Text(units, h => h.Shortest)} in pairs or from longer stock, then to length.",
        "Leave the offcut free to fall away: never trapped between blade and stop, fence or block.",
        "Let the blade stop before you lift it or reach for anything.",
    ];

    private static string Text(UnitSystem units, Func<HoldParameters, double> figure) =>
        new QuantityText(units).Size(figure(HoldParameters.For(units)));

    /// <summary>
    /// A size of the block as it is printed: to 0.01 in or 0.1 mm, by which half of the last digit turns its slope less than a bearing
    /// end may open.
    /// </summary>
    public static string Printed(double metres, DisplayUnits units) => units.System == UnitSystem.Imperial
        ? Numbers.Fixed(metres / Units.MetresPerInch, 2) + " in"
        : Numbers.Fixed(metres * 1000, 1) + " mm";

    /// <summary>The block for every piece with that wedge: as long as the longest of them asks.</summary>
    public static TemplateBlock Draw(CutUse use, EndCut cut, TaperBlock block, DisplayUnits units)
    {
        var (length, thin, thick) = (block.Length, block.ThinEnd, block.ThickEnd);
        ImmutableArray<SheetPoint> corners = [new(0, 0), new(length, 0), new(length, thick), new(0, thin)];
        return new TemplateBlock(
            $"Wedge of {Numbers.DegreeText(cut.Wedge)} for {use.Marks}",
            [
                $"Saw set to {Numbers.DegreeText(Math.Abs(cut.Mitre) - cut.Wedge)}, wedge {Numbers.DegreeText(cut.Wedge)}: together "
                    + "the miter of "
                    + $"{Numbers.DegreeText(Math.Abs(cut.Mitre))}. {Printed(length, units)} along the fence, "
                    + $"{Printed(thin, units)} and {Printed(thick, units)} thick at its ends, by caliper; as high as the fence; "
                    + "screw layers "
                    + "together if need be.",
                .. Cautions(units.System),
            ],
            [
                new SheetPolyline(PageLayers.Cut, [.. corners.Select(p => new SheetVertex(p.X, p.Y))], Closed: true),
                PageText.Left(0.020, 0.004, "this side against the fence", PageText.Normal),
                PageText.Left(length - 0.055, 0.004, "work against the slope", PageText.Normal),
                .. Angle(cut.Wedge, thin),
                Dimension(corners[0], corners[1], new SheetPoint(0, -0.008), Printed(length, units)),
                Dimension(corners[0], corners[3], new SheetPoint(-0.006, 0), Printed(thin, units)),
                Dimension(corners[1], corners[2], new SheetPoint(length + 0.006, 0), Printed(thick, units)),
            ]);
    }

    /// <summary>Arc between the fence side's direction and the slope at the thin end, with its value.</summary>
    private static IEnumerable<SheetEntity> Angle(double wedge, double thin)
    {
        const double radius = 0.090;
        var start = new SheetPoint(0, thin);
        yield return new SheetLine(PageLayers.Layout, start, new SheetPoint(radius * 1.1, thin));
        yield return new SheetArc(PageLayers.Dim, start, radius, 0, wedge);
        yield return PageText.Left(radius + 0.002, thin + 0.002, Numbers.DegreeText(wedge), PageText.Normal, bold: true);
    }

    private static SheetDimension Dimension(SheetPoint from, SheetPoint to, SheetPoint line, string text) =>
        new(PageLayers.Dim, from, to, line, PageText.Small, text);
}
