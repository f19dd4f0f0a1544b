using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Solids;

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
        var sizes = PageBox.Of([Ring(PageLayers.Cut, kept)]);
        return new TemplateBlock(
            $"{use.Marks} · end grain after ripping",
            [
                .. use.Notes(units),
                $"Kept: {units.Length(sizes.MaxX - sizes.MinX)} wide, {units.Length(sizes.MaxY - sizes.MinY)} high. "
                    + string.Join(' ', shape.Rips.Select(r => Words(r, units)))
                    + " Rip long stock with a push stick or feather boards, then cut to length.",
            ],
            [
                Ring(PageLayers.Hidden, stock),
                Ring(PageLayers.Accent, kept),
                PageText.Centered(0, halfZ + 0.002, "face up", PageText.Small),
            ]);
    }

    private static string Words(Plane rip, PeopleUnits units)
    {
        var tilt = Math.Atan2(rip.Normal.Z, rip.Normal.Y);
        return Math.Abs(Math.Cos(tilt)) > Math.Abs(Math.Sin(tilt))
            ? $"Side ripped at {units.Angle(Math.Atan(Math.Tan(tilt)))} from square."
            : $"Face ripped to a taper of {units.Angle(Math.Atan(1 / Math.Tan(tilt)))}.";
    }

    private static SheetPolyline Ring(string layer, ImmutableArray<SheetPoint> points) =>
        new(layer, [.. points.Select(p => new SheetVertex(p.X, p.Y))], Closed: true);
}
