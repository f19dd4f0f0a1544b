using System.Collections.Immutable;
using BridgeForm.Materials;

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

    /// <summary>Rope that holds support A's post where the bridge's rope is held on its saddle; null where A does not move.</summary>
    public HeldBackstay? HeldA { get; init; }

    /// <summary>Rope that holds support B's post where the bridge's rope is held on its saddle; null where B does not move.</summary>
    public HeldBackstay? HeldB { get; init; }

    /// <summary>A shape to start from, such as the design state; null to start from an estimate.</summary>
    public RopeShape? Start { get; init; }

    /// <summary>
    /// The design state's rope at a temperature, under its own loads: what every other state of the rope is made from.
    /// </summary>
    /// <param name="design">The design state.</param>
    /// <param name="degreesAbove">Degrees Celsius above the reference temperature.</param>
    /// <param name="stays">Ropes behind the supports.</param>
    /// <param name="stretch">Share by which the unstressed rope has grown for good, as it bedded in; 0 for as marked.</param>
    /// <remarks>The rope's mass does not change with temperature, so its weight per metre falls as it grows.</remarks>
    public static LoadCaseRequest At(
        RopeShape design,
        double degreesAbove,
        Backstays stays,
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
            BackstayA = SlidingBackstay.Of(stays.A, tensionA, design.AxialStiffness, growth),
            BackstayB = SlidingBackstay.Of(stays.B, tensionB, design.AxialStiffness, growth),
            HeldA = HeldBackstay.Of(stays.A, design, growth),
            HeldB = HeldBackstay.Of(stays.B, design, growth),
            Start = design,
        };
    }
}
