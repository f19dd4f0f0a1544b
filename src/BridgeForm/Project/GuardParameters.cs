using System.Collections.Immutable;
using BridgeForm.Materials;

namespace BridgeForm.Project;

/// <summary>Rails and cap.</summary>
public sealed record GuardParameters
{
    /// <summary>Section of a rail.</summary>
    public required Section Rail { get; init; }

    /// <summary>Stock of the rails.</summary>
    public required string RailStock { get; init; }

    /// <summary>Number of rails a side with equal gaps; ignored when <see cref="RailHeights"/> is not empty.</summary>
    public required int RailCount { get; init; }

    /// <summary>Heights of the rails' centre lines, up along the post from the base's top, metres; empty for equal gaps.</summary>
    public required ImmutableArray<double> RailHeights { get; init; }

    /// <summary>Section of the cap, lying flat.</summary>
    public required Section Cap { get; init; }

    /// <summary>Stock of the cap.</summary>
    public required string CapStock { get; init; }
}
