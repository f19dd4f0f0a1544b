using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using MathNet.Numerics;

namespace BridgeForm.Loads;

/// <summary>Rows of the hoisting table, and why some are missing.</summary>
/// <param name="Rows">Rows with a solution, bare ropes first, coldest first.</param>
/// <param name="Failures">Rows without a solution.</param>
public sealed record HoistingTable(ImmutableArray<HoistingRow> Rows, ImmutableArray<HoistingFailure> Failures);

/// <summary>A row without a solution.</summary>
/// <param name="Stage">As in the table.</param>
/// <param name="Temperature">°C.</param>
/// <param name="Reason">Why, in a sentence.</param>
public sealed record HoistingFailure(string Stage, double Temperature, string Reason)
{
    /// <summary>All of it, in the units of a project.</summary>
    public string In(QuantityText words) => $"{Stage} at {words.Temperature(Temperature)}: {Reason}";
}

/// <summary>What a crew sets: sags of the ropes before the bridge is complete, by temperature.</summary>
public static class Hoisting
{
    // No thermometer on a rope tells this apart, °C; conversion from °F leaves 1e-14.
    private const double SameTemperature = 0.01;

    /// <summary>Stage of ropes before any frame is hung.</summary>
    public const string Bare = "bare";

    /// <summary>Stage with all frames hung and no deck.</summary>
    public const string Frames = "frames";

    /// <summary>What the rows of <see cref="Frames"/> are for.</summary>
    public const string FramesAlone = "Frames without deck are a state that the steps of erection.pdf never come to, since each bay is "
        + "decked as its frames hang: for whoever hangs all frames first, and for as_built.";

    /// <summary>
    /// Rows for the bare ropes at each temperature, lowest first, then for ropes with their frames. The unstressed length
    /// between the supports is that of the design state: each rope is set to its end marks.
    /// </summary>
    /// <param name="design">The design state.</param>
    /// <param name="frameLoads">Load of the frames alone at each node on one rope, newtons; null for bare ropes only.</param>
    /// <param name="reference">Reference temperature, °C; among the rows whether listed or not.</param>
    /// <param name="temperatures">Other temperatures, °C.</param>
    /// <param name="stays">Ropes behind the supports.</param>
    /// <param name="stretch">Share by which the unstressed rope is longer than marked; negative for a rope set short.</param>
    /// <param name="token">Asked before each row.</param>
    public static HoistingTable Solve(
        RopeShape design,
        ImmutableArray<double>? frameLoads,
        double reference,
        ImmutableArray<double> temperatures,
        Backstays stays,
        double stretch = 0,
        CancellationToken token = default)
    {
        var rows = ImmutableArray.CreateBuilder<HoistingRow>();
        var failures = ImmutableArray.CreateBuilder<HoistingFailure>();
        var all = Merged(reference, temperatures);
        var complete = all
            .Select(t => (Temperature: t, Rope: LoadCaseRequest.At(design, t - reference, stays, stretch)))
            .ToArray();
        foreach (var (temperature, rope) in complete)
        {
            Add(Bare, temperature, BareRope(rope));
        }

        if (frameLoads is { } loads)
        {
            foreach (var (temperature, rope) in complete)
            {
                Add(Frames, temperature, rope with { Loads = loads });
            }
        }

        return new HoistingTable(rows.ToImmutable(), failures.ToImmutable());

        void Add(string stage, double temperature, LoadCaseRequest request)
        {
            token.ThrowIfCancellationRequested();
            if (LoadCaseSolver.TryFind(
                request, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var shape, out var failure))
            {
                rows.Add(Row(stage, temperature, shape!));
            }
            else
            {
                failures.Add(new HoistingFailure(stage, temperature, failure!));
            }
        }
    }

    /// <summary>The rows of <see cref="Solve"/>; throws when one has no solution.</summary>
    /// <exception cref="NonConvergenceException">A row has no solution; the message says why.</exception>
    public static ImmutableArray<HoistingRow> Table(
        RopeShape design,
        ImmutableArray<double>? frameLoads,
        double reference,
        ImmutableArray<double> temperatures,
        Backstays stays)
    {
        var table = Solve(design, frameLoads, reference, temperatures, stays);
        return table.Failures.IsEmpty ? table.Rows : throw new NonConvergenceException(table.Failures[0].Reason);
    }

    // The same temperature written in °F and in °C is one row; what is as good as the reference temperature is that one.
    private static ImmutableArray<double> Merged(double reference, ImmutableArray<double> temperatures)
    {
        List<double> merged = [reference];
        foreach (var temperature in temperatures.Order())
        {
            if (merged.TrueForAll(m => Math.Abs(m - temperature) > SameTemperature))
            {
                merged.Add(temperature);
            }
        }

        return [.. merged.Order()];
    }

    private static LoadCaseRequest BareRope(LoadCaseRequest request) =>
        request with { UnstressedLengths = [request.UnstressedLengths.Sum()], Loads = [0, 0], Start = null };

    private static HoistingRow Row(string stage, double temperature, RopeShape shape)
    {
        var from = shape.Nodes[0];
        var slope = (shape.Nodes[^1].Y - from.Y) / (shape.Nodes[^1].X - from.X);
        var touched = shape.TouchedBy(slope);
        return new HoistingRow(stage, temperature, shape.Sag, shape.Horizontal)
        {
            Sight = from.Y + (slope * (touched.X - from.X)) - touched.Y,
            Lowest = shape.TouchedBy(0),
            LargestTension = shape.LargestTension,
        };
    }
}
