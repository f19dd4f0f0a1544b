using System.Collections.Immutable;

namespace BridgeForm.Output.Drawing;

/// <summary>A dimension as plain lines and a text, for formats and readers without dimensions of their own.</summary>
public static class DimensionLines
{
    /// <summary>Length of a tick, and of what a witness line passes the dimension line by, as a share of the text's height.</summary>
    private const double Tick = 0.5;

    /// <summary>Lines this close to upright, radians, are all read from the right, whichever end comes first.</summary>
    private const double Upright = 1e-9;

    /// <summary>Two witness lines, the dimension line, two slanting ticks, and the text above its middle, level.</summary>
    public static ImmutableArray<SheetEntity> Of(SheetDimension dimension)
    {
        var (lines, middle, _) = Lines(dimension);
        return [.. lines, TextOf(dimension, middle)];
    }

    /// <summary>The same with the text along the dimension line, centred by the widths of the page's font, read from below or from the right.</summary>
    internal static ImmutableArray<SheetEntity> Turned(SheetDimension dimension)
    {
        var (lines, middle, angle) = Lines(dimension);
        var turn = angle > (Math.PI / 2) + Upright ? angle - Math.PI : angle <= Upright - (Math.PI / 2) ? angle + Math.PI : angle;
        var half = PageFont.Regular.Width(dimension.Text, dimension.Height) / 2;
        var (ux, uy, up) = (Math.Cos(turn), Math.Sin(turn), Tick * dimension.Height);
        var at = new SheetPoint(middle.X - (half * ux) - (up * uy), middle.Y - (half * uy) + (up * ux));
        return [.. lines, new SheetText(dimension.Layer, at, dimension.Height, dimension.Text) { Turn = turn }];
    }

    private static (ImmutableArray<SheetEntity> Lines, SheetPoint Middle, double Angle) Lines(SheetDimension dimension)
    {
        var (from, to) = (dimension.From, dimension.To);
        var length = Math.Sqrt(Square(to.X - from.X) + Square(to.Y - from.Y));
        var (ux, uy) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        var offset = ((dimension.Line.Y - from.Y) * ux) - ((dimension.Line.X - from.X) * uy);
        var beyond = offset + (Math.Sign(offset) * Tick * dimension.Height);
        var half = Tick / 2 * dimension.Height;

        SheetPoint Aside(SheetPoint p, double across, double along = 0) =>
            new(p.X - (across * uy) + (along * ux), p.Y + (across * ux) + (along * uy));
        SheetLine Line(SheetPoint a, SheetPoint b) => new(dimension.Layer, a, b);
        SheetLine Slant(SheetPoint p) => Line(Aside(p, offset - half, -half), Aside(p, offset + half, half));

        ImmutableArray<SheetEntity> lines =
        [
            Line(Aside(from, Math.Sign(offset) * half), Aside(from, beyond)),
            Line(Aside(to, Math.Sign(offset) * half), Aside(to, beyond)),
            Line(Aside(from, offset), Aside(to, offset)),
            Slant(from),
            Slant(to),
        ];
        return (lines, Aside(from, offset, length / 2), Math.Atan2(uy, ux));
    }

    private static SheetText TextOf(SheetDimension dimension, SheetPoint middle)
    {
        var text = new SheetText(dimension.Layer, middle, dimension.Height, dimension.Text);
        return text with
        {
            At = new SheetPoint(middle.X - (text.Width / 2), middle.Y + (Tick * dimension.Height)),
        };
    }

    private static double Square(double x) => x * x;
}
