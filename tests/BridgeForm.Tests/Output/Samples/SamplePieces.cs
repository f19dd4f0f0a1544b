using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Samples;

/// <summary>Pieces made by hand, with known shapes.</summary>
internal static class SamplePieces
{
    public const double Inch = 0.0254;
    public const double Thin = 1.5 * Inch;
    public const double Wide = 3.5 * Inch;

    /// <summary>A post of 40 in: foot mitred 8°, head square.</summary>
    public static Piece Post { get; } = Stick("P1L", Role.Post, "treated", 40 * Inch, Radians(8), 0, 0, 0);

    /// <summary>A rail of 33 in with parallel bevels of 4°, and no mitre.</summary>
    public static Piece Rail { get; } = Stick("R1", Role.Rail, "cedar", 33 * Inch, 0, Radians(4), 0, Radians(4));

    /// <summary>A board with a mitre and a bevel at each end, leaning differently.</summary>
    public static Piece Board { get; } = Stick("D1", Role.Board, "treated", 35 * Inch, Radians(1), Radians(-2), Radians(-3), Radians(5));

    /// <summary>A base of 56 in, 3-1/2 in square, with two channels of 7/8 in by 5/8 in and four keeper holes from below.</summary>
    public static Piece Base { get; } = BaseWithFloor(0);

    /// <summary>A stick of 24 in, lying flat, with one channel in the lower wide face.</summary>
    public static Piece FlatBase { get; } = MakeFlatBase();

    /// <summary>A base whose channel floors rise by <paramref name="slope"/> a metre towards +Z.</summary>
    public static Piece BaseWithFloor(double slope)
    {
        var (length, depth, width) = (56 * Inch, 0.625 * Inch, 0.875 * Inch);
        double[] centers = [6 * Inch, 50 * Inch];
        (double X, double Y)[] Outline(double z) =>
        [
            (0, -Wide / 2),
            .. centers.SelectMany(c => Notch(c, width, -Wide / 2, -(Wide / 2) + depth + (slope * z))),
            (length, -Wide / 2), (length, Wide / 2), (0, Wide / 2),
        ];
        var solid = Prism.Between(Outline(-Wide / 2), Outline(Wide / 2), Wide, SideOrigin);
        return Finished("B1", Role.Base, "treated", "4x4", solid, new CutStock(Wide, Wide, Square(0, -1), Square(length, 1))
        {
            Channels = [.. centers.Select(c => new Channel(StockFace.MinusY, c, width, depth, slope))],
            Holes =
            [
                .. centers.SelectMany(c => new[] { c - (1.25 * Inch), c + (1.25 * Inch) })
                    .Select(x => new Hole(StockFace.MinusY, x, 0, 0.25 * Inch, 2 * Inch)),
            ],
        });

        static FaceOrigin SideOrigin(int i) =>
            i switch { 1 or 2 or 3 or 5 or 6 or 7 => FaceOrigin.Channel, 9 or 11 => FaceOrigin.Cut, _ => FaceOrigin.Stock };
    }

    public static double Radians(double degrees) => degrees * Math.PI / 180;

    public static Plane Square(double x, double direction) => new(new Vector3d(direction, 0, 0), direction * x);

    private static Piece MakeFlatBase()
    {
        var (length, depth, width, center) = (24 * Inch, 0.5 * Inch, 1 * Inch, 8 * Inch);
        (double X, double Z)[] profile =
        [
            (0, -Thin / 2), .. Notch(center, width, -Thin / 2, -(Thin / 2) + depth), (length, -Thin / 2), (length, Thin / 2), (0, Thin / 2),
        ];
        var solid = Prism.AlongY(
            profile, Wide, i => i is 1 or 2 or 3 ? FaceOrigin.Channel : i is 5 or 7 ? FaceOrigin.Cut : FaceOrigin.Stock);
        return Finished("B2", Role.Base, "treated", "2x4", solid, new CutStock(Wide, Thin, Square(0, -1), Square(length, 1))
        {
            Channels = [new Channel(StockFace.MinusZ, center, width, depth, 0)],
            Holes = [new Hole(StockFace.PlusZ, 16 * Inch, 0.5 * Inch, 0.375 * Inch, 0.75 * Inch)],
        });
    }

    private static (double X, double Y)[] Notch(double center, double width, double low, double high) =>
        [(center - (width / 2), low), (center - (width / 2), high), (center + (width / 2), high), (center + (width / 2), low)];

    /// <summary>A 2x4 whose end planes have mitre and bevel; the longest corner-to-corner length is the blank's.</summary>
    public static Piece Stick(
        string mark, Role role, string stock, double length, double mitre0, double bevel0, double mitre1, double bevel1)
    {
        var (m0, m1) = (Normal(mitre0, bevel0), Normal(mitre1, bevel1));
        (double Y, double Z)[] corners = [(-1, -1), (1, -1), (1, 1), (-1, 1)];
        double Lag(Vector3d m, (double Y, double Z) c) => -((m.Y * c.Y * Wide / 2) + (m.Z * c.Z * Thin / 2)) / m.X;
        var (shift0, shift1) = (-corners.Min(c => Lag(m0, c)), length - corners.Max(c => Lag(m1, c)));
        (double X, double Y)[] Outline(double z) =>
        [
            (shift0 + Lag(m0, (-1, z)), -Wide / 2), (shift1 + Lag(m1, (-1, z)), -Wide / 2),
            (shift1 + Lag(m1, (1, z)), Wide / 2), (shift0 + Lag(m0, (1, z)), Wide / 2),
        ];
        var solid = Prism.Between(Outline(-1), Outline(1), Thin, i => i is 1 or 3 ? FaceOrigin.Cut : FaceOrigin.Stock);
        var shape = new CutStock(
            Wide, Thin, Plane.Through(new Vector3d(shift0, 0, 0), -m0), Plane.Through(new Vector3d(shift1, 0, 0), m1));
        return Finished(mark, role, stock, "2x4", solid, shape) with { Near = End(mitre0, bevel0), Far = End(mitre1, bevel1) };
    }

    /// <summary>The normal of a cut, from mitre = atan2(m_Y, m_X) and bevel = asin(m_Z).</summary>
    private static Vector3d Normal(double mitre, double bevel) => new(
        Math.Cos(bevel) * Math.Cos(mitre), Math.Cos(bevel) * Math.Sin(mitre), Math.Sin(bevel));

    private static EndCut End(double mitre, double bevel) =>
        new(mitre, bevel, Math.Atan(Math.Tan(bevel) / Math.Cos(mitre)), InReach: true, Wedge: 0);

    private static Piece Finished(string mark, Role role, string stock, string section, Solid solid, CutStock shape)
    {
        var volume = Prism.Volume(solid);
        return new Piece
        {
            Mark = mark,
            Role = role,
            Stock = stock,
            Section = section,
            Shape = shape,
            Solid = solid,
            BlankLength = solid.Vertices.Max(v => v.X),
            Volume = volume,
            Mass = 560 * volume,
            CutArea = 0.0125,
            ExposedCutArea = string.Equals(stock, "treated", StringComparison.Ordinal) ? 0.0125 : 0,
            Near = End(0, 0),
            Far = End(0, 0),
            NotRoutable = [],
            Occurrences = [new Occurrence("F01/" + mark, Placement.Identity)],
        };
    }
}
