using BridgeForm.Materials;

namespace BridgeForm.Project;

/// <summary>The two ropes and how they are made fast.</summary>
public sealed record RopeParameters
{
    /// <summary>The rope itself.</summary>
    public required RopeProperties Rope { get; init; }

    /// <summary>Distance between the two ropes' axes, metres.</summary>
    public required double Spacing { get; init; }

    /// <summary>Sag at mid-span in the design state, metres below the line A–B.</summary>
    public required double Sag { get; init; }

    /// <summary>Kind of termination, as written: <c>clips</c>, <c>socket</c>, …</summary>
    public required string TerminationKind { get; init; }

    /// <summary>Share of the rope's strength the termination keeps, 0 to 1; null: not given.</summary>
    public required double? TerminationEfficiency { get; init; }

    /// <summary>Where the efficiency comes from, as the user says; null: not given.</summary>
    public string? TerminationSource { get; init; }

    /// <summary>Breaking strength over largest allowed tension.</summary>
    public required double SafetyFactor { get; init; }

    /// <summary>Tension at which the rope is laid out and marked, newtons; 0: unstressed.</summary>
    public double MarkingTension { get; init; }

    /// <summary>Constructional stretch as a share of length, low and high; null: by the rope's kind.</summary>
    public ShareRange? Stretch { get; init; }
}

/// <summary>A range of shares (0.005 is half a per cent).</summary>
public readonly record struct ShareRange(double Low, double High);
