using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Ropes.Space;

/// <summary>Two ropes in space with the frames that stand on them. World axes, metres, newtons, radians.</summary>
public sealed record SpaceShape
{
    /// <summary>Nodes of the left rope, against the wind, supports included.</summary>
    public required ImmutableArray<Vector3d> Left { get; init; }

    /// <summary>Nodes of the right rope.</summary>
    public required ImmutableArray<Vector3d> Right { get; init; }

    /// <summary>Roll of each frame away from the wind, supports included (0 there).</summary>
    public required ImmutableArray<double> Rolls { get; init; }

    /// <summary>With which the left rope holds up its node, supports included (there: what it pulls at the support with).</summary>
    public required ImmutableArray<Vector3d> LeftForces { get; init; }

    /// <summary>The same of the right rope.</summary>
    public required ImmutableArray<Vector3d> RightForces { get; init; }

    /// <summary>Largest tension of either rope.</summary>
    public required double LargestTension { get; init; }

    /// <summary>How far either rope has moved to the right where it moved most, at a frame or between frames.</summary>
    public required double Sideways { get; init; }

    /// <summary>Up in the plane of a frame that rolls so.</summary>
    public static Vector3d Up(double roll) => new(0, Elementary.Cos(roll), Elementary.Sin(roll));
}

/// <summary>A bridge in the wind.</summary>
/// <param name="Shape">
/// A stable equilibrium under all of it; null where none was found. Where <paramref name="Share"/> is less than 1 it is not
/// where the bridge goes with the rising wind: there it loses its footing first, and comes to rest so at best.
/// </param>
/// <param name="Share">Largest share of the wind to which the bridge was followed from the calm; 1 for all of it.</param>
/// <param name="Beyond">Share at which it had lost its footing; 1 where it has not.</param>
public sealed record SpaceResult(SpaceShape? Shape, double Share, double Beyond);
