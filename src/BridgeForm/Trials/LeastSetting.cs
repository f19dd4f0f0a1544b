using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Trials;

/// <summary>How one trial came out.</summary>
/// <param name="Holds">It passes.</param>
/// <param name="Ratio">Demand over capacity, above 1 where it fails; infinite where there is nothing to compare.</param>
/// <param name="Parts">
/// Numbers of parts it was made with. Between two trials with the same numbers the ratio has no jump.
/// </param>
internal sealed record Trial(bool Holds, double Ratio, ImmutableArray<int> Parts)
{
    /// <summary>There is nothing to judge: no shape, or no more is tried.</summary>
    public static Trial Nothing { get; } = new(false, double.PositiveInfinity, []);

    /// <summary>What was found roughly and is not near the limit counts; else what is found to the last digit.</summary>
    public static Trial Of(Trial roughly, Func<Trial> exactly) =>
        Math.Abs(roughly.Ratio - 1) > TrialDesign.NearLimit ? roughly : exactly();

    /// <summary>What fails roughly by far counts; else what is found to the last digit.</summary>
    /// <remarks>Between designs that settle lie some that come close and never do.</remarks>
    public static Trial Checked(Trial roughly, Func<Trial> exactly) =>
        roughly.Ratio > 1 + TrialDesign.NearLimit ? roughly : exactly();
}

/// <summary>
/// The least setting, in whole steps, for which a whole new design passes while one step less does not. The ratio falls as
/// the setting grows, but for jumps (a bay or a tread more) and for settings without a shape; each trial is dear.
/// </summary>
internal sealed class LeastSetting(Func<int, Trial> make)
{
    // Where nothing is known the next setting is a twelfth more; and no guess goes further than to twice.
    private const double Growth = 13.0 / 12;
    private const double LargestGrowth = 2;

    // A guess aims a little beyond the limit, so that it ends up on the other side of it.
    private const double Beyond = 1.005;

    // A jump of a bay or of a tread in each bay changes weights by a hundredth or so, and a setting by as much: so many steps
    // below an answer are looked at where there is a jump among them.
    private const int WidestHole = 16;

    private readonly Dictionary<int, Trial> _made = [];

    /// <summary>
    /// Found by a quick trial that lets pass nearly nothing that is wrong; what it finds is tried in full, and where that fails,
    /// or the quick search came to no end, all is looked for in full. Null when none up to the largest passes.
    /// </summary>
    public static int? Checked(Func<int, Trial> quick, Func<int, Trial> full, Func<bool> ended, int first, int most)
    {
        var found = new LeastSetting(quick).Above(first, most);
        var isSure = found is { } least ? full(least).Holds : !ended();
        return isSure ? found : new LeastSetting(full).Above(first, most);
    }

    /// <summary>The least setting above a first one; null when none up to the largest passes.</summary>
    /// <param name="first">A setting that fails.</param>
    /// <param name="most">Largest setting.</param>
    public int? Above(int first, int most)
    {
        var (before, low) = (first, first);
        while (low < most)
        {
            var high = Math.Min(most, Math.Max(low + 1, Next(before, low)));
            if (At(high).Holds)
            {
                return OverHoles(first, Between(low, high));
            }

            // A guess that has no shape says nothing of the settings it skipped.
            var scanned = Math.Min(most, Math.Max(low + 1, (int)(low * Growth)));
            (before, low) = (low, double.IsFinite(At(high).Ratio) ? high : scanned);
            if (low == scanned && At(low).Holds)
            {
                return OverHoles(first, Between(before, low));
            }
        }

        return null;
    }

    private Trial At(int setting)
    {
        if (!_made.TryGetValue(setting, out var trial))
        {
            _made[setting] = trial = make(setting);
        }

        return trial;
    }

    /// <summary>
    /// Where the ratio of the last two failures would come to 1 as a power of the setting; as 1 / setting after the first.
    /// </summary>
    private int Next(int before, int low)
    {
        var ratio = At(low).Ratio;
        var power = before == low || !double.IsFinite(At(before).Ratio) ? 1 : -Elementary.Log(ratio / At(before).Ratio) / Elementary.Log(
            (double)low / Math.Max(1, before));
        var growth = Elementary.Pow(ratio, 1 / power) * Beyond;
        return (int)(low * (power > 0 && double.IsFinite(growth) ? Math.Min(growth, LargestGrowth) : Growth));
    }

    /// <summary>Closes in between a setting that fails and one that holds, by the ratio's slope and by halves in turn.</summary>
    /// <param name="low">Fails.</param>
    /// <param name="high">Holds.</param>
    public int Between(int low, int high)
    {
        for (var byHalf = false; high - low > 1; byHalf = !byHalf)
        {
            var middle = byHalf ? low + ((high - low) / 2) : Slope(low, high);
            (low, high) = At(middle).Holds ? (low, middle) : (middle, high);
        }

        return high;
    }

    private int Slope(int low, int high)
    {
        var (over, under) = (At(low).Ratio, At(high).Ratio);
        var share = (over - 1) / (over - under);
        var middle = double.IsFinite(share) ? low + (int)Math.Round(share * (high - low)) : (low + high) / 2;
        return Math.Clamp(middle, low + 1, high - 1);
    }

    private int OverHoles(int first, int least)
    {
        var lowest = Math.Max(first, least - WidestHole);
        if (At(lowest).Parts.SequenceEqual(At(least).Parts))
        {
            return least;
        }

        for (var below = least - 2; below > first && below >= least - WidestHole; below--)
        {
            if (At(below).Holds)
            {
                least = below;
            }
        }

        return least;
    }
}
