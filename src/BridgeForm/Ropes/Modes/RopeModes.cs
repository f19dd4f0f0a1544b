using System.Collections.Immutable;

namespace BridgeForm.Ropes.Modes;

/// <summary>
/// First modes of one rope with what hangs on it, in hertz: from the stiffness of the rope as it hangs, beside the formulas
/// for strings and level cables. Deck and guard are taken as weight only, without stiffness.
/// </summary>
public sealed record RopeModes
{
    /// <summary>Load case whose shape and mass it is.</summary>
    public required string Case { get; init; }

    /// <summary>Both halves up and down together.</summary>
    public required double VerticalSymmetric { get; init; }

    /// <summary>One half up while the other goes down; null with a single frame.</summary>
    public required double? VerticalAntisymmetric { get; init; }

    /// <summary>
    /// To the side, the slowest: swaying and rolling at once where heights are known, else of the rope alone. 0 where the
    /// section rolls over.
    /// </summary>
    public required double Lateral { get; init; }

    /// <summary>To the side with all mass at the ropes' height: what the lever of the mass above them slows down.</summary>
    public required double LateralAtRopes { get; init; }

    /// <summary>Swaying and rolling, all to the same side; null where heights are not known.</summary>
    public double? LateralOneHalfWave { get; init; }

    /// <summary>
    /// Swaying and rolling, one half to the left while the other goes to the right; null where heights are not known, and with
    /// a single frame.
    /// </summary>
    public double? LateralTwoHalfWaves { get; init; }

    /// <summary>Slowest modes with their modal masses: up and down, then swaying and rolling; each kind slowest first.</summary>
    public ImmutableArray<WalkedMode> Walked { get; init; } = [];

    /// <summary>String with one half wave: for the lateral mode.</summary>
    public required double StringFirst { get; init; }

    /// <summary>String with two half waves: for the antisymmetric mode.</summary>
    public required double StringSecond { get; init; }

    /// <summary>Irvine's symmetric mode.</summary>
    public required double IrvineSymmetric { get; init; }

    /// <summary>Irvine's λ².</summary>
    public required double LambdaSquared { get; init; }

    /// <summary>Mass per metre of span between the outermost frames' half bays on one rope, the rope included, kg/m.</summary>
    public required double MassPerLength { get; init; }

    /// <summary>Horizontal tension, newtons.</summary>
    public required double Horizontal { get; init; }

    /// <summary>The slowest vertical mode.</summary>
    public double Vertical => Math.Min(VerticalSymmetric, VerticalAntisymmetric ?? VerticalSymmetric);

    /// <summary>Modes of a shape; null when nothing hangs between the supports or the rope has no stiffness.</summary>
    /// <param name="id">Id of its load case.</param>
    /// <param name="shape">The rope under its loads, which are taken as weight of mass.</param>
    /// <param name="token">Asked from round to round.</param>
    public static RopeModes? Find(string id, RopeShape shape, CancellationToken token = default)
    {
        var inner = shape.Nodes.Length - 2;
        if (inner < 1 || Masses(shape) is not { } masses)
        {
            return null;
        }

        double[] twice = [.. masses.SelectMany(m => new[] { m, m })];
        if (LowestModes.Find(InPlane(shape), twice, token) is not { } plane
            || LowestModes.Find(Sideways(shape), masses, token) is not { } side)
        {
            return null;
        }

        var symmetric = plane.FirstOrDefault(m => Parity(m) > 0) ?? plane[0];
        // Half a bay next to each support rests on it.
        var swinging = ((shape.Nodes[^1].X + shape.Nodes[^2].X) - (shape.Nodes[0].X + shape.Nodes[1].X)) / 2;
        var (span, h, perLength) = (shape.Nodes[^1].X - shape.Nodes[0].X, shape.Horizontal, masses.Sum() / swinging);
        return new RopeModes
        {
            Case = id,
            VerticalSymmetric = symmetric.Hertz,
            VerticalAntisymmetric = inner > 1 ? plane.FirstOrDefault(m => Parity(m) < 0)?.Hertz : null,
            Lateral = side[0].Hertz,
            LateralAtRopes = side[0].Hertz,
            Walked = [.. plane.Take(LowestModes.Wanted).Select(m => Upright(m, masses))],
            StringFirst = CableFormulas.TautString(1, span, h, perLength),
            StringSecond = CableFormulas.TautString(2, span, h, perLength),
            IrvineSymmetric = CableFormulas.Symmetric(span, shape.Sag, h, shape.AxialStiffness, perLength),
            LambdaSquared = CableFormulas.LambdaSquared(span, shape.Sag, h, shape.AxialStiffness),
            MassPerLength = perLength,
            Horizontal = h,
        };
    }

    // Both ropes alike, where the node that moves most goes up and down by 1.
    private static WalkedMode Upright(Mode mode, double[] masses)
    {
        var (mass, most) = (0.0, 0.0);
        for (var i = 0; i < masses.Length; i++)
        {
            var (x, drop) = (mode.Shape[2 * i], mode.Shape[(2 * i) + 1]);
            (mass, most) = (mass + (2 * masses[i] * ((x * x) + (drop * drop))), Math.Max(most, Math.Abs(drop)));
        }

        return new WalkedMode(mode.Hertz, IsCoupled: false, mass / (most * most), double.PositiveInfinity);
    }

    // The rope's own mass is brought to its nodes by halves.
    private static double[]? Masses(RopeShape shape)
    {
        var masses = new double[shape.Nodes.Length - 2];
        for (var i = 0; i < masses.Length; i++)
        {
            var rope = shape.WeightPerLength * (shape.Segments[i].UnstressedLength + shape.Segments[i + 1].UnstressedLength) / 2;
            masses[i] = (shape.Loads[i + 1] + rope) / Quantities.Units.StandardGravity;
        }

        return masses.All(m => m > 0) ? masses : null;
    }

    // Degrees of freedom x and drop of each node in turn. A bay's stiffness is the inverse of its flexibility.
    private static BandedMatrix InPlane(RopeShape shape)
    {
        var matrix = new BandedMatrix(2 * (shape.Nodes.Length - 2), 3);
        for (var bay = 0; bay < shape.Segments.Length; bay++)
        {
            var segment = shape.Segments[bay];
            var piece = new ElasticCatenary(
                segment.Horizontal, segment.VerticalA, segment.UnstressedLength, shape.WeightPerLength, shape.AxialStiffness);
            var determinant = (piece.XByHorizontal * piece.DropByVertical) - (piece.XByVertical * piece.XByVertical);
            var (xx, xd, dd) = (
                piece.DropByVertical / determinant, -piece.XByVertical / determinant, piece.XByHorizontal / determinant);
            var (a, b) = (2 * (bay - 1), 2 * bay);
            if (bay > 0)
            {
                Add(matrix, a, xx, xd, dd);
            }

            if (bay < shape.Segments.Length - 1)
            {
                Add(matrix, b, xx, xd, dd);
            }

            if (bay == 0 || bay == shape.Segments.Length - 1)
            {
                continue;
            }

            (matrix[b, a], matrix[b, a + 1]) = (-xx, -xd);
            (matrix[b + 1, a], matrix[b + 1, a + 1]) = (-xd, -dd);
        }

        return matrix;
    }

    private static void Add(BandedMatrix matrix, int at, double xx, double xd, double dd)
    {
        matrix[at, at] += xx;
        matrix[at + 1, at] += xd;
        matrix[at + 1, at + 1] += dd;
    }

    // To the side a bay gives way by ∫ds/T = Δx/H per newton.
    private static BandedMatrix Sideways(RopeShape shape)
    {
        var matrix = new BandedMatrix(shape.Nodes.Length - 2, 1);
        for (var bay = 0; bay < shape.Segments.Length; bay++)
        {
            var stiffness = shape.Horizontal / (shape.Nodes[bay + 1].X - shape.Nodes[bay].X);
            if (bay > 0)
            {
                matrix[bay - 1, bay - 1] += stiffness;
            }

            if (bay < shape.Segments.Length - 1)
            {
                matrix[bay, bay] += stiffness;
            }

            if (bay > 0 && bay < shape.Segments.Length - 1)
            {
                matrix[bay, bay - 1] = -stiffness;
            }
        }

        return matrix;
    }

    // Positive when both halves go the same way: node by node against the mirrored node, vertical part.
    private static double Parity(Mode mode)
    {
        var count = mode.Shape.Length / 2;
        return Enumerable.Range(0, count).Sum(i => mode.Shape[(2 * i) + 1] * mode.Shape[(2 * (count - 1 - i)) + 1]);
    }
}
