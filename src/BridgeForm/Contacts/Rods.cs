using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>
/// One rope as round rods in order, found by where a box begins and ends along x. Nothing is taken for granted about the
/// rope's course: what is searched by is how far any rod so far reaches.
/// </summary>
internal sealed class Rods
{
    private readonly double[] _reachedBy;
    private readonly double[] _begunFrom;

    private Rods(string name, double radius, (Capsule Rod, Box3 Box)[] all)
    {
        (Name, Radius, All) = (name, radius, all);
        _reachedBy = new double[all.Length];
        _begunFrom = new double[all.Length];
        var (reached, begun) = (double.NegativeInfinity, double.PositiveInfinity);
        for (var i = 0; i < all.Length; i++)
        {
            _reachedBy[i] = reached = Math.Max(reached, all[i].Box.Max.X);
            var back = all.Length - 1 - i;
            _begunFrom[back] = begun = Math.Min(begun, all[back].Box.Min.X);
        }
    }

    /// <summary>Name of the rope.</summary>
    public string Name { get; }

    /// <summary>Radius, metres.</summary>
    public double Radius { get; }

    /// <summary>Rods from A to B, with the boxes around them.</summary>
    public (Capsule Rod, Box3 Box)[] All { get; }

    /// <summary>The rods between a rope's points.</summary>
    public static Rods Of(RopeLine rope)
    {
        var rods = new (Capsule Rod, Box3 Box)[rope.Points.Length - 1];
        var reach = new Vector3d(rope.Radius, rope.Radius, rope.Radius);
        for (var i = 0; i < rods.Length; i++)
        {
            Vector3d from = rope.Points[i], to = rope.Points[i + 1];
            rods[i] = (new Capsule(from, to, rope.Radius), Box3.Around([from - reach, from + reach, to - reach, to + reach]));
        }

        return new Rods(rope.Name, rope.Radius, rods);
    }

    /// <summary>Indices of every rod whose box meets a box.</summary>
    public IEnumerable<int> Within(Box3 box) => Beside(box).Where(i => All[i].Box.IsNear(box, 0));

    /// <summary>Indices of every rod whose box meets a box along x.</summary>
    public IEnumerable<int> Beside(Box3 box)
    {
        var first = Array.BinarySearch(_reachedBy, box.Min.X);
        first = first < 0 ? ~first : first;
        while (first > 0 && _reachedBy[first - 1] >= box.Min.X)
        {
            first--;
        }

        for (var i = first; i < All.Length && _begunFrom[i] <= box.Max.X; i++)
        {
            if (All[i].Box.Min.X <= box.Max.X && All[i].Box.Max.X >= box.Min.X)
            {
                yield return i;
            }
        }
    }
}
