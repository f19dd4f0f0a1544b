namespace BridgeForm.Roles;

/// <summary>Which way parts of a role run, from near end to far end.</summary>
public enum RoleAxis
{
    /// <summary>From foot to head.</summary>
    Up,

    /// <summary>From left to right.</summary>
    Across,

    /// <summary>From A to B.</summary>
    Along,
}

/// <summary>Words for the two ends of a part.</summary>
/// <param name="Near">Near end, for people who have never held a saw.</param>
/// <param name="Far">Far end, for the same.</param>
/// <param name="FarPlace">Where the far end lies; the near one where the part stands turned end for end.</param>
/// <param name="ShopNear">Near end on a drawing.</param>
/// <param name="ShopFar">Far end on a drawing.</param>
public sealed record EndWords(string Near, string Far, string FarPlace, string ShopNear, string ShopFar)
{
    private static readonly EndWords s_up = new("Foot", "Top", "at the top", "foot", "head");
    private static readonly EndWords s_across = new("Left end", "Right end", "at the right", "left end", "right end");
    private static readonly EndWords s_along = new("End towards A", "End towards B", "at B", "end at A", "end at B");

    /// <summary>Of parts that run so.</summary>
    public static EndWords Of(RoleAxis axis) => axis switch
    {
        RoleAxis.Up => s_up,
        RoleAxis.Across => s_across,
        RoleAxis.Along => s_along,
        _ => throw new ArgumentOutOfRangeException(nameof(axis), axis, "No such axis."),
    };
}
