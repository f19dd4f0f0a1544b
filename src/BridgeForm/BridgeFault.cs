using System.Collections.Immutable;
using BridgeForm.Frames;

namespace BridgeForm;

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
        new(BridgeFaultKind.DoesNotFit, misfits[0].Code, string.Join("; ", misfits.Select(m => $"{m.Key}: {m.What}"))) { Misfits = misfits };
}
