using BridgeForm.Project;
using BridgeForm.Quantities;

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

/// <summary>
/// Straight, weightless rope from a saddle that the bridge's rope is held on to an anchor. The post under the saddle leans
/// freely and keeps its height, so the backstay alone balances the horizontal tension H of the bridge: its tension is H / cos angle.
/// </summary>
/// <remarks>
/// With l its unstressed length at the temperature of the case it is l·(1 + H / (EA·cos angle)) long. A saddle that moves
/// towards the span by a small u makes it u·cos angle longer than <paramref name="Length"/>, so
/// u = (l·(1 + H / (EA·cos angle)) − Length) / cos angle: a spring of EA·cos² angle / l, and α·ΔT·Length / cos angle for
/// heat. The angle is taken as constant: u is millimetres beside metres.
/// </remarks>
/// <param name="Length">Saddle to anchor in the design state, metres.</param>
/// <param name="Unstressed">Unstressed length at the temperature of the case, metres.</param>
/// <param name="Angle">Below the horizontal, radians.</param>
public sealed record HeldBackstay(double Length, double Unstressed, double Angle)
{
    /// <summary>The backstay of a post that stands in its place in the design state; null for none and for a sliding saddle.</summary>
    /// <param name="stay">Length, angle and saddle.</param>
    /// <param name="design">The design state.</param>
    /// <param name="growth">Unstressed length in the case over that in the design state.</param>
    internal static HeldBackstay? Of(BackstayParameters? stay, RopeShape design, double growth) =>
        stay is { Sliding: false }
            ? new HeldBackstay(
                stay.Length,
                stay.Length / (1 + (Tension(stay.Angle, design.Horizontal) / design.AxialStiffness)) * growth,
                stay.Angle)
            : null;

    /// <summary>Tension of a backstay that balances a horizontal tension, newtons.</summary>
    internal static double Tension(double angle, double horizontal) => horizontal / Elementary.Cos(angle);

    /// <summary>How far the saddle has come towards the span since the design state, metres, and how that grows with H.</summary>
    internal (double Length, double ByHorizontal) Give(double horizontal, double stiffness)
    {
        var cos = Elementary.Cos(Angle);
        var stretched = Unstressed * (1 + (Tension(Angle, horizontal) / stiffness));
        return ((stretched - Length) / cos, Unstressed / (stiffness * cos * cos));
    }
}

/// <summary>
/// Straight, weightless rope from a frictionless saddle to an anchor: its tension is that of the rope at the support,
/// and what it gives up goes into the first (last) bay.
/// </summary>
/// <param name="Length">Saddle to anchor, metres; fixed.</param>
/// <param name="Unstressed">
/// Unstressed rope, at the temperature of the case, that lies in it when the bay has its nominal length, metres.
/// </param>
public sealed record SlidingBackstay(double Length, double Unstressed)
{
    /// <summary>The backstay of a rope that was made fast in the design state; null for none and for a fixed saddle.</summary>
    /// <param name="stay">Length and saddle.</param>
    /// <param name="tension">Tension at the support in the design state, newtons.</param>
    /// <param name="stiffness">EA, newtons.</param>
    /// <param name="growth">Unstressed length at the temperature of the case over that at the reference temperature.</param>
    internal static SlidingBackstay? Of(BackstayParameters? stay, double tension, double stiffness, double growth) =>
        stay is { Sliding: true }
            ? new SlidingBackstay(stay.Length, stay.Length / (1 + (tension / stiffness)) * growth)
            : null;

    /// <summary>Unstressed rope it has given to the span at a tension, metres, and how that grows with the tension.</summary>
    internal (double Length, double ByTension) Fed(double tension, double stiffness)
    {
        var stretch = 1 + (tension / stiffness);
        return (Unstressed - (Length / stretch), Length / (stretch * stretch * stiffness));
    }
}
