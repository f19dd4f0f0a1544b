using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Contacts;

/// <summary>
/// Finds every pair of parts whose boxes come near each other: parts are taken in order of where they begin along x, and one
/// is let go only when the next begins beyond its end. However tall parts are and however they lean, none is missed.
/// </summary>
internal sealed class Sweep
{
    // Pairs whose boxes are further apart than this touch nowhere and bear nowhere.
    private const double Margin = 2 * Tolerances.Seating;

    private readonly ImmutableArray<SweptPart> _parts;
    private readonly Supports _supports;
    private readonly Findings _findings;
    private readonly RopeContacts _ropes;
    private readonly List<Neighbour> _sight = [];

    /// <summary>A sweep over parts that rest on each other as their names say.</summary>
    public Sweep(ImmutableArray<SweptPart> parts, Supports supports, Findings findings, RopeContacts ropes) =>
        (_parts, _supports, _findings, _ropes) = (parts, supports, findings, ropes);

    /// <summary>Compares all.</summary>
    /// <param name="liner">Thickness of the liner between rope and floor of a channel, metres.</param>
    /// <param name="token">Asked before each part.</param>
    public void Run(double liner, CancellationToken token)
    {
        var boxes = new Box3[_parts.Length];
        for (var i = 0; i < boxes.Length; i++)
        {
            token.ThrowIfCancellationRequested();
            boxes[i] = _parts[i].Box();
        }

        var order = Enumerable.Range(0, boxes.Length).ToArray();
        Array.Sort(order, (a, b) => boxes[a].Min.X.CompareTo(boxes[b].Min.X) is var x and not 0 ? x : a.CompareTo(b));
        foreach (var index in order)
        {
            token.ThrowIfCancellationRequested();
            var fresh = new Neighbour(_parts[index], index, boxes[index], _supports.CarriersOf(index));
            LetGo(boxes[index].Min.X - Margin, boxes);
            foreach (var earlier in _sight)
            {
                Pair(earlier, fresh);
            }

            _ropes.Take(fresh);
            if (_supports.HangsOnRopes(index) is { } pose)
            {
                _ropes.TakeFloors(fresh, pose, liner);
            }

            _sight.Add(fresh);
        }

        LetGo(double.PositiveInfinity, boxes);
    }

    /// <summary>Parts that end before a place along x meet no later one: their bearings are judged.</summary>
    private void LetGo(double before, Box3[] boxes)
    {
        var kept = 0;
        for (var i = 0; i < _sight.Count; i++)
        {
            if (_sight[i].Box.Max.X < before)
            {
                Settle(_sight[i], boxes);
            }
            else
            {
                _sight[kept++] = _sight[i];
            }
        }

        _sight.RemoveRange(kept, _sight.Count - kept);
    }

    private void Pair(Neighbour a, Neighbour b)
    {
        if (!a.Box.IsNear(b.Box, Margin))
        {
            return;
        }

        _findings.Pairs++;

        // How wide a gap is matters only where one carries the other.
        var bears = a.RestsOn(b) || b.RestsOn(a);
        var depth = a.DepthIn(b, bears ? double.NegativeInfinity : _findings.OverlapOfNote);
        var (first, second) = string.CompareOrdinal(a.Part.Id, b.Part.Id) < 0 ? (a, b) : (b, a);
        _findings.AddWood(first.Part.Id, second.Part.Id, depth);
        if (bears)
        {
            a.Note(b, depth);
            b.Note(a, depth);
        }
    }

    private void Settle(Neighbour part, Box3[] boxes)
    {
        for (var i = 0; i < part.Carriers.Length; i++)
        {
            var gap = part.Gap(i);
            _findings.AddBearing(
                part.Part.Id, _parts[part.Carriers[i][0]].Id, double.IsFinite(gap) ? gap : Measured(part, part.Carriers[i], boxes));
        }
    }

    /// <summary>The gap to carriers none of which came near, metres.</summary>
    private double Measured(Neighbour part, int[] carriers, Box3[] boxes) => carriers.Min(index =>
        -part.DepthIn(new Neighbour(_parts[index], index, boxes[index], []), double.NegativeInfinity));
}
