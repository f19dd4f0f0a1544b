using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Where a frame stands and how its axes lie. Metres and radians.</summary>
/// <param name="Name"><c>F00</c> at support A, counting towards B.</param>
/// <param name="Node">The node, on the rope axis in the plane z = 0.</param>
/// <param name="Along">Unit vector t.</param>
/// <param name="Up">Unit vector n.</param>
/// <param name="Slope">θ: slope of the bisector of the neighbouring chords; of the one chord at an end frame.</param>
/// <param name="IsEnd">Stands on a landing and loads no rope.</param>
public sealed record FramePose(string Name, Vector3d Node, Vector3d Along, Vector3d Up, double Slope, bool IsEnd)
{
    /// <summary>A point from frame coordinates (t along, n up, z right), in the world.</summary>
    public Vector3d At(double t, double n, double z) =>
        Node + (t * Along) + (n * Up) + new Vector3d(0, 0, z);

    /// <summary>A direction from frame coordinates, in the world.</summary>
    public Vector3d Direction(double t, double n, double z) =>
        (t * Along) + (n * Up) + new Vector3d(0, 0, z);
}
