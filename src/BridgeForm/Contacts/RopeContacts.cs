using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>Ropes as chains of round rods against the wood near them.</summary>
internal sealed class RopeContacts(Findings findings, ImmutableArray<RopeLine> ropes)
{
    private readonly (string Name, Capsule Rod, Box3 Box)[][] _rods = [.. ropes.Select(Rods)];
    private readonly int[] _first = new int[ropes.Length];

    /// <summary>Compares one member with the pieces of rope beside it. Members come from A to B.</summary>
    public void Take(Neighbour wood)
    {
        for (var k = 0; k < _rods.Length; k++)
        {
            var rods = _rods[k];
            while (_first[k] < rods.Length - 1 && rods[_first[k]].Box.Max.X < wood.Box.Min.X - Behind)
            {
                _first[k]++;
            }

            for (var i = _first[k]; i < rods.Length && rods[i].Box.Min.X <= wood.Box.Max.X; i++)
            {
                if (rods[i].Box.IsNear(wood.Box, 0))
                {
                    Compare(rods[i].Name, rods[i].Rod, wood);
                }
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
    public void TakeFloors(Member wood, FramePose pose, double liner)
    {
        var middle = Plane.Through(pose.Node, pose.Along);
        for (var k = 0; k < _rods.Length; k++)
        {
            if (Crossing(_rods[k], _first[k], middle) is not { } axis)
            {
                continue;
            }

            var channel = wood.Shape.Channels.MinBy(c => Math.Abs(wood.Placement.ToLocal(axis).X - c.Center));
            if (channel is not null)
            {
                var below = -wood.Placement.ToWorld(Floor(wood.Shape, channel)).SignedDistance(axis);
                findings.AddBearing(wood.Id, "rope-" + ropes[k].Name, below - ropes[k].Radius - liner);
            }
        }
    }

    private static Vector3d? Crossing((string Name, Capsule Rod, Box3 Box)[] rods, int first, Plane plane)
    {
        for (var i = first; i < rods.Length; i++)
        {
            var (from, to) = (rods[i].Rod.From, rods[i].Rod.To);
            var (before, after) = (plane.SignedDistance(from), plane.SignedDistance(to));
            if (before <= 0 && after >= 0)
            {
                return from + (before / Math.Min(before - after, -double.Epsilon) * (to - from));
            }
        }

        return null;
    }

    /// <summary>The floor in the stick's own axes; its normal points into the wood.</summary>
    private static Plane Floor(CutStock shape, Channel channel) => channel.Face == StockFace.MinusY
        ? Plane.Through(new Vector3d(channel.Center, channel.Depth - (shape.Width / 2), 0), new Vector3d(0, 1, -channel.FloorSlope))
        : Plane.Through(new Vector3d(channel.Center, 0, channel.Depth - (shape.Thickness / 2)), new Vector3d(0, -channel.FloorSlope, 1));

    // Frames lean: a later member may begin this far before an earlier one, metres. No frame is twice as tall.
    private const double Behind = 2;

    private void Compare(string rope, Capsule rod, Neighbour wood)
    {
        findings.Pairs++;
        var depth = double.NegativeInfinity;
        foreach (var cell in wood.Cells)
        {
            depth = Math.Max(depth, Contact.Overlap(rod, cell));
        }

        findings.AddRope("rope-" + rope, wood.Member.Id, depth, wood.Member.Role == Role.Base);
    }

    private static (string Name, Capsule Rod, Box3 Box)[] Rods(RopeLine rope)
    {
        var rods = new (string Name, Capsule Rod, Box3 Box)[rope.Points.Length - 1];
        var reach = new Vector3d(rope.Radius, rope.Radius, rope.Radius);
        for (var i = 0; i < rods.Length; i++)
        {
            Vector3d from = rope.Points[i], to = rope.Points[i + 1];
            rods[i] = (
                rope.Name,
                new Capsule(from, to, rope.Radius),
                Box3.Around([from - reach, from + reach, to - reach, to + reach]));
        }

        return rods;
    }
}
