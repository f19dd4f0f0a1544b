using System.Diagnostics.CodeAnalysis;

namespace BridgeForm.Solids;

/// <summary>Why there is no solid.</summary>
public enum SolidFaultKind
{
    /// <summary>The cuts take all the wood away.</summary>
    NothingLeft,

    /// <summary>The cuts meet in a way that leaves no closed body, even when moved by some microns.</summary>
    NotClosed,
}

/// <summary>Why there is no solid, for people.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Message">One plain sentence; the caller adds the place.</param>
public sealed record SolidFault(SolidFaultKind Kind, string Message)
{
    internal static SolidFault NothingLeft { get; } =
        new(SolidFaultKind.NothingLeft, "the cuts leave no wood");

    internal static SolidFault NotClosed { get; } =
        new(SolidFaultKind.NotClosed, "the cuts touch each other so closely that no closed body is left; move one of them");
}

/// <summary>A solid, or the reason why there is none.</summary>
public readonly record struct SolidResult
{
    private SolidResult(Solid? solid, SolidFault? fault)
    {
        OrNull = solid;
        Fault = fault;
    }

    /// <summary>The solid, or null when there is a fault.</summary>
    public Solid? OrNull { get; }

    /// <summary>The fault, or null when there is a solid.</summary>
    public SolidFault? Fault { get; }

    /// <summary>The solid. Throws when there is none: for callers that know.</summary>
    /// <exception cref="InvalidOperationException">There is a fault.</exception>
    public Solid Value => OrNull ?? throw new InvalidOperationException(Fault?.Message ?? "an empty result holds no solid");

    /// <summary>A result with a solid.</summary>
    public static implicit operator SolidResult(Solid solid) => FromSolid(solid);

    /// <summary>A result with a fault.</summary>
    public static implicit operator SolidResult(SolidFault fault) => FromSolidFault(fault);

    /// <summary>A result with a solid.</summary>
    public static SolidResult FromSolid(Solid solid) => new(solid, null);

    /// <summary>A result with a fault.</summary>
    public static SolidResult FromSolidFault(SolidFault fault) => new(null, fault);

    /// <summary>True with the solid, or false with the fault.</summary>
    public bool Try([NotNullWhen(true)] out Solid? solid, [NotNullWhen(false)] out SolidFault? fault)
    {
        solid = OrNull;
        fault = solid is null ? Fault ?? SolidFault.NothingLeft : null;
        return solid is not null;
    }

    /// <summary>The next step, when there is a solid; else the same fault.</summary>
    public SolidResult Then(Func<Solid, SolidResult> step) => OrNull is { } solid ? step(solid) : this;
}
