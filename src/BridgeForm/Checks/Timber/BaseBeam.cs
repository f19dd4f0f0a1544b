using System.Collections.Immutable;

namespace BridgeForm.Checks;

/// <summary>A force at a place of a base. Metres from the middle, right positive; newtons, down positive.</summary>
internal readonly record struct BeamForce(double At, double Down);

/// <summary>A load spread evenly. Metres, newtons in all, down positive.</summary>
internal readonly record struct BeamSpread(double From, double To, double Down);

/// <summary>A couple at a place, N·m, turning right over up to left (from z towards n) positive.</summary>
internal readonly record struct BeamCouple(double At, double Turn);

/// <summary>
/// A base as a beam on two ropes, in the plane of its frame: reactions by statics, moments (bottom in tension positive) and
/// shears at any place. Metres, newtons.
/// </summary>
/// <param name="Support">z of the right rope; the left one mirrors it.</param>
/// <param name="Forces">Forces.</param>
/// <param name="Spreads">Spread loads.</param>
/// <param name="Couples">Couples.</param>
internal sealed record BaseBeam(
    double Support,
    ImmutableArray<BeamForce> Forces,
    ImmutableArray<BeamSpread> Spreads,
    ImmutableArray<BeamCouple> Couples)
{
    /// <summary>Beside a force, not on it: a nanometre.</summary>
    public const double Beside = 1e-9;

    /// <summary>Upward reactions of the two ropes; negative where a keeper must hold the base down.</summary>
    public (double Left, double Right) Reactions()
    {
        var down = Forces.Sum(f => f.Down) + Spreads.Sum(s => s.Down);
        var about = Forces.Sum(f => f.Down * f.At) + Spreads.Sum(s => s.Down * (s.From + s.To) / 2) - Couples.Sum(c => c.Turn);
        var right = (down / 2) + (about / (2 * Support));
        return (down - right, right);
    }

    /// <summary>Moment at a place, positive with the bottom in tension, N·m.</summary>
    public double Moment(double z)
    {
        var moment = 0.0;
        foreach (var force in All())
        {
            moment -= force.At > z ? force.Down * (force.At - z) : 0;
        }

        foreach (var spread in Spreads)
        {
            var from = Math.Max(spread.From, z);
            moment -= spread.To > from ? PerMetre(spread) * (spread.To - from) * (((from + spread.To) / 2) - z) : 0;
        }

        return moment + Couples.Sum(c => c.At > z ? c.Turn : 0);
    }

    /// <summary>Shear at a place, newtons: what the part to the right weighs less what carries it.</summary>
    public double Shear(double z)
    {
        var shear = 0.0;
        foreach (var force in All())
        {
            shear += force.At > z ? force.Down : 0;
        }

        foreach (var spread in Spreads)
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
        var breaks = All().Select(f => f.At)
            .Concat(Spreads.SelectMany(s => (double[])[s.From, s.To]))
            .Concat(Couples.Select(c => c.At))
            .Where(z => z > from && z < to)
            .Append(from)
            .Append(to)
            .Order()
            .ToList();
        for (var i = 0; i < breaks.Count; i++)
        {
            yield return breaks[i] - Beside;
            yield return breaks[i] + Beside;
            if (i + 1 < breaks.Count)
            {
                double a = breaks[i] + Beside, b = breaks[i + 1] - Beside;
                double before = Shear(a), after = Shear(b);
                if (before * after < 0)
                {
                    yield return a + ((b - a) * before / (before - after));
                }
            }
        }
    }

    private static double PerMetre(BeamSpread spread) => spread.Down / (spread.To - spread.From);

    private IEnumerable<BeamForce> All()
    {
        var (left, right) = Reactions();
        return Forces.Append(new BeamForce(-Support, -left)).Append(new BeamForce(Support, -right));
    }
}
