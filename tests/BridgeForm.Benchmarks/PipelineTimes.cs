using System.Diagnostics;
using System.Globalization;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Output;
using BridgeForm.Output.Dxf;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Ifc;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.Report;
using BridgeForm.Output.StepSolids;
using BridgeForm.Output.Tables;
using BridgeForm.Output.Usd;
using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Benchmarks;

/// <summary>Times of the whole pipe, stage by stage, warm in process: median of several runs.</summary>
internal static class PipelineTimes
{
    /// <summary>Prints times for one or more sizes.</summary>
    public static void Print(IEnumerable<int> sizes, int runs)
    {
        foreach (var bays in sizes)
        {
            var parameters = LongBridges.Of(bays);
            var stages = Enumerable.Range(0, runs + 1).Select(_ => Run(parameters)).Skip(1).ToArray();
            foreach (var stage in stages[0].Keys)
            {
                var times = stages.Select(s => s[stage]).Order().ToArray();
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture, $"{bays,7} bays  {stage,-28}{times[times.Length / 2],10:0.0} ms"));
            }
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"peak memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB"));
    }

    private static Dictionary<string, double> Run(BridgeParameters parameters)
    {
        var times = new Dictionary<string, double>(StringComparer.Ordinal);
        var all = Stopwatch.StartNew();
        var (rope, layout) = Timed(times, "shape and weights", () => Bridge.TryShape(parameters, out var shape, out _)
            ? (shape, BridgeLayout.Lay(parameters, shape))
            : throw new InvalidOperationException());
        var masses = BridgeMasses.Weigh(layout);
        Timed(times, "rope work, load cases included", () => RopeWork.Work(layout, rope, masses).Cases.Length);
        var cut = Timed(times, "members to pieces", () =>
            PieceSet.TryOf(
                parameters, Members.Lay(layout), out var pieces, out var failure) ? pieces : throw new InvalidOperationException(failure));
        times["parameters to pieces"] = all.Elapsed.TotalMilliseconds;
        Timed(times, "contacts", () => ContactSweep.Sweep(layout, cut, RopeRuns.Draw(parameters, rope)).Pairs);
        var model = Timed(times, "whole model with checks", () =>
            Bridge.TryBuild(parameters, out var built, out var fault) ? built : throw new InvalidOperationException(fault.Message));
        Timed(times, "audit", () => model.Pieces.Sum(p => p.Solid.Audit().Length));
        Timed(times, "model.glb", () => Length(s => GltfWriter.Write(model, solid => solid.Triangulate(), s)));
        Timed(times, "model.step", () => Length(s => StepWriter.Write(model, s)));
        Timed(times, "model.ifc", () => Length(s => IfcWriter.Write(model, s)));
        Timed(times, "model.usdz", () => Length(s => UsdWriter.Write(model, s)));
        var units = DisplayUnits.For(parameters.Units);
        Timed(
            times, "profiles", () => model.Pieces.Sum(p => Length(s => DxfWriter.Write(ProfileSheet.Draw(p, units), parameters.Units, s))));
        Timed(times, "tables", () => CutList.Csv(model, units).Length + BridgeForm.Output.Tables.RopeMarkTable.Csv(model, units).Length);
        Timed(times, "report", () => Length(s => ReportWriter.Write(model, () => [], s)));
        times["everything after parameters"] =
            all.Elapsed.TotalMilliseconds - times["parameters to pieces"];
        return times;
    }

    private static long Length(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.Length;
    }

    private static T Timed<T>(Dictionary<string, double> times, string stage, Func<T> work)
    {
        var watch = Stopwatch.StartNew();
        var result = work();
        times[stage] = watch.Elapsed.TotalMilliseconds;
        return result;
    }
}
