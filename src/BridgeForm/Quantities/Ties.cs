namespace BridgeForm.Quantities;

/// <summary>
/// Which of several is the largest, when some are equal: bays and frames that are alike differ by round-off, and that may not
/// choose between them. The first one counts, on every machine alike.
/// </summary>
public static class Ties
{
    // Equal figures come out on two ways with some 1e-13 of themselves between them, solved ones with 1e-11.
    private const double Alike = 1e-9;

    /// <summary>A figure is larger than another by more than round-off.</summary>
    public static bool IsLarger(double figure, double than) => figure > than + (Alike * Math.Abs(than));

    /// <summary>The first whose figure no other's exceeds by more than round-off; default when there are none.</summary>
    /// <param name="all">In the order in which they count.</param>
    /// <param name="figure">Of each; NaN and minus infinity never count as larger.</param>
    public static T? FirstLargest<T>(IEnumerable<T> all, Func<T, double> figure)
    {
        var (found, best, any) = (default(T), double.NegativeInfinity, false);
        foreach (var one in all)
        {
            var own = figure(one);
            if (!any || double.IsNaN(best) || (double.IsNegativeInfinity(best) ? own > best : IsLarger(own, best)))
            {
                (found, best, any) = (one, own, true);
            }
        }

        return found;
    }

    /// <summary>The first whose figure no other's falls short of by more than round-off; default when there are none.</summary>
    /// <param name="all">In the order in which they count.</param>
    /// <param name="figure">Of each.</param>
    public static T? FirstLeast<T>(IEnumerable<T> all, Func<T, double> figure) => FirstLargest(all, one => -figure(one));
}
