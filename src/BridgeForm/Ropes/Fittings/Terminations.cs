using BridgeForm.Materials;
using BridgeForm.Project;

namespace BridgeForm.Ropes.Fittings;

/// <summary>Ends of ropes.</summary>
public static class Terminations
{
    /// <summary>Kind of end made with U-bolt clips.</summary>
    public const string Clips = "clips";

    /// <summary>U-bolt clips hold wire rope; on the hard, smooth wires of a strand they slip.</summary>
    public static bool ClipsHold(RopeKind kind) => kind is RopeKind.WireRope or RopeKind.Cord;

    /// <summary>The clips of the project's rope; null when its ends are made otherwise, clips do not hold it, or no row fits.</summary>
    public static WireRopeClip? ClipsFor(RopeParameters ropes) =>
        IsClips(ropes) && ropes.Rope.Kind != RopeKind.Strand ? WireRopeClip.For(ropes.Rope.Diameter) : null;

    /// <summary>The project's ends are made with clips.</summary>
    public static bool IsClips(RopeParameters ropes) => string.Equals(ropes.TerminationKind, Clips, StringComparison.Ordinal);

    /// <summary>
    /// Share of the rope's strength that its ends hold; null when it is not known, and for clips on strand, which slip
    /// whatever the file says of them.
    /// </summary>
    public static double? Efficiency(RopeParameters ropes) =>
        IsClips(ropes) && ropes.Rope.Kind == RopeKind.Strand ? null : ropes.TerminationEfficiency;

    /// <summary>
    /// Largest tension allowed: breaking strength · efficiency / safety factor, newtons; null when the efficiency is not known.
    /// </summary>
    public static double? Allowed(RopeParameters ropes) =>
        ropes.Rope.BreakingStrength * Efficiency(ropes) / ropes.SafetyFactor;
}
