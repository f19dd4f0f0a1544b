using System.Collections.Immutable;
using BridgeForm.Materials;

namespace BridgeForm.Project;

/// <summary>Frames and their steps along the ropes.</summary>
public sealed record FrameParameters
{
    /// <summary>Largest distance between neighbouring frames, metres.</summary>
    public required double Spacing { get; init; }

    /// <summary>Equal steps along the rope's chords, or in plan.</summary>
    public required FrameStep Step { get; init; }

    /// <summary>Square to the rope, or plumb.</summary>
    public required Stance Stance { get; init; }

    /// <summary>The beam across the ropes.</summary>
    public required BaseParameters Base { get; init; }

    /// <summary>Rope channels of a base.</summary>
    public required ChannelParameters Channel { get; init; }

    /// <summary>Posts.</summary>
    public required PostParameters Post { get; init; }

    /// <summary>Braces.</summary>
    public required BraceParameters Brace { get; init; }

    /// <summary>Holes for the keeper straps.</summary>
    public required KeeperParameters Keeper { get; init; }

    /// <summary>Mass of fasteners and keepers of one frame, kilograms.</summary>
    public required double HardwareMass { get; init; }

    /// <summary>The user's own holes.</summary>
    public ImmutableArray<HoleParameters> Holes { get; init; } = [];
}

/// <summary>What is equal from frame to frame.</summary>
public enum FrameStep
{
    /// <summary>Straight distances between neighbouring nodes.</summary>
    Rope,

    /// <summary>Horizontal distances.</summary>
    Plan,
}

/// <summary>How frames stand.</summary>
public enum Stance
{
    /// <summary>Square to the rope.</summary>
    Square,

    /// <summary>Upright.</summary>
    Plumb,
}

/// <summary>The base: a stick across the bridge.</summary>
/// <param name="Section">Its section.</param>
/// <param name="Flat">Lies on its wide side instead of standing on the narrow one.</param>
/// <param name="Length">Metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record BaseParameters(Section Section, bool Flat, double Length, string Stock)
{
    /// <summary>Size square to the deck (b), metres.</summary>
    public double Depth => Flat ? Section.Thickness : Section.Width;

    /// <summary>Size along the bridge (b_t), metres.</summary>
    public double Along => Flat ? Section.Width : Section.Thickness;
}

/// <summary>The rope channel of a base. Metres.</summary>
/// <param name="Width">Wall to wall (already computed from rope, clearance and liner when not given).</param>
/// <param name="Depth">Depth at the middle of an interior base.</param>
/// <param name="EndDepth">Depth at the middle of an end base.</param>
/// <param name="Liner">Thickness of a liner between rope and wood; 0 for none.</param>
public sealed record ChannelParameters(double Width, double Depth, double EndDepth, double Liner);

/// <summary>A post.</summary>
/// <param name="Section">Its section; the wide face lies in the plane of the frame.</param>
/// <param name="Length">Along its axis, metres.</param>
/// <param name="Lean">Outward from n, radians (α).</param>
/// <param name="Foot">z of the inner face at the base's top, metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record PostParameters(Section Section, double Length, double Lean, double Foot, string Stock);

/// <summary>A brace; foot and length both known, whichever was given.</summary>
/// <param name="Section">Its section; the wide face lies in the plane of the frame.</param>
/// <param name="Lean">Inward from n, radians (β).</param>
/// <param name="Foot">z of the outer face at the base's top, metres.</param>
/// <param name="Length">Long point to long point, metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record BraceParameters(Section Section, double Lean, double Foot, double Length, string Stock);

/// <summary>Blind pilot holes from below, two at each channel. Metres.</summary>
/// <param name="Hole">Diameter; 0 for no holes.</param>
/// <param name="Spread">Centre to centre across the channel.</param>
/// <param name="Depth">Depth from the bottom face.</param>
public sealed record KeeperParameters(double Hole, double Spread, double Depth);
