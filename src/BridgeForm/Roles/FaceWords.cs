namespace BridgeForm.Roles;

/// <summary>Which way the faces of a part look, X from near end to far end (docs/bridge.md, angles of a cut).</summary>
/// <param name="Drawn">The face that its drawing shows, of which Z is the outward normal.</param>
/// <param name="Opposite">Where that face looks when the part is rolled half over: against Z.</param>
/// <param name="AlongY">
/// Where it looks when the part is rolled a quarter: along Y = Z × X; what stands left, of roles that stand on both sides.
/// </param>
public sealed record FaceWords(string Drawn, string Opposite, string AlongY)
{
    private static readonly (string One, string Other)[] Opposites =
        [("up", "down"), ("towards A", "towards B"), ("to the left", "to the right"), ("inward", "outward")];

    /// <summary>Lies flat, near end towards A.</summary>
    public static FaceWords FlatAlong { get; } = new("upper face", "down", "to the left");

    /// <summary>Lies flat, near end at the left.</summary>
    public static FaceWords FlatAcross { get; } = new("upper face", "down", "towards B");

    /// <summary>Y of what stands right points against that of what stands left.</summary>
    public bool Mirrored { get; init; }

    /// <summary>Along Y of a part of a side.</summary>
    public string Plus(Side side) => Mirrored && side != Side.Left ? Against(AlongY) : AlongY;

    /// <summary>Against Y of a part of a side.</summary>
    public string Minus(Side side) => Against(Plus(side));

    private static string Against(string way)
    {
        var (one, other) = Opposites.First(p => Is(p.One, way) || Is(p.Other, way));
        return Is(one, way) ? other : one;
    }

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}

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
/// <param name="Arrow">Where the arrow of the way mark points, from near end to far end.</param>
/// <param name="ArrowTurned">Where it points where the part stands turned end for end.</param>
/// <param name="ShopNear">Near end on a drawing.</param>
/// <param name="ShopFar">Far end on a drawing.</param>
public sealed record EndWords(string Near, string Far, string Arrow, string ArrowTurned, string ShopNear, string ShopFar)
{
    private static readonly EndWords s_up = new("Foot", "Top", "up", "down", "foot", "head");
    private static readonly EndWords s_across = new("Left end", "Right end", "to the right", "to the left", "left end", "right end");
    private static readonly EndWords s_along = new("End towards A", "End towards B", "towards B", "towards A", "A end", "B end");

    /// <summary>An end on a drawing.</summary>
    public string Shop(bool near) => near ? ShopNear : ShopFar;

    /// <summary>Of parts that run so.</summary>
    public static EndWords For(RoleAxis axis) => axis switch
    {
        RoleAxis.Up => s_up,
        RoleAxis.Across => s_across,
        RoleAxis.Along => s_along,
        _ => throw new ArgumentOutOfRangeException(nameof(axis), axis, "No such axis."),
    };
}
