using System.Collections.Immutable;

namespace BridgeForm.Ropes;

/// <summary>What a crew sets: sags of the ropes before the bridge is complete, by temperature.</summary>
public static class Hoisting
{
    /// <summary>Stage of ropes before any frame is hung.</summary>
    public const string Bare = "bare";

    /// <summary>Stage with all frames hung and no deck.</summary>
    public const string Frames = "frames";

    /// <summary>
    /// Rows for the bare ropes at each temperature, lowest first, then for ropes with their frames. The unstressed length
    /// between the supports is that of the design state: each rope is set to its end marks.
    /// </summary>
    /// <param name="design">The design state.</param>
    /// <param name="frameLoads">Load of the frames alone at each node on one rope, newtons; null for bare ropes only.</param>
    /// <param name="reference">Reference temperature, °C; among the rows whether listed or not.</param>
    /// <param name="temperatures">Other temperatures, °C.</param>
    public static ImmutableArray<HoistingRow> Table(
        RopeShape design, ImmutableArray<double>? frameLoads, double reference, ImmutableArray<double> temperatures)
    {
        double[] all = [.. temperatures.Append(reference).Distinct().Order()];
        var bare = all.Select(t => Row(Bare, t, BareRope(design, t - reference)));
        var frames = frameLoads is { } loads
            ? all.Select(t => Row(Frames, t, LoadCaseRequest.At(design, t - reference) with { Loads = loads }))
            : [];
        return [.. bare, .. frames];
    }

    private static LoadCaseRequest BareRope(RopeShape design, double degreesAbove)
    {
        var request = LoadCaseRequest.At(design, degreesAbove);
        return request with { UnstressedLengths = [request.UnstressedLengths.Sum()], Loads = [0, 0], Start = null };
    }

    private static HoistingRow Row(string stage, double temperature, LoadCaseRequest request)
    {
        var shape = LoadCaseSolver.Find(request);
        return new HoistingRow(stage, temperature, shape.Sag, shape.Horizontal);
    }
}
