using System.Collections.Immutable;
using BridgeForm.Ropes.Modes;

namespace BridgeForm.Ropes.Pairs;

/// <summary>Masses that stand on two ropes, brought to their nodes, supports included (not read there); the ropes' own not in it.</summary>
/// <param name="Masses">Of the whole bridge, kg.</param>
/// <param name="Firsts">Mass × height over the ropes' axes, kg·m.</param>
/// <param name="Seconds">Mass × (height² + distance from the middle²): inertia against rolling about the ropes' axes, kg·m².</param>
public sealed record PairMasses(ImmutableArray<double> Masses, ImmutableArray<double> Firsts, ImmutableArray<double> Seconds);

/// <summary>Where people walk.</summary>
/// <param name="Heights">Of the deck over the ropes' axes at each node, metres.</param>
/// <param name="HalfWidth">From the middle to the edge, metres.</param>
public sealed record WalkedDeck(ImmutableArray<double> Heights, double HalfWidth);

/// <summary>
/// First motions to the side of frames that stand above their ropes: they sway and roll at once, for the mass lies above the
/// ropes that hold it. Hertz; 0 where the section rolls over instead of swinging.
/// </summary>
/// <param name="OneHalfWave">All to the same side.</param>
/// <param name="TwoHalfWaves">One half to the left while the other goes to the right; null with a single frame.</param>
public sealed record SwayModes(double OneHalfWave, double? TwoHalfWaves)
{
    private const int PerFrame = 3;

    // Of the squares of all moves: less than this is round-off of a mode that does not go to the side at all.
    private const double Seen = 1e-6;

    // One half wave and two are among the three slowest; frequencies are printed with two decimals.
    private const int Wanted = 3;
    private const double Settled = 1e-7;

    /// <summary>The slowest with their modal masses under the deck, slowest first; empty where no deck was given.</summary>
    public ImmutableArray<WalkedMode> Walked { get; init; } = [];

    /// <summary>The slower of the two.</summary>
    public double Slowest => Math.Min(OneHalfWave, TwoHalfWaves ?? OneHalfWave);

    /// <summary>Of two ropes that carry alike; null when no frame hangs between the supports.</summary>
    /// <param name="rope">One rope, as <see cref="PairSolver"/> was given it.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them, evenly.</param>
    /// <param name="pair">Both ropes under it, alike.</param>
    /// <param name="masses">Its masses.</param>
    /// <param name="deck">Where people walk; null not to ask.</param>
    /// <param name="token">Asked from round to round.</param>
    public static SwayModes? Find(
        LoadCaseRequest rope, double spacing, PairLoads loads, PairShape pair, PairMasses masses, WalkedDeck? deck = null,
        CancellationToken token = default)
    {
        if (pair.Left.Nodes.Length < 3 || Inertia(pair.Left, spacing, masses) is not { } inertia)
        {
            return null;
        }

        if (
            LowestModes.Find(
                Stiffness(BayStiffness.Find(rope, pair.Left), pair.Left, spacing, loads), inertia, Wanted, Settled, token) is not { } modes)
        {
            return new SwayModes(0, 0);
        }

        var one = modes.FirstOrDefault(m => Parity(m) > 0) ?? modes[0];
        return new SwayModes(one.Hertz, pair.Left.Nodes.Length > 3 ? modes.FirstOrDefault(m => Parity(m) < 0)?.Hertz : null)
        {
            Walked = deck is null ? [] : [.. modes.Take(Wanted).Select(m => Under(deck, m, inertia, spacing))],
        };
    }

    // Of the whole bridge: the matrices are those of half of it. Where frames roll the deck's edge goes up and down, and the deck
    // to the side by its height.
    private static WalkedMode Under(WalkedDeck deck, Mode mode, BandedMatrix inertia, double spacing)
    {
        double[] shape = [.. mode.Shape];
        var moved = inertia.Times(shape);
        var (mass, up, side) = (0.0, 0.0, 0.0);
        for (var i = 0; i < shape.Length; i++)
        {
            mass += 2 * shape[i] * moved[i];
        }

        for (var at = 0; at < shape.Length; at += PerFrame)
        {
            var roll = 2 * shape[at + 1] / spacing;
            up = Math.Max(up, Math.Abs(roll * deck.HalfWidth));
            side = Math.Max(side, Math.Abs(shape[at + 2] + (roll * deck.Heights[(at / PerFrame) + 1])));
        }

        return new WalkedMode(mode.Hertz, IsCoupled: true, mass / (up * up), mass / (side * side));
    }

    // x and drop of the left node, the right one's the other way, and the frame's move to the side.
    private static BandedMatrix Stiffness(BayStiffness[] bays, RopeShape shape, double spacing, PairLoads loads)
    {
        var matrix = new BandedMatrix(PerFrame * (bays.Length - 1), 4);
        PairStiffness.Add(matrix, bays, PerFrame, 0);
        for (var i = 0; PerFrame * i < matrix.Size; i++)
        {
            matrix[(PerFrame * i) + 1, (PerFrame * i) + 1] -= 2 * loads.HeightMoments[i + 1] / (spacing * spacing);
        }

        for (var bay = 0; bay < bays.Length; bay++)
        {
            // Of one rope: the energy of half the bridge, as everything here.
            var (stiff, a, b) = (HeldDeck.Sideways(shape, bay), (PerFrame * (bay - 1)) + 2, (PerFrame * bay) + 2);
            if (bay > 0)
            {
                matrix[a, a] += stiff;
            }

            if (bay < bays.Length - 1)
            {
                matrix[b, b] += stiff;
            }

            if (bay > 0 && bay < bays.Length - 1)
            {
                matrix[b, a] -= stiff;
            }
        }

        return matrix;
    }

    // Half of the bridge's, for half its stiffness: roll is 2·drop / spacing. The rope's own mass is brought to its nodes by halves.
    private static BandedMatrix? Inertia(RopeShape shape, double spacing, PairMasses masses)
    {
        var matrix = new BandedMatrix(PerFrame * (shape.Nodes.Length - 2), 4);
        for (var i = 1; i + 1 < shape.Nodes.Length; i++)
        {
            var own = shape.WeightPerLength * (shape.Segments[i - 1].UnstressedLength + shape.Segments[i].UnstressedLength)
                / 2 / Quantities.Units.StandardGravity;
            var (half, at, turn) = ((masses.Masses[i] / 2) + own, PerFrame * (i - 1), 2 / spacing);
            if (!(half > 0))
            {
                return null;
            }

            matrix[at, at] = half;
            matrix[at + 1, at + 1] = (masses.Seconds[i] / 2 * turn * turn) + own;
            matrix[at + 2, at + 2] = half;
            matrix[at + 2, at + 1] = masses.Firsts[i] / 2 * turn;
        }

        return matrix;
    }

    // Positive when both halves of the bridge go to the same side, negative when they go to opposite ones, 0 where frames only
    // yaw on the spot.
    private static int Parity(Mode mode)
    {
        var (count, sum, all) = (mode.Shape.Length / PerFrame, 0.0, 0.0);
        for (var i = 0; i < count; i++)
        {
            sum += mode.Shape[(PerFrame * i) + 2] * mode.Shape[(PerFrame * (count - 1 - i)) + 2];
            for (var k = 0; k < PerFrame; k++)
            {
                all += mode.Shape[(PerFrame * i) + k] * mode.Shape[(PerFrame * i) + k];
            }
        }

        return Math.Abs(sum) > Seen * all ? Math.Sign(sum) : 0;
    }
}
