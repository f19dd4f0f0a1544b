namespace BridgeForm.Ropes;

/// <summary>Finds how much unstressed rope reaches a given distance.</summary>
internal static class SegmentLength
{
    // Newton doubles its digits at each step: after a step as small as this the next is at round-off.
    private const double LastStep = 1e-7;
    private const int MaxSteps = 100;

    /// <summary>
    /// The unstressed length whose straight distance (or horizontal distance) is <paramref name="step"/>; NaN when there
    /// is none. One-dimensional Newton inside a bracket.
    /// </summary>
    /// <param name="horizontal">H, newtons.</param>
    /// <param name="vertical">V at the A-side end, newtons.</param>
    /// <param name="weight">N per unstressed metre.</param>
    /// <param name="stiffness">EA, newtons.</param>
    /// <param name="step">Metres, positive.</param>
    /// <param name="inPlan">Horizontal distance instead of straight.</param>
    public static double Find(
        double horizontal, double vertical, double weight, double stiffness, double step, bool inPlan)
    {
        var length = Straight(horizontal, vertical, stiffness, step, inPlan);
        length = Straight(horizontal, vertical - (weight * length / 2), stiffness, step, inPlan);
        var (low, high) = (0.0, double.PositiveInfinity);
        for (var i = 0; i < MaxSteps; i++)
        {
            var piece = new ElasticCatenary(horizontal, vertical, length, weight, stiffness);
            var (excess, slope) = Excess(piece, step, inPlan);
            if (excess < 0)
                low = length;
            else
                high = length;
            var next = length - (excess / slope);
            if (!(next > low && next < high) && Math.Abs(next - length) > LastStep * length)
                next = double.IsInfinity(high) ? 2 * length : (low + high) / 2;
            if (Math.Abs(next - length) <= LastStep * length)
                return next;
            length = next;
        }

        return double.NaN;
    }

    // A straight bar under this tension; with the tension at its middle it is the rope but for its sagitta.
    private static double Straight(double horizontal, double vertical, double stiffness, double step, bool inPlan)
    {
        var tension = ElasticCatenary.Hypotenuse(horizontal, vertical);
        return step * (inPlan ? tension / horizontal : 1) / (1 + (tension / stiffness));
    }

    private static (double Excess, double Slope) Excess(ElasticCatenary piece, double step, bool inPlan)
    {
        if (inPlan)
            return (piece.X - step, piece.XByLength);
        var chord = piece.Chord;
        return (chord - step, ((piece.X * piece.XByLength) + (piece.Drop * piece.DropByLength)) / chord);
    }
}
