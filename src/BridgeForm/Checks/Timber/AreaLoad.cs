using BridgeForm.Project;

namespace BridgeForm.Checks.Timber;

/// <summary>A load on the deck's area: people, or snow where it is given. They are cases of their own, never added.</summary>
/// <param name="Pressure">Pascals.</param>
/// <param name="Duration">CD.</param>
/// <param name="Name">In a person's words.</param>
internal sealed record AreaLoad(double Pressure, LoadDuration Duration, string Name)
{
    /// <summary>All of a project.</summary>
    public static IEnumerable<AreaLoad> All(LoadParameters loads)
    {
        yield return new(loads.Live, LoadDuration.Live, "live");
        if (loads.Snow is { } snow)
        {
            yield return new(snow, LoadDuration.Snow, "snow");
            yield return new(BridgeForm.Loads.LoadCases.Together(loads.Live, snow), LoadDuration.Snow, "0.75 live + 0.75 snow");
        }
    }

    /// <summary>The one that with the dead load, Pa, asks most of wood for its duration.</summary>
    public static AreaLoad Strongest(LoadParameters loads, double dead) =>
        All(loads).MaxBy(area => (dead + area.Pressure) / area.Duration.Factor)!;

    /// <summary>The heaviest, where duration does not matter.</summary>
    public static AreaLoad Heaviest(LoadParameters loads) => All(loads).MaxBy(area => area.Pressure)!;
}

/// <summary>Dead load alone, or with another, whichever asks more of wood for its duration.</summary>
/// <param name="Effect">Moment, shear or stress.</param>
/// <param name="Duration">Its CD.</param>
internal sealed record Governing(double Effect, LoadDuration Duration)
{
    /// <summary>Both effects of the same sign.</summary>
    public static Governing Of(double dead, double other, LoadDuration duration) =>
        Math.Abs(dead) / LoadDuration.Dead.Factor > Math.Abs(dead + other) / duration.Factor
            ? new(dead, LoadDuration.Dead)
            : new(dead + other, duration);
}
