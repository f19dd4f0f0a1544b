namespace BridgeForm.Solids;

/// <summary>All points within a radius of a straight piece: a stretch of rope with round ends. Metres.</summary>
/// <param name="From">One end of the middle line.</param>
/// <param name="To">The other end.</param>
/// <param name="Radius">Radius.</param>
public readonly record struct Capsule(Vector3d From, Vector3d To, double Radius);
