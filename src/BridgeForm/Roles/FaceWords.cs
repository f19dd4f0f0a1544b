namespace BridgeForm.Roles;

/// <summary>Which way the faces of a part look, X from near end to far end (docs/bridge.md, angles of a cut).</summary>
/// <param name="Drawn">The face that its drawing shows, of which Z is the outward normal.</param>
/// <param name="Opposite">Where that face looks when the part is rolled half over: against Z.</param>
/// <param name="AlongY">Where it looks when the part is rolled a quarter: along Y = Z × X; what stands left, of roles that stand on both sides.</param>
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
