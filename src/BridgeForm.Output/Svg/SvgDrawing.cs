using System.Globalization;
using System.Text;
using System.Xml;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using static BridgeForm.Output.Svg.SvgWriter;

namespace BridgeForm.Output.Svg;

/// <summary>Draws sheets into an SVG document, whose points run down from the upper left corner.</summary>
/// <param name="xml">The document.</param>
/// <param name="height">Height of the page, metres.</param>
internal sealed class SvgDrawing(XmlWriter xml, double height)
{
    private double _dx;
    private double _dy = height;
    private int _clips;

    /// <summary>Draws everything on a sheet, in order.</summary>
    public void Draw(Sheet sheet)
    {
        var styles = sheet.Layers.ToDictionary(l => l.Name, l => LayerStyle.Of(l.Purpose), StringComparer.Ordinal);
        foreach (var entity in sheet.Entities)
        {
            Draw(entity, styles[entity.Layer]);
        }
    }

    private void Draw(SheetEntity entity, LayerStyle style)
    {
        switch (entity)
        {
            case SheetLine line:
                Path($"M{At(line.From)}L{At(line.To)}", style);
                break;
            case SheetPolyline polyline:
                Path(Outline(polyline), style);
                break;
            case SheetCircle circle:
                Path($"{HalfCircles(circle.Center, circle.Radius)}Z", style);
                break;
            case SheetArc arc:
                var sweep = arc.End - arc.Start;
                Path(Arc(arc, sweep - (Math.Tau * Math.Floor(sweep / Math.Tau))), style);
                break;
            case SheetText text:
                Draw(text, style);
                break;
            case SheetDimension dimension:
                foreach (var part in DimensionLines.Turned(dimension))
                {
                    Draw(part, style);
                }

                break;
            case SheetArea area:
                Start("path");
                Attribute("d", "M" + string.Join('L', area.Corners.Select(At)) + "Z");
                Attribute("fill", Colour(style));
                Attribute("fill-opacity", area.Shade.ToString("0.###", CultureInfo.InvariantCulture));
                xml.WriteEndElement();
                break;
            case SheetWindow window:
                Draw(window);
                break;
            default:
                throw new NotSupportedException(entity.GetType().Name);
        }
    }

    private void Path(string outline, LayerStyle style)
    {
        Start("path");
        Attribute("d", outline);
        Attribute("fill", "none");
        Attribute("stroke", Colour(style));
        Attribute("stroke-width", Millimetres(style.Weight));
        if (!style.Dashes.IsEmpty)
        {
            Attribute("stroke-dasharray", string.Join(' ', style.Dashes.Select(Millimetres)));
        }

        xml.WriteEndElement();
    }

    private void Draw(SheetText text, LayerStyle style)
    {
        Start("text");
        var at = At(text.At);
        if (text.Turn is < 0 or > 0)
        {
            var turn = Numbers.Rounded(-Numbers.Degrees(text.Turn), 4).ToString("0.####", CultureInfo.InvariantCulture);
            Attribute("transform", $"translate({at}) rotate({turn})");
        }
        else
        {
            var comma = at.IndexOf(',', StringComparison.Ordinal);
            Attribute("x", at[..comma]);
            Attribute("y", at[(comma + 1)..]);
        }

        Attribute("font-family", "'DejaVu Sans Condensed','DejaVu Sans',Arial,sans-serif");
        Attribute("font-stretch", "condensed");
        Attribute("font-size", Millimetres(text.Height / PageFont.CapitalShare));
        if (text.Bold)
        {
            Attribute("font-weight", "bold");
        }

        Attribute("fill", Colour(style));
        xml.WriteString(text.Text);
        xml.WriteEndElement();
    }

    private void Draw(SheetWindow window)
    {
        var (width, high) = (window.Window.MaxX - window.Window.MinX, window.Window.MaxY - window.Window.MinY);
        var name = "opening-" + (++_clips).ToString(CultureInfo.InvariantCulture);
        var corner = At(new SheetPoint(window.At.X, window.At.Y + high));
        Start("clipPath");
        Attribute("id", name);
        Start("path");
        Attribute("d", $"M{corner}h{Millimetres(width)}v{Millimetres(high)}h{Millimetres(-width)}Z");
        xml.WriteEndElement();
        xml.WriteEndElement();
        Start("g");
        Attribute("clip-path", $"url(#{name})");
        var (dx, dy) = (_dx, _dy);
        _dx += window.At.X - window.Window.MinX;
        _dy -= window.At.Y - window.Window.MinY;
        Draw(window.Content);
        (_dx, _dy) = (dx, dy);
        xml.WriteEndElement();
    }

    private string Outline(SheetPolyline polyline)
    {
        var path = new StringBuilder();
        var vertices = polyline.Vertices;
        for (var i = 0; i < vertices.Length; i++)
        {
            var before = vertices[Math.Max(0, i - 1)];
            path.Append(i == 0 ? "M" : Step(before, vertices[i])).Append(At(vertices[i]));
        }

        return polyline.Closed
            ? path.Append(Step(vertices[^1], vertices[0])).Append(At(vertices[0])).Append('Z').ToString()
            : path.ToString();
    }

    private static string Step(SheetVertex from, SheetVertex to) => BulgeArc.IsArc(from.Bulge)
        ? Turn(BulgeArc.Between(from, to).Radius, BulgeArc.Between(from, to).Sweep)
        : "L";

    private string Arc(SheetArc arc, double sweep)
    {
        SheetPoint On(double angle) => new(
            arc.Center.X + (arc.Radius * Elementary.Cos(angle)), arc.Center.Y + (arc.Radius * Elementary.Sin(angle)));
        return $"M{At(On(arc.Start))}{Turn(arc.Radius, sweep)}{At(On(arc.Start + sweep))}";
    }

    private string HalfCircles(SheetPoint c, double radius)
    {
        var (left, right) = (At(new SheetPoint(c.X - radius, c.Y)), At(new SheetPoint(c.X + radius, c.Y)));
        return $"M{left}{Turn(radius, Math.PI)}{right}{Turn(radius, Math.PI)}{left}";
    }

    /// <summary>Arc command: the large one beyond half a turn; a turn to the left is against the clock on paper.</summary>
    private static string Turn(double radius, double sweep)
    {
        var r = Millimetres(radius);
        return $"A{r} {r} 0 {(Math.Abs(sweep) > Math.PI ? 1 : 0)} {(sweep > 0 ? 0 : 1)} ";
    }

    private string At(SheetPoint p) => $"{Millimetres(p.X + _dx)},{Millimetres(_dy - p.Y)}";

    private string At(SheetVertex v) => At(new SheetPoint(v.X, v.Y));

    private void Start(string name) => xml.WriteStartElement(name, "http://www.w3.org/2000/svg");

    private void Attribute(string name, string value) => xml.WriteAttributeString(name, value);

    private static string Colour(LayerStyle style)
    {
        var (red, green, blue) = LayerStyle.AccentColour;
        return style.Accent ? $"#{red:X2}{green:X2}{blue:X2}" : "#000000";
    }
}
