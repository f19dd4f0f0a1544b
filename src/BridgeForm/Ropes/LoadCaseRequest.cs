using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm.Ropes;

/// <summary>
/// One rope of known unstressed lengths under known loads; its shape is what is looked for. Metres and newtons, world
/// axes, support A at (0, 0).
/// </summary>
public sealed record LoadCaseRequest
{
    /// <summary>Support B from support A, horizontally, metres.</summary>
    public required double Span { get; init; }

    /// <summary>Support B above support A, metres.</summary>
    public required double Rise { get; init; }

    /// <summary>Unstressed length of each bay at the temperature of the case, metres.</summary>
    public required ImmutableArray<double> UnstressedLengths { get; init; }

    /// <summary>Load at each node, newtons downwards; the supports' are not read.</summary>
    public required ImmutableArray<double> Loads { get; init; }

    /// <summary>Weight per metre of rope unstressed at the temperature of the case, N/m.</summary>
    public required double WeightPerLength { get; init; }

    /// <summary>Axial stiffness EA, newtons.</summary>
    public required double AxialStiffness { get; init; }

    /// <summary>Rope behind support A that can slide over its saddle; null where the rope is held at the support.</summary>
    public SlidingBackstay? BackstayA { get; init; }

    /// <summary>Rope behind support B that can slide over its saddle; null where the rope is held at the support.</summary>
    public SlidingBackstay? BackstayB { get; init; }

    /// <summary>A shape to start from, such as the design state; null to start from an estimate.</summary>
    public RopeShape? Start { get; init; }

    /// <summary>The design state's rope at a temperature, under its own loads.</summary>
    /// <param name="design">The design state.</param>
    /// <param name="degreesAbove">Degrees Celsius above the reference temperature.</param>
    /// <param name="stayA">Rope behind support A; only a sliding one has a part in the shape.</param>
    /// <param name="stayB">Rope behind support B; only a sliding one has a part in the shape.</param>
    /// <param name="stretch">Share by which the unstressed rope has grown for good, as it bedded in; 0 for as marked.</param>
    /// <remarks>The rope's mass does not change with temperature, so its weight per metre falls as it grows.</remarks>
    public static LoadCaseRequest At(
        RopeShape design,
        double degreesAbove,
        BackstayParameters? stayA = null,
        BackstayParameters? stayB = null,
        double stretch = 0)
    {
        var growth = SteelRope.ExpansionFactor(degreesAbove) * (1 + stretch);
        var (tensionA, tensionB) = design.EndTensions();
        return new LoadCaseRequest
        {
            Span = design.Nodes[^1].X,
            Rise = design.Nodes[^1].Y,
            UnstressedLengths = [.. design.Segments.Select(s => s.UnstressedLength * growth)],
            Loads = design.Loads,
            WeightPerLength = design.WeightPerLength / growth,
            AxialStiffness = design.AxialStiffness,
            BackstayA = SlidingBackstay.Of(stayA, tensionA, design.AxialStiffness, growth),
            BackstayB = SlidingBackstay.Of(stayB, tensionB, design.AxialStiffness, growth),
            Start = design,
        };
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
