using System.Collections.Immutable;
using BridgeForm.Project;
using MathNet.Numerics;

namespace BridgeForm.Ropes;

/// <summary>Rows of the hoisting table, and why some are missing.</summary>
/// <param name="Rows">Rows with a solution, bare ropes first, coldest first.</param>
/// <param name="Failures">One sentence for each row without a solution.</param>
public sealed record HoistingTable(ImmutableArray<HoistingRow> Rows, ImmutableArray<string> Failures);

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
    /// <param name="stretch">Share by which the unstressed rope is longer than marked; negative for a rope set short.</param>
    public static HoistingTable Solve(
        RopeShape design,
        ImmutableArray<double>? frameLoads,
        double reference,
        ImmutableArray<double> temperatures,
        BackstayParameters? stayA = null,
        BackstayParameters? stayB = null,
        double stretch = 0)
    {
        var rows = ImmutableArray.CreateBuilder<HoistingRow>();
        var failures = ImmutableArray.CreateBuilder<string>();
        double[] all = [.. temperatures.Append(reference).Distinct().Order()];
        var complete = all
            .Select(t => (Temperature: t, Rope: LoadCaseRequest.At(design, t - reference, stayA, stayB, stretch)))
            .ToArray();
        foreach (var (temperature, rope) in complete)
            Add(Bare, temperature, BareRope(rope));
        if (frameLoads is { } loads)
            foreach (var (temperature, rope) in complete)
                Add(Frames, temperature, rope with { Loads = loads });
        return new HoistingTable(rows.ToImmutable(), failures.ToImmutable());

        void Add(string stage, double temperature, LoadCaseRequest request)
        {
            if (LoadCaseSolver.TryFind(
                request, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var shape, out var failure))
                rows.Add(Row(stage, temperature, shape!));
            else
                failures.Add(FormattableString.Invariant($"{stage} at {temperature:0.#} °C: {failure}"));
        }
    }

    /// <summary>The rows of <see cref="Solve"/>; throws when one has no solution.</summary>
    /// <exception cref="NonConvergenceException">A row has no solution; the message says why.</exception>
    public static ImmutableArray<HoistingRow> Table(
        RopeShape design,
        ImmutableArray<double>? frameLoads,
        double reference,
        ImmutableArray<double> temperatures,
        BackstayParameters? stayA = null,
        BackstayParameters? stayB = null)
    {
        var table = Solve(design, frameLoads, reference, temperatures, stayA, stayB);
        return table.Failures.IsEmpty ? table.Rows : throw new NonConvergenceException(table.Failures[0]);
    }

    private static LoadCaseRequest BareRope(LoadCaseRequest request) =>
        request with { UnstressedLengths = [request.UnstressedLengths.Sum()], Loads = [0, 0], Start = null };

    private static HoistingRow Row(string stage, double temperature, RopeShape shape)
    {
        var slope = shape.Nodes[^1].Y / shape.Nodes[^1].X;
        var touched = shape.TouchedBy(slope);
        return new HoistingRow(stage, temperature, shape.Sag, shape.Horizontal)
        {
            Sight = (slope * touched.X) - touched.Y,
            Lowest = shape.TouchedBy(0),
            MaxTension = shape.MaxTension,
        };
    }
}
