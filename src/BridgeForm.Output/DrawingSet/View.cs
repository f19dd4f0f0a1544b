using BridgeForm.Output.Drawing;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A way of looking at the bridge, without perspective.</summary>
/// <param name="Right">Unit vector of the world that runs to the right on paper.</param>
/// <param name="Up">Unit vector that runs up on paper, square to <paramref name="Right"/>.</param>
internal readonly record struct View(Vector3d Right, Vector3d Up)
{
    /// <summary>From the right-hand side: A on the left, B on the right.</summary>
    public static View Side => new(Vector3d.UnitX, Vector3d.UnitY);

    /// <summary>From above: A on the left, the right-hand side of the bridge below.</summary>
    public static View Above => new(Vector3d.UnitX, -Vector3d.UnitZ);

    /// <summary>Isometric, from above the right-hand side, near A: the three axes are foreshortened alike.</summary>
    public static View Isometric { get; } = FromAbove(Math.PI / 4, Math.Atan(1 / Math.Sqrt(2)));

    /// <summary>Length on paper of a length along an axis in the isometric view.</summary>
    public static double IsometricShare { get; } = Math.Sqrt(2.0 / 3);

    /// <summary>Unit vector towards the eye.</summary>
    public Vector3d Toward => Right.Cross(Up);

    /// <summary>Where a point comes to lie, metres at true size.</summary>
    public SheetPoint Of(Vector3d p) => new(Right.Dot(p), Up.Dot(p));

    /// <summary>Turned about the upright axis from the side view, then tilted to look down.</summary>
    private static View FromAbove(double turn, double tilt)
    {
        var right = new Vector3d(Math.Cos(turn), 0, Math.Sin(turn));
        var level = right.Cross(Vector3d.UnitY);
        var toward = (Math.Cos(tilt) * level) + (Math.Sin(tilt) * Vector3d.UnitY);
        return new View(right, toward.Cross(right));
    }
}
