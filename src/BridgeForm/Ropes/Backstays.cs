using BridgeForm.Project;

namespace BridgeForm.Ropes;

/// <summary>What holds the rope behind both supports.</summary>
/// <param name="A">Rope behind support A; null where the rope ends at the support.</param>
/// <param name="B">Rope behind support B; null where the rope ends at the support.</param>
public sealed record Backstays(BackstayParameters? A, BackstayParameters? B)
{
    /// <summary>Both ends made fast at supports that do not move.</summary>
    public static Backstays None { get; } = new(null, null);

    /// <summary>Those of a site.</summary>
    public static Backstays Of(SiteParameters site) => new(site.A.Backstay, site.B.Backstay);
}
