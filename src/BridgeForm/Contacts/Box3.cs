using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>A box along the world's axes, metres.</summary>
internal readonly record struct Box3(Vector3d Min, Vector3d Max)
{
    /// <summary>The smallest box around points; inside out when there are none.</summary>
    public static Box3 Around(IEnumerable<Vector3d> points)
    {
        var min = new Vector3d(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        var max = -min;
        foreach (var p in points)
        {
            min = new Vector3d(Math.Min(min.X, p.X), Math.Min(min.Y, p.Y), Math.Min(min.Z, p.Z));
            max = new Vector3d(Math.Max(max.X, p.X), Math.Max(max.Y, p.Y), Math.Max(max.Z, p.Z));
        }

        return new Box3(min, max);
    }

    /// <summary>Whether the boxes come closer to each other than a margin in metres along every axis.</summary>
    public bool IsNear(Box3 other, double margin) =>
        Min.X <= other.Max.X + margin && other.Min.X <= Max.X + margin
        && Min.Y <= other.Max.Y + margin && other.Min.Y <= Max.Y + margin
        && Min.Z <= other.Max.Z + margin && other.Min.Z <= Max.Z + margin;
}
