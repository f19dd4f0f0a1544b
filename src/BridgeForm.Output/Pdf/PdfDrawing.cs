using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BridgeForm.Output.Pdf;

/// <summary>Draws sheets on a page of the PDF library, whose points run down from the upper left corner.</summary>
/// <param name="graphics">The page.</param>
/// <param name="height">Height of the page, metres.</param>
internal sealed class PdfDrawing(XGraphics graphics, double height)
{
    private const double Points = PdfWriter.Points;

    private static readonly XColor Accent = XColor.FromArgb(
        LayerStyle.AccentColour.Red, LayerStyle.AccentColour.Green, LayerStyle.AccentColour.Blue);

    /// <summary>One way for every letter, so that each face is embedded once.</summary>
    private static readonly XPdfFontOptions Encoding = new(PdfFontEncoding.Unicode);

    private readonly Dictionary<(long Size, bool Bold), XFont> _fonts = [];
    private double _dx;
    private double _dy = height * Points;

    /// <summary>Draws everything on a sheet, in order.</summary>
    public void Draw(Sheet sheet)
    {
        var pens = sheet.Layers.ToDictionary(l => l.Name, l => new PdfPen(LayerStyle.Of(l.Purpose)), StringComparer.Ordinal);
        foreach (var entity in sheet.Entities)
        {
            Draw(entity, pens[entity.Layer]);
        }
    }

    private void Draw(SheetEntity entity, PdfPen pen)
    {
        switch (entity)
        {
            case SheetLine line:
                graphics.DrawLine(pen.Line, At(line.From), At(line.To));
                break;
            case SheetPolyline polyline:
                Draw(polyline, pen);
                break;
            case SheetCircle circle:
                graphics.DrawEllipse(pen.Line, Around(circle.Center, circle.Radius));
                break;
            case SheetArc arc:
                var sweep = arc.End - arc.Start;
                graphics.DrawArc(
                    pen.Line, Around(arc.Center, arc.Radius), Down(arc.Start), Down(sweep - (Math.Tau * Math.Floor(sweep / Math.Tau))));
                break;
            case SheetText text:
                Draw(text, pen);
                break;
            case SheetDimension dimension:
                foreach (var part in DimensionLines.Turned(dimension))
                {
                    Draw(part, pen);
                }

                break;
            case SheetArea area:
                graphics.DrawPolygon(pen.Shaded(area.Shade), [.. area.Corners.Select(At)], XFillMode.Winding);
                break;
            case SheetWindow window:
                Draw(window);
                break;
            default:
                throw new NotSupportedException(entity.GetType().Name);
        }
    }

    private void Draw(SheetPolyline polyline, PdfPen pen)
    {
        var path = new XGraphicsPath();
        path.StartFigure();
        var vertices = polyline.Vertices;
        for (var i = 0; i + (polyline.Closed ? 0 : 1) < vertices.Length; i++)
        {
            var (from, to) = (vertices[i], vertices[(i + 1) % vertices.Length]);
            if (BulgeArc.IsArc(from.Bulge))
            {
                var arc = BulgeArc.Between(from, to);
                path.AddArc(Around(arc.Center, arc.Radius), Down(arc.Start), Down(arc.Sweep));
            }
            else
            {
                path.AddLine(At(new SheetPoint(from.X, from.Y)), At(new SheetPoint(to.X, to.Y)));
            }
        }

        if (polyline.Closed)
        {
            path.CloseFigure();
        }

        graphics.DrawPath(pen.Line, path);
    }

    private void Draw(SheetText text, PdfPen pen)
    {
        var font = FontOf(text);
        var at = At(text.At);
        if (text.Turn is < 0 or > 0)
        {
            var state = graphics.Save();
            graphics.TranslateTransform(at.X, at.Y);
            graphics.RotateTransform(Down(text.Turn));
            graphics.DrawString(text.Text, font, pen.Ink, new XPoint(0, 0));
            graphics.Restore(state);
        }
        else
        {
            graphics.DrawString(text.Text, font, pen.Ink, at);
        }
    }

    private void Draw(SheetWindow window)
    {
        var (width, high) = (window.Window.MaxX - window.Window.MinX, window.Window.MaxY - window.Window.MinY);
        var corner = At(new SheetPoint(window.At.X, window.At.Y + high));
        var state = graphics.Save();
        graphics.IntersectClip(new XRect(corner.X, corner.Y, Finite.Of(width * Points), Finite.Of(high * Points)));
        var (dx, dy) = (_dx, _dy);
        _dx += (window.At.X - window.Window.MinX) * Points;
        _dy -= (window.At.Y - window.Window.MinY) * Points;
        Draw(window.Content);
        (_dx, _dy) = (dx, dy);
        graphics.Restore(state);
    }

    /// <summary>One font object a size: the library makes each one anew from the file otherwise.</summary>
    private XFont FontOf(SheetText text)
    {
        var size = Finite.Of(text.Height * Points / PageFont.CapitalShare);
        var key = ((long)Math.Round(size * 1000), text.Bold);
        if (!_fonts.TryGetValue(key, out var font))
        {
            font = new XFont(EmbeddedFonts.Family, size, text.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, Encoding);
            _fonts.Add(key, font);
        }

        return font;
    }

    // The library writes what is not a number as such, and readers then leave out the rest of the page without a word: the
    // caution too. Every coordinate, radius, angle and height goes through the gate instead.
    private XPoint At(SheetPoint p) => new(Finite.Of((p.X * Points) + _dx), Finite.Of(_dy - (p.Y * Points)));

    private XRect Around(SheetPoint c, double radius)
    {
        var corner = At(new SheetPoint(c.X - radius, c.Y + radius));
        return new XRect(corner.X, corner.Y, Finite.Of(2 * radius * Points), Finite.Of(2 * radius * Points));
    }

    /// <summary>Degrees, counted the other way round, since Y runs down.</summary>
    private static double Down(double radians) => -Finite.Of(Numbers.Degrees(radians));

    /// <summary>Pen and ink of a layer.</summary>
    private sealed class PdfPen(LayerStyle style)
    {
        private readonly XColor _colour = style.Accent ? Accent : XColors.Black;

        /// <summary>For lines.</summary>
        public XPen Line { get; } = Pen(style);

        /// <summary>For letters.</summary>
        public XBrush Ink { get; } = new XSolidBrush(style.Accent ? Accent : XColors.Black);

        /// <summary>For areas: the colour mixed with white.</summary>
        public XBrush Shaded(double shade)
        {
            byte Mixed(byte part) => (byte)Math.Round(255 - (shade * (255 - part)));
            return new XSolidBrush(XColor.FromArgb(Mixed(_colour.R), Mixed(_colour.G), Mixed(_colour.B)));
        }

        private static XPen Pen(LayerStyle style)
        {
            var pen = new XPen(style.Accent ? Accent : XColors.Black, style.Weight * Points)
            {
                LineJoin = XLineJoin.Miter,
            };
            if (!style.Dashes.IsEmpty)
            {
                // The library counts dashes in widths of the line.
                pen.DashPattern = [.. style.Dashes.Select(d => d / style.Weight)];
            }

            return pen;
        }
    }
}
