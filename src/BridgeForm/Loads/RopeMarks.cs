using System.Collections.Immutable;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>Where the frames are marked on a rope that lies straight in the shop.</summary>
public static class RopeMarks
{
    /// <summary>
    /// Marks from support A's point, supports included, metres at the reference temperature. Pulled to the marking
    /// tension T the rope is longer by T/EA.
    /// </summary>
    /// <param name="design">The design state.</param>
    /// <param name="frameNames">One name a node.</param>
    /// <param name="markingTension">Newtons; 0 for unstressed.</param>
    public static ImmutableArray<RopeMark> Of(
        RopeShape design, ImmutableArray<string> frameNames, double markingTension)
    {
        if (frameNames.Length != design.Nodes.Length)
            throw new ArgumentException("There must be one name a node.", nameof(frameNames));
        ArgumentOutOfRangeException.ThrowIfNegative(markingTension);
        var stretched = 1 + (markingTension / design.AxialStiffness);
        var marks = ImmutableArray.CreateBuilder<RopeMark>(frameNames.Length);
        var along = default(CompensatedSum);
        for (var i = 0; i < frameNames.Length; i++)
        {
            marks.Add(new RopeMark(frameNames[i], along.Value, along.Value * stretched));
            if (i < design.Segments.Length)
                along = along.Plus(design.Segments[i].UnstressedLength);
        }

        return marks.MoveToImmutable();
    }
}
