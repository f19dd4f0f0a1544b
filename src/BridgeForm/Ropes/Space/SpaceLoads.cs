using System.Collections.Immutable;

namespace BridgeForm.Ropes.Space;

/// <summary>
/// What stands on two ropes and what blows against it, brought to their nodes, supports included (not read there). The wind
/// blows level and across the bridge, from the left rope towards the right one.
/// </summary>
/// <param name="Weights">Of the whole bridge, newtons down; the ropes' own weight is not in it.</param>
/// <param name="HeightMoments">Weight × its height over the ropes' axes, N·m.</param>
/// <param name="Winds">Newtons to the right.</param>
/// <param name="WindMoments">Wind × its height over the ropes' axes, N·m.</param>
/// <param name="WindOnRope">On each metre of one rope, N/m.</param>
public sealed record SpaceLoads(
    ImmutableArray<double> Weights,
    ImmutableArray<double> HeightMoments,
    ImmutableArray<double> Winds,
    ImmutableArray<double> WindMoments,
    double WindOnRope)
{
    /// <summary>How far a frame leans towards B for each metre up: so far along the bridge from its base all on it lies.</summary>
    public ImmutableArray<double> Leans { get; init; } = [.. Weights.Select(_ => 0.0)];

    /// <summary>Weight × its distance from the middle to the right in the frame's plane, N·m; nothing unless said.</summary>
    public ImmutableArray<double> SideMoments { get; init; } = [.. Weights.Select(_ => 0.0)];

    /// <summary>A share of the wind.</summary>
    internal SpaceLoads Blowing(double share) => this with
    {
        Winds = [.. Winds.Select(w => share * w)],
        WindMoments = [.. WindMoments.Select(m => share * m)],
        WindOnRope = share * WindOnRope,
    };
}
