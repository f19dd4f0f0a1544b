using BridgeForm.Project;

namespace BridgeForm.Ropes;

/// <summary>
/// Straight, weightless rope from a saddle that the bridge's rope is held on to an anchor. The post under the saddle leans
/// freely and keeps its height, so the backstay alone balances the level pull H of the bridge: its tension is H / cos angle.
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

    /// <summary>Tension of a backstay that balances a level pull, newtons.</summary>
    internal static double Tension(double angle, double horizontal) => horizontal / Math.Cos(angle);

    /// <summary>How far the saddle has come towards the span since the design state, metres, and how that grows with H.</summary>
    internal (double Length, double ByHorizontal) Give(double horizontal, double stiffness)
    {
        var cos = Math.Cos(Angle);
        var stretched = Unstressed * (1 + (Tension(Angle, horizontal) / stiffness));
        return ((stretched - Length) / cos, Unstressed / (stiffness * cos * cos));
    }
}
