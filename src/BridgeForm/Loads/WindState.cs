using BridgeForm.Ropes.Space;

namespace BridgeForm.Loads;

/// <summary>A state of the bridge, finished or on its way up, in a wind across it.</summary>
public sealed record WindState
{
    /// <summary>Finished, or a stage of erection: one of <see cref="WindWork.Stages"/>.</summary>
    public required string Stage { get; init; }

    /// <summary><c>D + W</c> or <c>0.6 D + W</c>.</summary>
    public required string Combination { get; init; }

    /// <summary>Wind on the ropes and all that hangs on them, newtons.</summary>
    public required double Force { get; init; }

    /// <summary>What the ropes pull at the supports with; null where no equilibrium under all of the wind was found.</summary>
    public required WindEnds? Ends { get; init; }

    /// <summary>
    /// Pressure to which the bridge was followed from the calm, Pa; null where not even the calm has an equilibrium. Where it is
    /// less than the wind's, the bridge loses its footing between it and <see cref="FallsAt"/>.
    /// </summary>
    public required double? StandsTo { get; init; }

    /// <summary>Pressure at which it had lost its footing, Pa; null where it stands, or has none in the calm.</summary>
    public double? FallsAt { get; init; }

    /// <summary>A stage as people call it.</summary>
    public static string Name(string stage) => stage switch
    {
        Hoisting.Bare => "bare ropes",
        WindWork.Half => "frames hung from A to mid-span",
        Hoisting.Frames => "all frames hung, no deck",
        _ => "finished",
    };

    /// <summary>It stands in all of the wind. Where it does not, the figures are those of where it comes to rest, if anywhere.</summary>
    public bool Stands { get; init; }

    /// <summary>How far either rope moves to the side where it moves most, metres.</summary>
    public double Sideways { get; init; }

    /// <summary>Roll of the frame that rolls most, radians, away from the wind; 0 where there is no frame.</summary>
    public double Roll { get; init; }

    /// <summary>Its name; empty where there is none.</summary>
    public string RollFrame { get; init; } = "";

    /// <summary>
    /// Largest force with which a rope pulls a frame's base down, square to the base, newtons: what the keeper there must hold.
    /// 0 where no base is lifted.
    /// </summary>
    public double Lift { get; init; }

    /// <summary>The frame; empty where no base is lifted.</summary>
    public string LiftFrame { get; init; } = "";

    /// <summary>Largest tension of either rope, newtons.</summary>
    public double LargestTension { get; init; }
}

/// <summary>Pull of the ropes at the supports across the bridge, away from the wind, newtons.</summary>
/// <param name="LeftA">Of the rope against the wind, at A.</param>
/// <param name="RightA">Of the other, at A.</param>
/// <param name="LeftB">Of the rope against the wind, at B.</param>
/// <param name="RightB">Of the other, at B.</param>
public sealed record WindEnds(double LeftA, double RightA, double LeftB, double RightB)
{
    /// <summary>Of both ropes at A.</summary>
    public double A => LeftA + RightA;

    /// <summary>Of both ropes at B.</summary>
    public double B => LeftB + RightB;

    internal static WindEnds Of(SpaceShape shape) => new(
        shape.LeftForces[0].Z, shape.RightForces[0].Z, shape.LeftForces[^1].Z, shape.RightForces[^1].Z);
}

/// <summary>What must hold an end frame on its landing in the wind: 0.6 of its light weight against it. Newtons, metres.</summary>
/// <param name="Frame">Its name.</param>
/// <param name="Side">To hold sideways.</param>
/// <param name="Height">Of that over the landing.</param>
/// <param name="Weight">Of the frame and half its bay at the low end of its wood's density.</param>
/// <param name="Base">Length of its base.</param>
public sealed record WindOnEndFrame(string Frame, double Side, double Height, double Weight, double Base)
{
    /// <summary>To hold down at the end of its base against the wind; 0 where its weight does.</summary>
    public double Down => Math.Max(0, ((Side * Height) - (LoadCases.SureDead * Weight * Base / 2)) / Base);
}

/// <summary>A frame that still stands upright in the wind: moments about its leeward rope. Newtons, metres.</summary>
/// <param name="Frame">Its name.</param>
/// <param name="Wind">On it.</param>
/// <param name="Height">Of that over the ropes' axes.</param>
/// <param name="Weight">0.6 of its light weight.</param>
/// <param name="Spacing">Between the ropes.</param>
public sealed record UprightFrame(string Frame, double Wind, double Height, double Weight, double Spacing)
{
    /// <summary>To hold its base down on the rope against the wind; negative where its weight does.</summary>
    public double Lift => ((Wind * Height) - (Weight * Spacing / 2)) / Spacing;
}
