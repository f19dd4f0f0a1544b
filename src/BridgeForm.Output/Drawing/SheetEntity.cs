using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>A point of the page: X to the right, Y upwards, metres at true size.</summary>
public readonly record struct SheetPoint(double X, double Y)
{
    /// <summary>To the right, metres; finite.</summary>
    public double X { get; init => field = Finite.Of(value); } = Finite.Of(X);

    /// <summary>Upwards, metres; finite.</summary>
    public double Y { get; init => field = Finite.Of(value); } = Finite.Of(Y);
}

/// <summary>A corner of a polyline. Metres.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Upwards.</param>
/// <param name="Bulge">
/// Tangent of a quarter of the angle that the arc to the next corner turns through; positive to the left
/// (counter-clockwise), 0 for a straight line.
/// </param>
public readonly record struct SheetVertex(double X, double Y, double Bulge = 0)
{
    /// <summary>To the right, metres; finite.</summary>
    public double X { get; init => field = Finite.Of(value); } = Finite.Of(X);

    /// <summary>Upwards, metres; finite.</summary>
    public double Y { get; init => field = Finite.Of(value); } = Finite.Of(Y);

    /// <summary>Tangent of a quarter of the arc's angle; finite.</summary>
    public double Bulge { get; init => field = Finite.Of(value); } = Finite.Of(Bulge);
}

/// <summary>Something drawn on a sheet.</summary>
/// <param name="Layer">Name of the layer it lies on.</param>
public abstract record SheetEntity(string Layer);

/// <summary>A straight line.</summary>
public sealed record SheetLine(string Layer, SheetPoint From, SheetPoint To) : SheetEntity(Layer);

/// <summary>A row of straight lines and arcs.</summary>
/// <param name="Layer">Name of the layer.</param>
/// <param name="Vertices">Corners; of a closed polyline the last does not repeat the first.</param>
/// <param name="Closed">Runs back from the last corner to the first.</param>
public sealed record SheetPolyline(string Layer, ImmutableArray<SheetVertex> Vertices, bool Closed) : SheetEntity(Layer);

/// <summary>A full circle.</summary>
public sealed record SheetCircle(string Layer, SheetPoint Center, double Radius) : SheetEntity(Layer);

/// <summary>Part of a circle, counter-clockwise from <paramref name="Start"/> to <paramref name="End"/>, radians from +X.</summary>
public sealed record SheetArc(string Layer, SheetPoint Center, double Radius, double Start, double End)
    : SheetEntity(Layer);

/// <summary>A filled polygon without an edge.</summary>
/// <param name="Layer">Name of the layer.</param>
/// <param name="Corners">Corners in order; the last does not repeat the first.</param>
/// <param name="Shade">Share of the layer's colour, from 0 (white) to 1.</param>
public sealed record SheetArea(string Layer, ImmutableArray<SheetPoint> Corners, double Shade) : SheetEntity(Layer);

/// <summary>Part of another drawing seen through a rectangular opening; what lies outside the opening is not shown.</summary>
/// <param name="Layer">Name of the layer.</param>
/// <param name="Content">The other drawing, at the same scale; its layers count, not <paramref name="Layer"/>.</param>
/// <param name="Window">The opening, in the other drawing.</param>
/// <param name="At">Where the opening's lower left corner comes to lie.</param>
public sealed record SheetWindow(string Layer, Sheet Content, SheetBox Window, SheetPoint At) : SheetEntity(Layer);

/// <summary>One line of text.</summary>
/// <param name="Layer">Name of the layer.</param>
/// <param name="At">Left end of its base line.</param>
/// <param name="Height">Height of a capital letter, metres.</param>
/// <param name="Text">Any characters; writers encode them as their format asks.</param>
public sealed record SheetText(string Layer, SheetPoint At, double Height, string Text) : SheetEntity(Layer)
{
    /// <summary>
    /// Advance of one character as a share of the text's height: that of the widest common drawing fonts, so that a
    /// box made with it is never too small. Common practice, no source.
    /// </summary>
    public const double Advance = 1.0;

    /// <summary>Share of the height that letters may reach below the base line.</summary>
    public const double Descent = 0.35;

    /// <summary>Turned about <see cref="At"/>, radians counter-clockwise; formats for shop programs want 0.</summary>
    public double Turn { get; init; }

    /// <summary>In bold letters, where the format has them.</summary>
    public bool Bold { get; init; }

    /// <summary>What begins here, as a reader's list of contents names it; null where nothing does.</summary>
    public string? Opens { get; init; }

    /// <summary>Largest width the text may take, metres.</summary>
    public double Width => WidthOf(Text.Length, Height);

    /// <summary>Largest width of so many characters of that height, metres.</summary>
    public static double WidthOf(int characters, double height) => characters * height * Advance;
}

/// <summary>A distance between two points, with a line beside them and its value on it.</summary>
/// <param name="Layer">Name of the layer.</param>
/// <param name="From">First point measured.</param>
/// <param name="To">Second point measured.</param>
/// <param name="Line">A point on the dimension line, which is parallel to the line measured.</param>
/// <param name="Height">Height of the text, metres.</param>
/// <param name="Text">The value as people read it.</param>
public sealed record SheetDimension(
    string Layer, SheetPoint From, SheetPoint To, SheetPoint Line, double Height, string Text) : SheetEntity(Layer);

/// <summary>The arc of a polyline's bulge as a circle's part.</summary>
/// <param name="Center">Centre of the circle.</param>
/// <param name="Radius">Its radius, metres.</param>
/// <param name="Start">Direction of the first corner from the centre, radians from +X.</param>
/// <param name="Sweep">Turn from the first corner to the second, radians; positive to the left.</param>
internal readonly record struct BulgeArc(SheetPoint Center, double Radius, double Start, double Sweep)
{
    /// <summary>A straight line has a bulge of zero, written as such.</summary>
    public static bool IsArc(double bulge) => bulge is < 0 or > 0;

    /// <summary>
    /// The arc of a bulge b = tan(φ/4): with chord c the centre lies c·(1 − b²)/(4b) to the chord's left of its middle, and the
    /// radius is c·(1 + b²)/(4|b|).
    /// </summary>
    public static BulgeArc Between(SheetVertex from, SheetVertex to)
    {
        var (dx, dy, b) = (to.X - from.X, to.Y - from.Y, from.Bulge);
        var left = (1 - (b * b)) / (4 * b);
        var center = new SheetPoint(((from.X + to.X) / 2) - (left * dy), ((from.Y + to.Y) / 2) + (left * dx));
        var radius = Math.Sqrt((dx * dx) + (dy * dy)) * (1 + (b * b)) / (4 * Math.Abs(b));
        return new BulgeArc(center, radius, Elementary.Atan2(from.Y - center.Y, from.X - center.X), 4 * Elementary.Atan(b));
    }
}
