using System.Collections.Immutable;
using BridgeForm.Frames;

namespace BridgeForm.Contacts;

/// <summary>Collects what the survey finds.</summary>
internal sealed class Findings
{
    // Parts laid out to press in by exactly the seating tolerance come out a few roundings above it.
    private const double Slack = 1e-6;

    // The worst are worth naming; a bridge drawn wrong everywhere must not fill the memory.
    private const int Kept = 100;

    private readonly List<ContactFault> _overlaps = [];
    private readonly List<ContactFault> _gaps = [];
    private readonly List<ContactFault> _ropes = [];
    private double _deepestOverlap;
    private double _widestGap;
    private double _deepestRope = double.NegativeInfinity;

    /// <summary>Number of pairs compared.</summary>
    public long Pairs { get; set; }

    /// <summary>A pair of wooden parts that overlap by a depth in metres (negative: apart).</summary>
    public void AddWood(string first, string second, double depth)
    {
        _deepestOverlap = Math.Max(_deepestOverlap, depth);
        if (depth > Seating.Tolerance + Slack)
        {
            Keep(_overlaps, new ContactFault(first, second, depth));
        }
    }

    /// <summary>A part stands clear of what must carry it by a gap in metres (negative: pressed in).</summary>
    public void AddBearing(string part, string carrier, double gap)
    {
        _widestGap = Math.Max(_widestGap, gap);
        if (!(gap <= Seating.Tolerance + Slack))
        {
            Keep(_gaps, new ContactFault(part, carrier, gap));
        }
    }

    /// <summary>A rope lies in a base's wood by a depth in metres, or (elsewhere) touches wood.</summary>
    public void AddRope(string rope, string part, double depth, bool isBase)
    {
        if (isBase)
        {
            _deepestRope = Math.Max(_deepestRope, depth);
        }

        if (depth > (isBase ? Seating.Tolerance + Slack : 0))
        {
            Keep(_ropes, new ContactFault(rope, part, depth));
        }
    }

    /// <summary>Everything found, worst first.</summary>
    public ContactSurvey Result() => new(
        Pairs, Worst(_overlaps), Worst(_gaps), Worst(_ropes), _deepestOverlap, _widestGap, _deepestRope);

    private static void Keep(List<ContactFault> list, ContactFault fault)
    {
        if (list.Count < Kept)
        {
            list.Add(fault);
        }
    }

    private static ImmutableArray<ContactFault> Worst(List<ContactFault> faults) =>
        [.. faults.OrderByDescending(f => f.Amount).ThenBy(f => f.First, StringComparer.Ordinal)];
}
