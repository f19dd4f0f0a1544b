using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// A round stick as flat faces: the regular polygon of sixteen sides around the circle. It is as wide as the circle is across, and
/// 1.3 % larger in area; what weighs is the circle.
/// </summary>
public static class RoundStock
{
    private const int Sides = 16;

    /// <summary>A stick of a diameter in metres between two end planes.</summary>
    public static CutStock Cut(double diameter, Plane near, Plane far) => new(diameter, diameter, near, far)
    {
        IsRound = true,
        Rips = [.. Faces(diameter / 2)],
    };

    /// <summary>Area of the circle, m²: π/4·d².</summary>
    public static double Area(double diameter) => Math.PI / 4 * diameter * diameter;

    /// <summary>The circle's share of the polygon, whose area is n/4·d²·tan(π/n): of the volumes too, between the same planes.</summary>
    public static double Share { get; } = Math.PI / (Sides * Elementary.Tan(Math.PI / Sides));

    /// <summary>Corners of the polygon around the stick's axis, in turn.</summary>
    public static IEnumerable<Vector3d> Corners(double diameter) => Enumerable.Range(0, Sides).Select(k =>
    {
        var (sin, cos) = Elementary.SinCos(2 * Math.PI * (k + 0.5) / Sides);
        return diameter / 2 / Elementary.Cos(Math.PI / Sides) * new Vector3d(0, cos, sin);
    });

    // The four sides of the square around it are there already.
    private static IEnumerable<Plane> Faces(double radius)
    {
        for (var k = 0; k < Sides; k++)
        {
            if (k % (Sides / 4) != 0)
            {
                var (sin, cos) = Elementary.SinCos(2 * Math.PI * k / Sides);
                yield return new Plane(new Vector3d(0, cos, sin), radius);
            }
        }
    }
}
