namespace BridgeForm.Loads;

/// <summary>
/// Which frames or bays are weighed: all of them, or of a long row so many evenly spread ones, each for those next to it. The
/// first and the last are always weighed for themselves.
/// </summary>
/// <param name="most">Most of those between the first and the last; null for all.</param>
internal readonly struct Sampling(int? most)
{
    /// <summary>All are weighed.</summary>
    public static Sampling All => default;

    /// <summary>
    /// Only about: where holes of the user's meet channels or each other, what they take together is taken twice, since it takes
    /// a solid to know.
    /// </summary>
    public bool IsRough => most is not null;

    /// <summary>The one that is weighed for another.</summary>
    /// <param name="index">Which is asked for.</param>
    /// <param name="first">Index of the first.</param>
    /// <param name="last">Index of the last.</param>
    public int For(int index, int first, int last)
    {
        var between = last - first - 1;
        if (index == first || index == last || most is not { } few || between <= few)
        {
            return index;
        }

        // Parts of equal length, each weighed in its middle.
        var part = (index - first - 1) * few / between;
        return first + 1 + (((2 * part) + 1) * between / (2 * few));
    }
}
