namespace BridgeForm.Stocking.Cutting;

/// <summary>Costs as whole numbers of a common step, such as a cent, or two feet of board.</summary>
internal static class CostSteps
{
    /// <summary>A share of a step that is round-off: costs add up to fifteen digits, steps are a thousandth of a cost or more.</summary>
    public const double Slack = 1e-6;

    // Steps that are a smaller share of the largest cost than this say nothing about the bound.
    private const double SmallestShare = 1e-4;

    // Remainders below this share of the largest cost are round-off of a division.
    private const double RoundOff = 1e-10;

    /// <summary>The largest step that all costs are multiples of (Euclid); 0 when there is none worth having.</summary>
    public static double Common(ReadOnlySpan<double> costs)
    {
        double step = 0, largest = 0;
        foreach (var cost in costs)
        {
            largest = Math.Max(largest, cost);
        }

        foreach (var cost in costs)
        {
            step = Common(Math.Max(step, cost), Math.Min(step, cost), largest);
            if (step < SmallestShare * largest)
            {
                return 0;
            }
        }

        return step;
    }

    private static double Common(double a, double b, double largest)
    {
        while (b > RoundOff * largest)
        {
            if (b < SmallestShare * largest)
            {
                return 0;
            }

            var rest = a - (Math.Floor(a / b) * b);
            (a, b) = (b, b - rest < RoundOff * largest ? 0 : rest);
        }

        return a;
    }
}
