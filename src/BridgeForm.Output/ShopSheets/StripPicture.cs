using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Quantities;

namespace BridgeForm.Output.ShopSheets;

/// <summary>
/// The two rips of a strip seen along the fence, at half size: the stock on its edge before the tilted blade, and lying flat before
/// the upright one. The fence is at the left, at x = 0; the table at y = 0. Where no tool rips it, the end grain with the strip in it.
/// </summary>
internal static class StripPicture
{
    private const double Scale = 0.5;

    // Metres: how far fence, table and blade reach beyond the wood; between the views on paper.
    private const double Beyond = 0.020;
    private const double Above = 0.008;
    private const double Apart = 0.020;

    /// <summary>Both views, of the widest packer of the set-up.</summary>
    public static ImmutableArray<SheetEntity> Draw(StripSetup setup, QuantityText words)
    {
        var taper = setup.Pieces.MaxBy(p => p.Taper.Width)!.Taper;
        if (setup.Way == RipWay.Hand)
        {
            return [.. EndGrain(setup, taper, words, new View(0))];
        }

        var second = (Scale * (setup.Stick.Thickness + (2 * Beyond))) + Apart;
        return
        [
            .. Tilted(setup, taper, words, new View(0)),
            .. setup.UprightFence(taper) is { } fence ? Upright(setup, taper, fence, words, new View(second)) : [],
        ];
    }

    /// <summary>No machine, no fence: stock and strip, to gauge both lines by.</summary>
    private static IEnumerable<SheetEntity> EndGrain(StripSetup setup, Taper taper, QuantityText words, View view)
    {
        foreach (var ring in Rings(setup, taper, setup.Stick.Width, view))
        {
            yield return ring;
        }

        yield return view.Text(setup.Stick.Thickness + 0.004, taper.Width / 2, "strip");
        yield return view.Text(
            0, -0.014, $"1 : 2, end grain; {words.Fine(setup.Thick)} at the thick edge, "
                + $"{words.Fine(setup.ThicknessAt(taper.Width))} at the thin one, {words.Fine(taper.Width)} wide");
    }

    private static IEnumerable<SheetEntity> Rings(StripSetup setup, Taper taper, double high, View view)
    {
        var thick = setup.Stick.Thickness;
        var inner = thick - setup.Thick;
        var lean = taper.Width * Elementary.Tan(setup.Tilt);
        yield return view.Ring(PageLayers.Cut, (0, 0), (thick, 0), (thick, high), (0, high));
        yield return view.Ring(PageLayers.Pocket, (inner, 0), (thick, 0), (thick, taper.Width), (inner + lean, taper.Width));
    }

    private static IEnumerable<SheetEntity> Tilted(StripSetup setup, Taper taper, QuantityText words, View view)
    {
        var (thick, high) = (setup.Stick.Thickness, setup.FromWide(taper) ? setup.Stick.Width : taper.Width);
        var inner = thick - setup.Thick;
        foreach (var ring in Rings(setup, taper, high, view))
        {
            yield return ring;
        }

        var reach = taper.Width + Above;
        yield return view.Line(PageLayers.Accent, inner, 0, inner + (reach * Elementary.Tan(setup.Tilt)), reach);
        foreach (var part in view.Machine(thick + Beyond, high + Above))
        {
            yield return part;
        }

        yield return view.Text(thick + 0.004, taper.Width / 2, "strip");
        yield return view.Text(
            0, -0.028, $"1 : 2, along the fence; tilted {Numbers.DegreeText(setup.Tilt)}, fence {words.Fine(setup.TiltedFence)}");
    }

    /// <summary>Flat, the strip below at the right where the stock stays wide; else only its width is ripped.</summary>
    private static IEnumerable<SheetEntity> Upright(StripSetup setup, Taper taper, double fence, QuantityText words, View view)
    {
        var (wide, high) = (setup.Stick.Width, setup.Stick.Thickness);
        var part = setup.FromWide(taper) ? wide - taper.Width : taper.Width;
        yield return view.Ring(PageLayers.Cut, (0, 0), (wide, 0), (wide, high), (0, high));
        if (setup.FromWide(taper))
        {
            yield return view.Ring(
                PageLayers.Pocket, (part, 0), (wide, 0), (wide, setup.Thick), (part, setup.ThicknessAt(taper.Width)));
        }

        yield return view.Line(
            PageLayers.Accent, part, 0, part, setup.FromWide(taper) ? setup.ThicknessAt(taper.Width) + Above : high + Above);
        foreach (var line in view.Machine(wide + Beyond, high + Above))
        {
            yield return line;
        }

        yield return view.Text(0, -0.014, $"upright, fence {words.Fine(fence)}" + (setup.FromWide(taper) ? "" : " (first)"));
    }

    /// <summary>A view with its fence at so many metres on paper.</summary>
    private readonly struct View(double at)
    {
        private readonly double _at = at;

        public SheetPolyline Ring(string layer, params ReadOnlySpan<(double X, double Y)> corners)
        {
            var points = ImmutableArray.CreateBuilder<SheetVertex>(corners.Length);
            foreach (var (x, y) in corners)
            {
                points.Add(new SheetVertex(_at + (x * Scale), y * Scale));
            }

            return new SheetPolyline(layer, points.ToImmutable(), Closed: true);
        }

        public SheetLine Line(string layer, double x1, double y1, double x2, double y2) =>
            new(layer, At(x1, y1), At(x2, y2));

        public SheetText Text(double x, double y, string words) => PageText.Left(At(x, y).X, At(x, y).Y, words, PageText.Small);

        /// <summary>Fence and table.</summary>
        public IEnumerable<SheetEntity> Machine(double right, double top)
        {
            yield return Line(PageLayers.Frame, -Beyond, 0, right, 0);
            yield return Line(PageLayers.Frame, 0, 0, 0, top);
            yield return Text(-Beyond + 0.001, top - 0.004, "fence");
        }

        private SheetPoint At(double x, double y) => new(_at + (x * Scale), y * Scale);
    }
}
