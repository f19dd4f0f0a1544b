using System.Collections.Immutable;

namespace BridgeForm.Checks.Timber;

/// <summary>A force at a place of a base. Metres from the middle, right positive; newtons, down positive.</summary>
internal sealed record BeamForce(double At, double Down);

/// <summary>A load spread evenly. Metres, newtons in all, down positive.</summary>
internal sealed record BeamSpread(double From, double To, double Down);

/// <summary>A couple at a place, N·m, turning right over up to left (from z towards n) positive.</summary>
internal sealed record BeamCouple(double At, double Turn);

/// <summary>
/// A base as a beam on two ropes, in the plane of its frame: reactions by statics, moments (bottom in tension positive) and
/// shears at any place. Metres, newtons.
/// </summary>
internal sealed class BaseBeam
{
    private readonly ImmutableArray<BeamForce> _forces;
    private readonly ImmutableArray<BeamSpread> _spreads;
    private readonly ImmutableArray<BeamCouple> _couples;
    private readonly (double Left, double Right) _reactions;
    private readonly BeamForce[] _all;
    private double[]? _breaks;

    /// <summary>A base with what stands on it.</summary>
    /// <param name="support">z of the right rope; the left one mirrors it.</param>
    /// <param name="forces">Forces.</param>
    /// <param name="spreads">Spread loads.</param>
    /// <param name="couples">Moments at places.</param>
    public BaseBeam(
        double support, ImmutableArray<BeamForce> forces, ImmutableArray<BeamSpread> spreads, ImmutableArray<BeamCouple> couples)
    {
        (Support, _forces, _spreads, _couples) = (support, forces, spreads, couples);
        var down = forces.Sum(f => f.Down) + spreads.Sum(s => s.Down);
        var about = forces.Sum(f => f.Down * f.At) + spreads.Sum(s => s.Down * (s.From + s.To) / 2) - couples.Sum(c => c.Turn);
        var right = (down / 2) + (about / (2 * support));
        _reactions = (down - right, right);
        _all = [.. forces, new(-support, -_reactions.Left), new(support, -_reactions.Right)];
    }

    /// <summary>Beside a force, not on it: a nanometre.</summary>
    public const double Beside = 1e-9;

    /// <summary>z of the right rope.</summary>
    public double Support { get; }

    /// <summary>The same base with more on it.</summary>
    public BaseBeam Plus(
        ReadOnlySpan<BeamForce> forces = default, ReadOnlySpan<BeamSpread> spreads = default, ReadOnlySpan<BeamCouple> couples = default) =>
        new(Support, [.. _forces, .. forces], [.. _spreads, .. spreads], [.. _couples, .. couples]);

    /// <summary>Upward reactions of the two ropes; negative where a keeper must hold the base down.</summary>
    public (double Left, double Right) Reactions() => _reactions;

    /// <summary>Moment at a place, positive with the bottom in tension, N·m.</summary>
    public double Moment(double z)
    {
        var moment = 0.0;
        foreach (var force in _all)
        {
            moment -= force.At > z ? force.Down * (force.At - z) : 0;
        }

        foreach (var spread in _spreads)
        {
            var from = Math.Max(spread.From, z);
            moment -= spread.To > from ? PerMetre(spread) * (spread.To - from) * (((from + spread.To) / 2) - z) : 0;
        }

        foreach (var couple in _couples)
        {
            moment += couple.At > z ? couple.Turn : 0;
        }

        return moment;
    }

    /// <summary>Shear at a place, newtons: what the part to the right weighs less what carries it.</summary>
    public double Shear(double z)
    {
        var shear = 0.0;
        foreach (var force in _all)
        {
            shear += force.At > z ? force.Down : 0;
        }

        foreach (var spread in _spreads)
        {
            shear += PerMetre(spread) * Math.Max(0, spread.To - Math.Max(spread.From, z));
        }

        return shear;
    }

    /// <summary>
    /// Places between two ends where moment or shear can be largest: the ends, both sides of everything that stands there,
    /// and where a spread load brings the shear to nothing.
    /// </summary>
    public IEnumerable<double> Places(double from, double to)
    {
        _breaks ??= Breaks();
        var (last, next) = (from, 0);
        while (next < _breaks.Length && _breaks[next] <= from)
        {
            next++;
        }

        yield return last - Beside;
        yield return last + Beside;
        for (var isDone = false; !isDone; next++)
        {
            isDone = next >= _breaks.Length || _breaks[next] >= to;
            var here = isDone ? to : _breaks[next];
            double a = last + Beside, b = here - Beside;
            double before = Shear(a), after = Shear(b);
            if (before * after < 0)
            {
                yield return a + ((b - a) * before / (before - after));
            }

            yield return here - Beside;
            yield return here + Beside;
            last = here;
        }
    }

    // Everything that stands there, from the left.
    private double[] Breaks() =>
    [
        .. _all.Select(f => f.At)
            .Concat(_spreads.SelectMany(s => (double[])[s.From, s.To]))
            .Concat(_couples.Select(c => c.At))
            .Order(),
    ];

    private static double PerMetre(BeamSpread spread) => spread.Down / (spread.To - spread.From);
}
