namespace BridgeForm.Checks.Timber;

/// <summary>
/// Load duration factor CD (NDS Table 2.3.2). Never 2.0: pressure-treated wood and joints do not take the
/// factor of impact.
/// </summary>
/// <param name="Factor">CD.</param>
/// <param name="Name">What it belongs to.</param>
internal sealed record LoadDuration(double Factor, string Name)
{
    /// <summary>Permanent.</summary>
    public static LoadDuration Dead => new(0.9, "permanent");

    /// <summary>Ten years: people on the deck.</summary>
    public static LoadDuration Live => new(1.0, "ten years");

    /// <summary>Two months: snow.</summary>
    public static LoadDuration Snow => new(1.15, "two months");

    /// <summary>Ten minutes: people against the guard, wind.</summary>
    public static LoadDuration Guard => new(1.6, "ten minutes");
}
