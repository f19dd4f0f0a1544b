using System.Collections.Immutable;

namespace BridgeForm.Output.Drawing;

/// <summary>A dimension as plain lines and a text, for formats and readers without dimensions of their own.</summary>
public static class DimensionLines
{
    /// <summary>Length of a tick, and of what a witness line passes the dimension line by, as a share of the text's height.</summary>
    private const double Tick = 0.5;

    /// <summary>Two witness lines, the dimension line, two slanting ticks, and the text above its middle.</summary>
    public static ImmutableArray<SheetEntity> Of(SheetDimension dimension)
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

        return
        [
            Line(Aside(from, Math.Sign(offset) * half), Aside(from, beyond)),
            Line(Aside(to, Math.Sign(offset) * half), Aside(to, beyond)),
            Line(Aside(from, offset), Aside(to, offset)),
            Slant(from),
            Slant(to),
            TextOf(dimension, Aside(from, offset, length / 2)),
        ];
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
