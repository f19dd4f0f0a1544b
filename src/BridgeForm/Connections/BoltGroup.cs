using System.Collections.Immutable;

namespace BridgeForm.Connections;

/// <summary>A force in a plane. Newtons.</summary>
/// <param name="Z">Outward.</param>
/// <param name="N">Upward.</param>
public readonly record struct PlaneForce(double Z, double N)
{
    /// <summary>Its size.</summary>
    public double Size => Math.Sqrt((Z * Z) + (N * N));

    /// <summary>Its part along a direction of length 1.</summary>
    public double Along(PlanePoint direction) => (Z * direction.Z) + (N * direction.N);
}

/// <summary>A place in a plane, or a direction. Metres.</summary>
/// <param name="Z">Outward.</param>
/// <param name="N">Upward.</param>
public readonly record struct PlanePoint(double Z, double N)
{
    /// <summary>So far along a direction.</summary>
    public PlanePoint Plus(PlanePoint direction, double distance) =>
        new(Z + (direction.Z * distance), N + (direction.N * distance));

    /// <summary>How far it lies from another along a direction of length 1.</summary>
    public double From(PlanePoint other, PlanePoint direction) =>
        ((Z - other.Z) * direction.Z) + ((N - other.N) * direction.N);

    /// <summary>A quarter turn on, from outward to upward.</summary>
    public PlanePoint Turned => new(-N, Z);
}

/// <summary>What each fastener of a group takes of a force: alike, and for its moment by distance from the middle (elastic).</summary>
public static class BoltGroup
{
    /// <summary>Forces on the fasteners, in their order, newtons.</summary>
    /// <param name="places">Where they are, two at least.</param>
    /// <param name="force">On the whole group.</param>
    /// <param name="at">Where it acts.</param>
    public static ImmutableArray<PlaneForce> Share(ImmutableArray<PlanePoint> places, PlaneForce force, PlanePoint at)
    {
        var middle = Middle(places);
        var moment = Moment(middle, force, at);
        var polar = places.Sum(p => Squared(p, middle));
        return
        [
            .. places.Select(p => new PlaneForce(
                (force.Z / places.Length) - (moment * (p.N - middle.N) / polar),
                (force.N / places.Length) + (moment * (p.Z - middle.Z) / polar))),
        ];
    }

    /// <summary>The middle of a group.</summary>
    public static PlanePoint Middle(ImmutableArray<PlanePoint> places) =>
        new(places.Average(p => p.Z), places.Average(p => p.N));

    /// <summary>Moment of a force about a place, N·m, from outward to upward.</summary>
    public static double Moment(PlanePoint about, PlaneForce force, PlanePoint at) =>
        ((at.Z - about.Z) * force.N) - ((at.N - about.N) * force.Z);

    private static double Squared(PlanePoint p, PlanePoint q) => ((p.Z - q.Z) * (p.Z - q.Z)) + ((p.N - q.N) * (p.N - q.N));
}
