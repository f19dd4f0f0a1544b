namespace BridgeForm.Project;

/// <summary>Limits of the builder's own, stricter than the program's; null where the program's stand.</summary>
public sealed record LimitParameters
{
    /// <summary>Least roll factor.</summary>
    public double? Roll { get; init; }

    /// <summary>Largest tilt of a frame under load, radians.</summary>
    public double? CrossSlope { get; init; }

    /// <summary>Steepest deck under load, rise over run.</summary>
    public double? Slope { get; init; }
}
