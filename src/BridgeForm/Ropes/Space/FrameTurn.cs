using BridgeForm.Solids;

namespace BridgeForm.Ropes.Space;

/// <summary>
/// How a frame has turned: rolled, and yawed where its two nodes have not moved alike along the bridge. The base between them is
/// rigid, so a frame that yaws is less broad across the bridge. Metres, radians.
/// </summary>
/// <param name="Up">Up in the plane across the bridge.</param>
/// <param name="Yaw">How much further the left node has moved along the bridge than the right one.</param>
/// <param name="Half">Half of what lies between the nodes in that plane.</param>
/// <param name="Less">How much less that is than without yaw.</param>
/// <param name="Slope">How <paramref name="Half"/> changes as the left node moves along the bridge, and against the right one.</param>
/// <param name="Bend">How the slope does.</param>
internal readonly record struct FrameTurn(Vector3d Up, double Yaw, double Half, double Less, double Slope, double Bend)
{
    /// <summary>From left to right in the plane across the bridge.</summary>
    public Vector3d Across => new(0, -Up.Z, Up.Y);

    /// <summary>Of a support: its nodes move along the bridge each by itself.</summary>
    public static FrameTurn AtSupport(double roll, double half) => new(SpaceShape.Up(roll), 0, half, 0, 0, 0);

    /// <summary>Of a frame.</summary>
    /// <param name="roll">Away from the wind.</param>
    /// <param name="yaw">How much further the left node has moved along the bridge than the right one.</param>
    /// <param name="half">Half the length of its base between the nodes.</param>
    public static FrameTurn Of(double roll, double yaw, double half)
    {
        var now = Math.Sqrt((half * half) - (yaw * yaw / 4));
        return new FrameTurn(
            SpaceShape.Up(roll), yaw, now, yaw * yaw / 4 / (half + now), -yaw / (4 * now),
            (-1 / (4 * now)) - (yaw * yaw / (16 * now * now * now)));
    }

    /// <summary>How a node moves with its frame's unknowns.</summary>
    /// <param name="side">0 for the left rope's, 1 for the right one's.</param>
    public NodePaths Paths(int side)
    {
        var sign = Sign(side);
        var narrower = sign * Slope * Across;
        return side == 0
            ? new NodePaths(Vector3d.UnitX + narrower, -narrower, -sign * Half * Up)
            : new NodePaths(narrower, Vector3d.UnitX - narrower, -sign * Half * Up);
    }

    /// <summary>−1 for the left rope, +1 for the right one.</summary>
    public static int Sign(int side) => side == 0 ? -1 : 1;
}

/// <summary>Move of a node by each of its frame's unknowns but rise and move to the right, which it follows.</summary>
/// <param name="Left">By the left node's move along the bridge.</param>
/// <param name="Right">By the right node's.</param>
/// <param name="Roll">By roll, metres a radian.</param>
internal readonly record struct NodePaths(Vector3d Left, Vector3d Right, Vector3d Roll);
