using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Trials;

namespace BridgeForm;

/// <summary>Parameters → rope shape → frames → members → pieces → contacts and checks → model: the whole pipe, once.</summary>
public static class Bridge
{
    /// <summary>Builds the whole model, or says why it cannot be built.</summary>
    public static bool TryBuild(
        BridgeParameters parameters,
        [NotNullWhen(true)] out BridgeModel? model,
        [NotNullWhen(false)] out BridgeFault? fault) => new Rebuild().TryWhole(parameters, CancellationToken.None, out model, out fault);

    /// <summary>Shape of the ropes and weights of the members, found together.</summary>
    public static bool TryShape(
        BridgeParameters parameters, [NotNullWhen(true)] out RopeShape? rope, [NotNullWhen(false)] out BridgeFault? fault) =>
        (rope = FormFinding.Find(parameters, CancellationToken.None, out fault)) is not null;

    /// <summary>The shape and everything that lies on it, when every part of it is one.</summary>
    internal static bool TryLayout(
        BridgeParameters parameters,
        [NotNullWhen(true)] out RopeShape? rope,
        [NotNullWhen(true)] out BridgeLayout? layout,
        [NotNullWhen(false)] out BridgeFault? fault)
    {
        rope = FormFinding.Find(parameters, CancellationToken.None, out var none);
        (layout, fault) = Rebuild.Laid(parameters, rope, none, CancellationToken.None);
        return fault is null && rope is not null && layout is not null;
    }

    /// <summary>The shape of a trial design; null where it has none, or none within its effort.</summary>
    internal static RopeShape? ShapeWithin(BridgeParameters parameters, Effort effort, bool roughly) =>
        FormFinding.Within(parameters, effort, roughly);
}

/// <summary>Why a bridge that the project file describes correctly cannot be built.</summary>
public enum BridgeFaultKind
{
    /// <summary>The ropes have no shape that meets what was asked for.</summary>
    NoShape,

    /// <summary>On the shape that was found, some part does not fit.</summary>
    DoesNotFit,
}

/// <summary>Why a bridge cannot be built, for people.</summary>
/// <param name="Kind">What kind of trouble.</param>
/// <param name="Code">Stable id of what is wrong, of <c>docs/faults.md</c>; that of the first misfit where there are several.</param>
/// <param name="Message">What is wrong and what would be right.</param>
public sealed record BridgeFault(BridgeFaultKind Kind, string Code, string Message)
{
    /// <summary>What does not fit, by the keys it hangs on; empty where no key can be named.</summary>
    public ImmutableArray<Misfit> Misfits { get; init; } = [];

    /// <summary>A fault of parts that do not fit.</summary>
    public static BridgeFault Of(ImmutableArray<Misfit> misfits) =>
        new(
            BridgeFaultKind.DoesNotFit, misfits[0].Code,
            string.Join("; ", misfits.Select(m => $"{m.Key}: {m.What}")))
        { Misfits = misfits };
}
