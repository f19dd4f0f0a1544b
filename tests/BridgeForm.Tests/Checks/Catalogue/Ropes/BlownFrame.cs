using BridgeForm.Loads;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// The one frame of a bridge of two bays in a wind, by hand: each of its ropes is two links, which pull the node towards the line
/// between the supports with what makes them so long (<see cref="TwoLinks"/>); weight and wind stand at their heights in the
/// frame. Move and roll by Newton's method on differences. Inches and pounds.
/// </summary>
internal sealed class BlownFrame
{
    private readonly TwoLinks _rope;
    private readonly double _length;
    private readonly double _own;
    private readonly double _ropeWind;
    private readonly double _aside;
    private readonly (double Weight, double Lever, double Wind, double WindLever) _on;

    /// <param name="bridge">The bridge.</param>
    /// <param name="psf">The wind.</param>
    /// <param name="share">Of the light weight; of all of the weight in service where it is 1.</param>
    /// <param name="outline">Square inches, and their inches over the rope.</param>
    /// <param name="onRopes">Whether the wind finds the ropes as well.</param>
    /// <param name="person">Somebody on the deck, so far to the right of the middle and over the ropes.</param>
    public BlownFrame(
        TwoBays bridge, double psf, double share, (double Area, double Moment) outline, bool onRopes = true,
        (double Weight, double Aside, double Height) person = default)
    {
        const double Pound = 4.4482216152605;
        var standing = StandingWeights.Weigh(bridge.Context.Layout);
        var marked = new TwoLinks();
        Spacing = bridge.Spacing;
        _length = marked.Length(TwoLinks.DeadLoad(bridge), bridge.Sag);
        (_own, _ropeWind) = (share * marked.PerInch * _length, onRopes ? psf / 144 * 0.75 * _length : 0);

        // The plane in which a link hangs through by itself leans with the wind on it; its own sag is a thousandth of an inch.
        _rope = marked with { PerInch = double.Hypot(_own, _ropeWind) / _length };
        _on = (
            (share * (share < 1 ? standing.Light[1] / Pound : 2 * TwoLinks.DeadLoad(bridge))) + person.Weight,
            (share * (share < 1 ? standing.LightMoments : standing.Moments)[1] / Pound / TwoBays.Inch) + (person.Weight * person.Height),
            psf / 144 * outline.Area, psf / 144 * outline.Moment);
        _aside = person.Weight * person.Aside;
        Solve(bridge.Sag);
    }

    public double Spacing { get; }

    /// <summary>Of the point midway between the ropes, below the supports.</summary>
    public double Fall { get; private set; }

    /// <summary>Of that point to the right.</summary>
    public double Across { get; private set; }

    /// <summary>Radians, away from the wind.</summary>
    public double Roll { get; private set; }

    /// <summary>It pushes back against every further move: −∂force/∂move has no minor that is not positive.</summary>
    public bool Stands { get; private set; }

    private void Solve(double sag)
    {
        double[] at = [sag, 0, 0];
        for (var i = 0; i < 60; i++)
        {
            var force = Force(at);
            var rates = Enumerable.Range(0, 3).Select(k =>
            {
                double[] moved = [.. at];
                moved[k] += 1e-5;
                return Force(moved).Select((f, j) => (f - force[j]) / 1e-5).ToArray();
            }).ToArray();
            Stands = rates[0][0] < 0 && (rates[0][0] * rates[1][1]) - (rates[0][1] * rates[1][0]) > 0 && Determinant(rates) < 0;
            var step = Solved(rates, force);
            var most = step.Max(Math.Abs);
            at = [.. at.Select((a, k) => a - (step[k] * Math.Min(1, 0.5 / most)))];
        }

        (Fall, Across, Roll) = (at[0], at[1], at[2]);
    }

    // Down, to the right, and turning away from the wind.
    private double[] Force(double[] at)
    {
        var (sin, cos) = (Math.Sin(at[2]), Math.Cos(at[2]));
        double[] sum = [_on.Weight, _on.Wind, (_on.Lever * sin) + ((_on.WindLever + _aside) * cos)];
        foreach (var side in new[] { -1, 1 })
        {
            // The right node falls as the frame rolls; a rope pulls towards its own supports.
            var (down, out_) = (at[0] + (side * Spacing / 2 * sin), at[1] + (side * Spacing / 2 * (cos - 1)));
            var far = double.Hypot(down, out_);
            var pull = Pull(far);
            var (fall, right) = ((2 * _own / 2) - (pull * down / far), (2 * _ropeWind / 2) - (pull * out_ / far));
            sum[0] += fall;
            sum[1] += right;
            sum[2] += side * Spacing / 2 * ((fall * cos) - (right * sin));
        }

        return sum;
    }

    // With which both links hold a node so far from the line between their supports.
    private double Pull(double far)
    {
        var (low, high) = (-50.0, 1e5);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = _rope.Drop(middle, _length) < far ? (middle, high) : (low, middle);
        }

        return low + (_rope.PerInch * _length);
    }

    private static double[] Solved(double[][] rates, double[] force)
    {
        double Det(int column) => Determinant([.. rates.Select((r, k) => k == column ? force : r)]);
        var whole = Determinant(rates);
        return [Det(0) / whole, Det(1) / whole, Det(2) / whole];
    }

    private static double Determinant(double[][] c) =>
        (c[0][0] * ((c[1][1] * c[2][2]) - (c[1][2] * c[2][1])))
        - (c[1][0] * ((c[0][1] * c[2][2]) - (c[0][2] * c[2][1])))
        + (c[2][0] * ((c[0][1] * c[1][2]) - (c[0][2] * c[1][1])));
}
