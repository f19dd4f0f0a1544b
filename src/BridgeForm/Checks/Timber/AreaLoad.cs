using BridgeForm.Project;

namespace BridgeForm.Checks;

/// <summary>The area load that asks most of wood: people, or snow where it is given and heavier for its duration.</summary>
/// <param name="Pressure">Pascals.</param>
/// <param name="Duration">CD.</param>
/// <param name="Name">In a person's words.</param>
internal readonly record struct AreaLoad(double Pressure, LoadDuration Duration, string Name)
{
    /// <summary>Of a project.</summary>
    public static AreaLoad Of(LoadParameters loads)
    {
        var snow = new LoadDuration(1.15, "two months");
        return loads.Snow is { } pressure && pressure / snow.Factor > loads.Live
            ? new(pressure, snow, "snow")
            : new(loads.Live, LoadDuration.Live, "live");
    }
}

/// <summary>Dead load alone, or with another, whichever asks more of wood for its duration.</summary>
/// <param name="Effect">Moment, shear or stress.</param>
/// <param name="Duration">Its CD.</param>
internal readonly record struct Governing(double Effect, LoadDuration Duration)
{
    /// <summary>Both effects of the same sign.</summary>
    public static Governing Of(double dead, double other, LoadDuration duration) =>
        Math.Abs(dead) / LoadDuration.Dead.Factor > Math.Abs(dead + other) / duration.Factor
            ? new(dead, LoadDuration.Dead)
            : new(dead + other, duration);
}
