using System.Collections.Immutable;
using BridgeForm.Project;

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
    /// <param name="stayA">Rope behind support A; over a sliding saddle it gives rope as its tension grows.</param>
    /// <param name="stayB">Rope behind support B, likewise.</param>
    public static ImmutableArray<HoistingRow> Table(
        RopeShape design,
        ImmutableArray<double>? frameLoads,
        double reference,
        ImmutableArray<double> temperatures,
        BackstayParameters? stayA = null,
        BackstayParameters? stayB = null)
    {
        double[] all = [.. temperatures.Append(reference).Distinct().Order()];
        var complete = all.Select(t => (Temperature: t, Rope: LoadCaseRequest.At(design, t - reference, stayA, stayB))).ToArray();
        var bare = complete.Select(c => Row(Bare, c.Temperature, BareRope(c.Rope)));
        var frames = frameLoads is { } loads
            ? complete.Select(c => Row(Frames, c.Temperature, c.Rope with { Loads = loads }))
            : [];
        return [.. bare, .. frames];
    }

    private static LoadCaseRequest BareRope(LoadCaseRequest request) =>
        request with { UnstressedLengths = [request.UnstressedLengths.Sum()], Loads = [0, 0], Start = null };

    private static HoistingRow Row(string stage, double temperature, LoadCaseRequest request)
    {
        var shape = LoadCaseSolver.Find(request);
        return new HoistingRow(stage, temperature, shape.Sag, shape.Horizontal);
    }
}
