using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>A box along the world's axes, metres.</summary>
internal readonly record struct Box3(Vector3d Min, Vector3d Max)
{
    /// <summary>The smallest box around points; inside out when there are none.</summary>
    public static Box3 Around(IEnumerable<Vector3d> points)
    {
        var box = new Box3(
            new Vector3d(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
            new Vector3d(double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity));
        foreach (var p in points)
        {
            box = box.With(p);
        }

        return box;
    }

    /// <summary>The box grown to hold a point.</summary>
    public Box3 With(Vector3d p) => new(
        new Vector3d(Math.Min(Min.X, p.X), Math.Min(Min.Y, p.Y), Math.Min(Min.Z, p.Z)),
        new Vector3d(Math.Max(Max.X, p.X), Math.Max(Max.Y, p.Y), Math.Max(Max.Z, p.Z)));

    /// <summary>Whether the boxes come closer to each other than a margin in metres along every axis.</summary>
    public bool IsNear(Box3 other, double margin) =>
        Min.X <= other.Max.X + margin && other.Min.X <= Max.X + margin
        && Min.Y <= other.Max.Y + margin && other.Min.Y <= Max.Y + margin
        && Min.Z <= other.Max.Z + margin && other.Min.Z <= Max.Z + margin;
}
