using System.Collections.Immutable;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>One row of the table a crew sets the ropes by.</summary>
/// <param name="Stage"><c>bare</c>, or <c>frames</c>: frames hung, no deck.</param>
/// <param name="Temperature">°C.</param>
/// <param name="Sag">At half the span below the line A–B, metres.</param>
/// <param name="Horizontal">Horizontal tension of one rope, newtons.</param>
public sealed record HoistingRow(string Stage, double Temperature, double Sag, double Horizontal)
{
    /// <summary>
    /// Line of sight: so far straight below the rope's point at either support, metres, a line parallel to A–B touches the
    /// rope axis. Between level supports that line is level.
    /// </summary>
    public double Sight { get; init; }

    /// <summary>
    /// Lowest point of the rope axis, metres; a level line of sight touches the rope there. A support when it lies there.
    /// </summary>
    public RopePoint Lowest { get; init; }

    /// <summary>Largest tension of one rope, newtons.</summary>
    public double LargestTension { get; init; }
}

/// <summary>Where a frame sits on the rope laid out straight, from support A's point. Metres.</summary>
/// <param name="Frame">Name of the frame.</param>
/// <param name="Unstressed">On the unstressed rope at the reference temperature.</param>
/// <param name="AtMarkingTension">On the rope pulled to the marking tension.</param>
public sealed record RopeMark(string Frame, double Unstressed, double AtMarkingTension);

/// <summary>
/// A load case: both ropes with the frames that stand on them. Forces and shape are those of the rope that is pulled harder.
/// </summary>
public sealed record LoadCaseResult
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>In a person's words.</summary>
    public required string Title { get; init; }

    /// <summary>Shape and forces; null when the case has no solution.</summary>
    public required RopeShape? Shape { get; init; }

    /// <summary>Why there is no solution; null when there is one.</summary>
    public string? Failure { get; init; }

    /// <summary>How far the rope's point at half the span moves down from the design state, metres; negative when it rises.</summary>
    public double MidSpanDrop { get; init; }

    /// <summary>Temperature, °C.</summary>
    public double Temperature { get; init; }

    /// <summary>Force of the rope on support A, (x, y) newtons in world axes.</summary>
    public RopePoint ReactionA { get; init; }

    /// <summary>Force of the rope on support B, (x, y) newtons in world axes.</summary>
    public RopePoint ReactionB { get; init; }

    /// <summary>Shape of the other rope, which is pulled less; null when the case has no solution.</summary>
    public RopeShape? Lighter { get; init; }

    /// <summary>Movement of each frame's point on the rope from the design state, world axes, metres; supports included.</summary>
    public ImmutableArray<RopePoint> Moves { get; init; } = [];

    /// <summary>
    /// Slope of the steepest bay of the deck, rise over run, never negative; of the ropes' chords where no deck lies yet.
    /// </summary>
    public double SteepestDeck { get; init; }

    /// <summary>Least clearance over the ground line, metres; null when there is none or the case has no solution.</summary>
    public double? OverGround { get; init; }

    /// <summary>Least clearance over the highest water, metres; null when no water is given or the case has no solution.</summary>
    public double? OverWater { get; init; }

    /// <summary>
    /// Tilt of the frame that tilts most, radians, never negative: the difference of the ropes' heights over their spacing,
    /// with the lever of all weights above them (second order). Null where the case has no solution, and where it rolls over.
    /// </summary>
    public double? CrossSlope { get; init; }

    /// <summary>The same of first order, each rope by itself: what the deck tilts before its weights lean with it.</summary>
    public double FirstOrderCrossSlope { get; init; }

    /// <summary>
    /// No equilibrium in which the section stays upright: shape and forces are then those of ropes whose frames are held
    /// upright, and no more than that.
    /// </summary>
    public bool RollsOver { get; init; }

    /// <summary>
    /// Largest share of one load on one rope at any frame, by statics: above 1 the other rope is relieved by it. Null where
    /// nothing lies on the deck, and where it rolls over.
    /// </summary>
    public double? LargestShare { get; init; }

    /// <summary>Where the live load lies on a part of the deck, from A to B; empty for any other load.</summary>
    public ImmutableArray<LoadedStretch> Stretches => Loading?.Stretches ?? [];

    /// <summary>Both ropes with what stands on them; null when the case has no solution.</summary>
    internal PairCase? Pair { get; init; }

    /// <summary>What lies on them.</summary>
    internal Loading? Loading { get; init; }
}
