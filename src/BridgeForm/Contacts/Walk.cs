using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>Walks along the bridge with the last few groups in sight.</summary>
internal sealed class Walk(Findings findings, ImmutableArray<RopeLine> ropes)
{
    // Groups that can come near each other: a bay, its two frames, and the bays and frames beyond them.
    private const int InSight = 5;

    // Pairs whose boxes are further apart than this touch nowhere and bear nowhere.
    private const double Margin = 2 * Seating.Tolerance;

    private readonly Queue<Neighbour[]> _sight = new();
    private readonly RopeContacts _ropeContacts = new(findings, ropes);

    /// <summary>The next frame or bay, with the frames it stands between (twice the same for a frame).</summary>
    public void Take(ImmutableArray<Member> members, FramePose from, FramePose to)
    {
        ImmutableArray<string> stringers = [.. members.Where(m => m.Role == Role.Stringer).Select(m => m.Id)];
        Compare([.. members.Select(m => new Neighbour(m, [.. Bearings.Of(m, from.Name, to.Name, stringers)]))]);
    }

    /// <summary>How far the floors of a frame's channels stand off the ropes.</summary>
    public void TakeFloors(Member member, FramePose pose, double liner) => _ropeContacts.TakeFloors(member, pose, liner);

    /// <summary>Members that are only compared with each other.</summary>
    public void TakeUnsupported(IReadOnlyList<Member> members) =>
        Compare([.. members.Select(m => new Neighbour(m, []))]);

    /// <summary>Judges the bearings that are still open.</summary>
    public void Finish()
    {
        while (_sight.TryDequeue(out var group))
        {
            Settle(group);
        }
    }

    private void Compare(Neighbour[] fresh)
    {
        for (var i = 0; i < fresh.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Pair(fresh[j], fresh[i]);
            }

            foreach (var group in _sight)
            {
                foreach (var earlier in group)
                {
                    Pair(earlier, fresh[i]);
                }
            }

            _ropeContacts.Take(fresh[i]);
        }

        _sight.Enqueue(fresh);
        if (_sight.Count > InSight)
        {
            Settle(_sight.Dequeue());
        }
    }

    private void Pair(Neighbour a, Neighbour b)
    {
        if (!a.Box.IsNear(b.Box, Margin))
        {
            return;
        }

        findings.Pairs++;

        // How wide a gap is matters only where one carries the other.
        var enough = a.RestsOn(b) || b.RestsOn(a) ? double.NegativeInfinity : 0;
        var depth = double.NegativeInfinity;
        foreach (var first in a.Cells)
        {
            foreach (var second in b.Cells)
            {
                depth = Math.Max(depth, Contact.Overlap(first, second, enough));
            }
        }

        findings.AddWood(a.Member.Id, b.Member.Id, depth);
        a.Note(b.Member.Id, depth);
        b.Note(a.Member.Id, depth);
    }

    private void Settle(Neighbour[] group)
    {
        foreach (var part in group)
        {
            foreach (var carriers in part.Carriers)
            {
                findings.AddBearing(part.Member.Id, carriers[0], part.GapTo(carriers));
            }
        }
    }
}
