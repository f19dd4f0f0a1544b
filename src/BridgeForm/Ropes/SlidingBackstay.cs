using BridgeForm.Project;

namespace BridgeForm.Ropes;

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
