using System.Collections.Immutable;

namespace BridgeForm.Solids;

/// <summary>A long face of a stick of stock, by the direction it looks in the piece's own axes.</summary>
public enum StockFace
{
    /// <summary>The narrow face at the low end of Y.</summary>
    MinusY,

    /// <summary>The narrow face at the high end of Y.</summary>
    PlusY,

    /// <summary>The wide face at the low end of Z.</summary>
    MinusZ,

    /// <summary>The wide face at the high end of Z.</summary>
    PlusZ,
}

/// <summary>
/// A channel across a stick: two walls square to X and a floor that may slope along the channel. It runs through the
/// whole stick, from side to side.
/// </summary>
/// <param name="Face">The face it is cut into; <see cref="StockFace.MinusY"/> or <see cref="StockFace.MinusZ"/>.</param>
/// <param name="Center">X of its centre line, metres, in the piece's axes.</param>
/// <param name="Width">Wall to wall, metres.</param>
/// <param name="Depth">From the face to the floor in the middle of the stick, metres.</param>
/// <param name="FloorSlope">
/// Rise of the floor away from <paramref name="Face"/> per metre along the other cross axis (+Z for a channel in
/// <see cref="StockFace.MinusY"/>, +Y for one in <see cref="StockFace.MinusZ"/>); 0 for a level floor.
/// </param>
public sealed record Channel(StockFace Face, double Center, double Width, double Depth, double FloorSlope);

/// <summary>A round hole drilled square into a long face of a stick.</summary>
/// <param name="Face">The face the bit enters.</param>
/// <param name="X">Place along the piece's X axis, metres.</param>
/// <param name="Across">Place from the middle of the face along its cross axis (+Z on a Y face, +Y on a Z face), metres.</param>
/// <param name="Diameter">Diameter, metres.</param>
/// <param name="Depth">Depth of the blind hole, metres; <c>null</c> when drilled through.</param>
public sealed record Hole(StockFace Face, double X, double Across, double Diameter, double? Depth);

/// <summary>
/// A stick of rectangular stock along X, centred on Y = 0 and Z = 0, with every cut that makes a member of it: data for
/// drawings, and the recipe of the solid. Lengths in metres, in the piece's own axes.
/// </summary>
/// <param name="Width">Size along Y, metres.</param>
/// <param name="Thickness">Size along Z, metres.</param>
/// <param name="Near">End plane at low X; its normal points out of the wood (X component negative).</param>
/// <param name="Far">End plane at high X; its normal points out of the wood (X component positive).</param>
public sealed record CutStock(double Width, double Thickness, Plane Near, Plane Far)
{
    /// <summary>Further planes that take wood off along the stick (tapers); normals point out of the wood.</summary>
    public ImmutableArray<Plane> Rips { get; init; } = [];

    /// <summary>Channels, in order of X.</summary>
    public ImmutableArray<Channel> Channels { get; init; } = [];

    /// <summary>Round holes.</summary>
    public ImmutableArray<Hole> Holes { get; init; } = [];
}
