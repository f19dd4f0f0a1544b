using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;

namespace BridgeForm.Output.Templates;

/// <summary>The end grain of a piece that is ripped along its length: what is kept of the stock's section, at true size.</summary>
internal static class RippedSection
{
    /// <summary>The template, seen from the far end towards the near one: Y to the right, Z up.</summary>
    public static TemplateBlock Of(CutUse use, PeopleUnits units)
    {
        var shape = use.First.Shape;
        var (halfY, halfZ) = (shape.Width / 2, shape.Thickness / 2);
        ImmutableArray<SheetPoint> stock = [new(-halfY, -halfZ), new(halfY, -halfZ), new(halfY, halfZ), new(-halfY, halfZ)];
        var middle = use.First.BlankLength / 2;
        var kept = shape.Rips.Aggregate(
            stock, (polygon, rip) => StickFace.Clipped(polygon, rip.Normal.Y, rip.Normal.Z, rip.Offset - (rip.Normal.X * middle)));
        var taper = Taper.Of(use.First)!;
        return new TemplateBlock(
            $"{use.Marks} · end grain after ripping",
            [
                .. use.Notes(units),
                $"Ripped to a taper of {Numbers.DegreeText(taper.Angle)}: {units.Length(taper.Thick)} at the thick edge, "
                    + $"{units.Length(taper.Thin)} at the thin edge, {units.Length(taper.Width)} from edge to edge. "
                    + "Rip long stock with a push stick and feather boards, then cut to length.",
            ],
            [
                Ring(PageLayers.Hidden, stock),
                Ring(PageLayers.Accent, kept),
                PageText.Centered(0, halfZ + 0.002, "face up", PageText.Small),
            ]);
    }

    private static SheetPolyline Ring(string layer, ImmutableArray<SheetPoint> points) =>
        new(layer, [.. points.Select(p => new SheetVertex(p.X, p.Y))], Closed: true);
}
