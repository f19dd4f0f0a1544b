using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Contacts;

/// <summary>Collects what the sweep finds.</summary>
internal sealed class Findings
{
    // Parts that were never compared stand at least this far apart: the sweep looks no further.
    private const double LeastOfFarGaps = 2 * Tolerances.Seating;

    // The worst are worth naming; a bridge drawn wrong everywhere must not fill the memory.
    private const int Kept = 100;

    private readonly Worst _overlaps = new();
    private readonly Worst _gaps = new();
    private readonly Worst _ropes = new();
    private double _deepestOverlap;
    private double _widestGap;
    private double _deepestRope = double.NegativeInfinity;
    private ContactFault? _pressed;
    private ContactFault? _clear;
    private ContactFault? _ropeIn;

    /// <summary>Number of pairs compared.</summary>
    public long Pairs { get; set; }

    /// <summary>A pair of wooden parts that overlap by no more than this changes no finding, metres.</summary>
    public double OverlapOfNote => Math.Min(_deepestOverlap, Tolerances.Seating + Tolerances.Pressed);

    /// <summary>A rope in the wood of a part by no more than this changes no finding, metres.</summary>
    public double RopeDepthOfNote(bool isBase) => isBase ? Math.Min(_deepestRope, Tolerances.Seating + Tolerances.Pressed) : 0;

    /// <summary>A pair of wooden parts that overlap by a depth in metres (negative: apart).</summary>
    public void AddWood(string first, string second, double depth)
    {
        _deepestOverlap = Math.Max(_deepestOverlap, depth);
        Note(ref _pressed, first, second, depth);
        if (depth > Tolerances.Seating + Tolerances.Pressed)
        {
            _overlaps.Add(new ContactFault(first, second, depth));
        }
    }

    /// <summary>A part stands clear of what must carry it by a gap in metres (negative: pressed in; infinite: nowhere near it).</summary>
    public void AddBearing(string part, string carrier, double gap)
    {
        _widestGap = Math.Max(_widestGap, double.IsFinite(gap) ? gap : LeastOfFarGaps);
        Note(ref _clear, part, carrier, gap);
        if (!(gap <= Tolerances.Seating + Tolerances.Pressed))
        {
            _gaps.Add(new ContactFault(part, carrier, gap));
        }
    }

    /// <summary>A rope lies in a base's wood by a depth in metres, or (elsewhere) touches wood.</summary>
    public void AddRope(string rope, string part, double depth, bool isBase)
    {
        if (isBase)
        {
            _deepestRope = Math.Max(_deepestRope, depth);
            Note(ref _ropeIn, rope, part, depth);
        }

        if (depth > (isBase ? Tolerances.Seating + Tolerances.Pressed : 0))
        {
            _ropes.Add(new ContactFault(rope, part, depth));
        }
    }

    // Faces that touch differ from none by round-off, and it may not choose among them.
    private static void Note(ref ContactFault? worst, string first, string second, double amount)
    {
        if (amount > Tolerances.RoundOff && Ties.IsLarger(amount, worst?.Amount ?? 0))
        {
            worst = new ContactFault(first, second, amount);
        }
    }

    /// <summary>Everything found, worst first.</summary>
    public ContactFindings Result() => new(
        Pairs, _overlaps.All(), _gaps.All(), _ropes.All(), _overlaps.Count, _gaps.Count, _ropes.Count, _deepestOverlap, _widestGap,
        _deepestRope)
    {
        Pressed = _pressed,
        Clear = _clear,
        RopeIn = _ropeIn,
    };

    /// <summary>The worst faults of one kind, and how many there were.</summary>
    private sealed class Worst
    {
        private readonly PriorityQueue<ContactFault, double> _kept = new();

        /// <summary>All, the dropped ones included.</summary>
        public int Count { get; private set; }

        /// <summary>Keeps it if it is among the worst.</summary>
        public void Add(ContactFault fault)
        {
            Count++;
            if (_kept.Count < Kept)
            {
                _kept.Enqueue(fault, fault.Amount);
            }
            else
            {
                _kept.EnqueueDequeue(fault, fault.Amount);
            }
        }

        /// <summary>Worst first.</summary>
        public ImmutableArray<ContactFault> All() =>
        [
            .. _kept.UnorderedItems.Select(f => f.Element)
                .OrderByDescending(f => f.Amount)
                .ThenBy(f => f.First, StringComparer.Ordinal)
                .ThenBy(f => f.Second, StringComparer.Ordinal),
        ];
    }
}
