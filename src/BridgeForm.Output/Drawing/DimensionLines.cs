using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>A dimension as plain lines and a text, for formats and readers without dimensions of their own.</summary>
public static class DimensionLines
{
    /// <summary>
    /// Length of an arrow, gap before a witness line and before the text, and what a witness line passes the dimension
    /// line by, as a share of the text's height. Common practice, no source.
    /// </summary>
    private const double Detail = 0.5;

    /// <summary>Half the width of an arrow as a share of its length.</summary>
    private const double ArrowSlope = 1.0 / 3;

    /// <summary>
    /// Two witness lines, the dimension line, an open arrow at each end, and the text above the line's middle, or to the
    /// right of it. Nothing but the text reaches past the points measured.
    /// </summary>
    public static ImmutableArray<SheetEntity> Draw(SheetDimension dimension)
    {
        var (lines, middle, _) = Lines(dimension);
        return [.. lines, TextOf(dimension, middle)];
    }

    /// <summary>
    /// The same with the text along the dimension line, centred by the widths of the page's font, read from below or from the
    /// right.
    /// </summary>
    internal static ImmutableArray<SheetEntity> Turned(SheetDimension dimension)
    {
        var (lines, middle, angle) = Lines(dimension);
        var turn = angle > (Math.PI / 2)
            + Tolerances.Upright ? angle - Math.PI : angle <= Tolerances.Upright - (Math.PI / 2) ? angle + Math.PI : angle;
        var half = PageFont.Regular.Width(dimension.Text, dimension.Height) / 2;
        var (ux, uy, up) = (Elementary.Cos(turn), Elementary.Sin(turn), Detail * dimension.Height);
        var at = new SheetPoint(middle.X - (half * ux) - (up * uy), middle.Y - (half * uy) + (up * ux));
        return [.. lines, new SheetText(dimension.Layer, at, dimension.Height, dimension.Text) { Turn = turn }];
    }

    private static (ImmutableArray<SheetEntity> Lines, SheetPoint Middle, double Angle) Lines(SheetDimension dimension)
    {
        var (from, to) = (dimension.From, dimension.To);
        var length = Math.Sqrt(Square(to.X - from.X) + Square(to.Y - from.Y));

        // A distance of nothing has no direction of its own: it is drawn level.
        var (ux, uy) = length > 0 ? ((to.X - from.X) / length, (to.Y - from.Y) / length) : (1, 0);
        var offset = ((dimension.Line.Y - from.Y) * ux) - ((dimension.Line.X - from.X) * uy);
        var detail = Detail * dimension.Height;
        var outward = Math.Sign(offset) * detail;

        SheetPoint At(SheetPoint p, double across, double along = 0) =>
            new(p.X - (across * uy) + (along * ux), p.Y + (across * ux) + (along * uy));
        SheetLine Line(SheetPoint a, SheetPoint b) => new(dimension.Layer, a, b);
        SheetLine Barb(SheetPoint p, double along, double side) =>
            Line(At(p, offset), At(p, offset + (side * detail * ArrowSlope), along));

        ImmutableArray<SheetEntity> lines =
        [
            Line(At(from, outward), At(from, offset + outward)),
            Line(At(to, outward), At(to, offset + outward)),
            Line(At(from, offset), At(to, offset)),
            Barb(from, detail, 1),
            Barb(from, detail, -1),
            Barb(to, -detail, 1),
            Barb(to, -detail, -1),
        ];
        return (lines, At(from, offset, length / 2), Elementary.Atan2(uy, ux));
    }

    private static SheetText TextOf(SheetDimension dimension, SheetPoint middle)
    {
        var text = new SheetText(dimension.Layer, middle, dimension.Height, dimension.Text);
        var gap = Detail * dimension.Height;
        var upright = Math.Abs(dimension.To.Y - dimension.From.Y) > Math.Abs(dimension.To.X - dimension.From.X);
        return text with
        {
            At = upright
                ? new SheetPoint(middle.X + gap, middle.Y - (dimension.Height / 2))
                : new SheetPoint(middle.X - (text.Width / 2), middle.Y + gap),
        };
    }

    private static double Square(double x) => x * x;
}
