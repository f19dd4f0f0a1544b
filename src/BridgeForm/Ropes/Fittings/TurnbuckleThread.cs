using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Ropes.Fittings;

/// <summary>The thread of a turnbuckle's end fittings, right hand at one end and left hand at the other.</summary>
/// <param name="Pitch">From thread to thread, metres.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record TurnbuckleThread(double Pitch, string Source)
{
    /// <summary>A spanner on the body's hexagon is set anew every sixth of a turn.</summary>
    public const int FlatsPerTurn = 6;

    // Threads to the inch by size in inches (ASME B1.1, UNC, from three printed charts).
    private static readonly ImmutableArray<(string Size, int PerInch)> s_coarse =
    [
        ("1/4", 20), ("5/16", 18), ("3/8", 16), ("1/2", 13), ("5/8", 11), ("3/4", 10), ("7/8", 9), ("1", 8), ("1-1/4", 7),
        ("1-3/8", 6), ("1-1/2", 6),
    ];

    /// <summary>By how much one turn of the body changes the turnbuckle's length, metres: both end fittings move.</summary>
    public double PerTurn => 2 * Pitch;

    /// <summary>The coarse thread of a size in inches, as people write it; null where the table has none.</summary>
    public static TurnbuckleThread? CoarseOf(string size) => s_coarse
        .Where(row => string.Equals(row.Size, size, StringComparison.Ordinal))
        .Select(row => new TurnbuckleThread(
            Quantities.Units.MetresPerInch / row.PerInch,
            FormattableString.Invariant(
                $"unified coarse thread, ASME B1.1: {row.PerInch} to the inch; makers of turnbuckles to FF-T-791b cut it")))
        .FirstOrDefault();
}

/// <summary>Turns of the bodies of one rope's two turnbuckles.</summary>
/// <param name="Exact">Turns of each where both are turned alike; positive lets rope out, negative takes it in.</param>
/// <param name="A">At support A, in sixths of a turn: what a spanner on a hexagon can do.</param>
/// <param name="B">At support B, in sixths of a turn; one flat more or less than at A where their sum comes nearer so.</param>
public readonly record struct RopeTurns(double Exact, int A, int B)
{
    /// <summary>Turns that change a rope's length by so much, metres.</summary>
    /// <param name="change">Longer where positive.</param>
    /// <param name="thread">Of both turnbuckles.</param>
    public static RopeTurns For(double change, TurnbuckleThread thread)
    {
        var flats = (int)Rounding.Steps(change, thread.PerTurn / TurnbuckleThread.FlatsPerTurn);
        var (half, odd) = Math.DivRem(flats, 2);
        return new RopeTurns(change / thread.PerTurn / 2, half + odd, half);
    }

    /// <summary>What the turns in flats come to, metres; longer where positive.</summary>
    public double Change(TurnbuckleThread thread) => (A + B) * thread.PerTurn / TurnbuckleThread.FlatsPerTurn;
}
