using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Ropes.Pairs;

/// <summary>Two ropes under frames that stand on both.</summary>
public sealed record PairShape
{
    /// <summary>The left rope (negative z). Where the pair rolls over, as it hangs with the frames held upright.</summary>
    public required RopeShape Left { get; init; }

    /// <summary>The right rope; the same object as the left one where both carry alike.</summary>
    public required RopeShape Right { get; init; }

    /// <summary>
    /// tan θ of each frame, supports included, positive where the left rope hangs lower: the difference of heights over the
    /// spacing. Where the pair rolls over, the first-order ones.
    /// </summary>
    public required ImmutableArray<double> Tilts { get; init; }

    /// <summary>The same of first order: each rope by itself, the lever h·tan θ of the weights left out.</summary>
    public required ImmutableArray<double> FirstOrderTilts { get; init; }

    /// <summary>No equilibrium was found in which the frames stay upright: the section turns over.</summary>
    public required bool RollsOver { get; init; }

    /// <summary>The tilt of the frame that tilts most, radians, never negative.</summary>
    public static double Largest(ImmutableArray<double> tilts)
    {
        var largest = 0.0;
        foreach (var tilt in tilts)
        {
            largest = Math.Max(largest, Math.Abs(tilt));
        }

        return Elementary.Atan(largest);
    }
}
