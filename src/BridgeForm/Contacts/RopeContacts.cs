using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>Ropes as chains of round rods against the wood near them.</summary>
internal sealed class RopeContacts(Findings findings, ImmutableArray<RopeLine> ropes)
{
    private readonly Rods[] _ropes = [.. ropes.Select(Rods.Build)];

    /// <summary>Compares one part with every rod whose box meets its box.</summary>
    public void Take(Neighbour wood)
    {
        foreach (var rods in _ropes)
        {
            foreach (var i in rods.Within(wood.Box))
            {
                Compare(rods.Name, rods.All[i].Rod, wood);
            }
        }
    }

    /// <summary>
    /// How far the floors of a base's channels stand off the ropes at the frame's mid-plane, measured square to the floor: what
    /// hangs on the ropes must bear on them.
    /// </summary>
    /// <param name="wood">The base of a frame that hangs on the ropes.</param>
    /// <param name="pose">Where the frame stands.</param>
    /// <param name="liner">Thickness of the liner between rope and floor, metres.</param>
    public void TakeFloors(Neighbour wood, FramePose pose, double liner)
    {
        var part = wood.Part;
        var reach = wood.Box.With(pose.Node);
        foreach (var rods in _ropes)
        {
            var axis = Crossing(rods, reach, pose);
            var channel = part.Shape.Channels.MinBy(c => Math.Abs(part.Placement.ToLocal(axis).X - c.Center))
                ?? throw new InvalidOperationException($"{part.Id} hangs on ropes and has no channel.");
            var below = -part.Placement.ToWorld(Floor(part.Shape, channel)).SignedDistance(axis);
            findings.AddBearing(part.Id, RopeIds.Of(rods.Name), below - rods.Radius - liner);
        }
    }

    /// <summary>Where a rope passes the frame's mid-plane, next to its node.</summary>
    private static Vector3d Crossing(Rods rods, Box3 reach, FramePose pose)
    {
        var plane = Plane.Through(pose.Node, pose.Along);
        Vector3d? nearest = null;
        foreach (var i in rods.Beside(reach))
        {
            var (from, to) = (rods.All[i].Rod.From, rods.All[i].Rod.To);
            var (before, after) = (plane.SignedDistance(from), plane.SignedDistance(to));
            if (before <= 0 && after >= 0)
            {
                var at = from + (before / Math.Min(before - after, -double.Epsilon) * (to - from));
                nearest = nearest is { } other && (other - pose.Node).Length <= (at - pose.Node).Length ? other : at;
            }
        }

        return nearest ?? throw new InvalidOperationException($"The {rods.Name} rope does not pass frame {pose.Name}.");
    }

    /// <summary>The floor in the stick's own axes; its normal points into the wood.</summary>
    private static Plane Floor(CutStock shape, Channel channel) => channel.Face == StockFace.MinusY
        ? Plane.Through(new Vector3d(channel.Center, channel.Depth - (shape.Width / 2), 0), new Vector3d(0, 1, -channel.FloorSlope))
        : Plane.Through(new Vector3d(channel.Center, 0, channel.Depth - (shape.Thickness / 2)), new Vector3d(0, -channel.FloorSlope, 1));

    private void Compare(string rope, Capsule rod, Neighbour wood)
    {
        findings.Pairs++;
        var isBase = RoleTable.Of(wood.Part.Role).LiesOnRopes;
        var enough = findings.RopeDepthOfNote(isBase);
        var depth = double.NegativeInfinity;
        foreach (var cell in wood.Cells)
        {
            depth = Math.Max(depth, Contact.Overlap(rod, cell, Math.Max(depth, enough)));
        }

        findings.AddRope(RopeIds.Of(rope), wood.Part.Id, depth, isBase);
    }
}

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
    public static Rods Build(RopeLine rope)
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
