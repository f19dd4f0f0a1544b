using System.Diagnostics;
using System.Globalization;
using BridgeForm.Output;
using BridgeForm.Output.Dxf;
using BridgeForm.Output.Router;
using BridgeForm.Output.Tables;
using BridgeForm.Project;
using BridgeForm.Stocking;

namespace BridgeForm.Benchmarks;

/// <summary>Times of the stock plan and of what is written from it, warm in process: median of several runs.</summary>
internal static class StockPlanTimes
{
    /// <summary>Prints times for one or more sizes, in both stances.</summary>
    public static void Print(IEnumerable<int> sizes, int runs)
    {
        foreach (var bays in sizes)
        {
            var square = LongBridges.Of(bays);
            Print(square, runs, $"{bays} bays, square");
            Print(square with { Frames = square.Frames with { Stance = Stance.Plumb } }, runs, $"{bays} bays, plumb");
        }
    }

    private static void Print(BridgeParameters parameters, int runs, string name)
    {
        var model = Bridge.TryBuild(parameters, out var built, out var fault) ? built : throw new InvalidOperationException(fault.Message);
        var plan = StockPlanner.Plan(model.Pieces, parameters, null);
        var pieces = model.Pieces.ToDictionary(p => p.Mark, StringComparer.Ordinal);
        var gap = plan.Jobs.Max(j => j.Gap);
        Line(name, $"{plan.Boards.Sum(b => b.Pieces.Length)} parts, {model.Pieces.Length} pieces, {plan.BoardCount} boards, widest gap "
            + $"{gap * 100:0.00} %", null);
        Line(name, "stock plan", Median(runs, () => StockPlanner.Plan(model.Pieces, parameters, null).BoardCount));
        Line(name, "router and board files", Median(runs, () => plan.Boards
            .Select(b => RouterBoard.Lay(b, pieces, parameters.Shop).Sheet(parameters.Units))
            .Concat(model.Pieces.Select(p => RouterSheet.Draw(p, parameters.Shop, parameters.Units)))
            .OfType<BridgeForm.Output.Drawing.Sheet>()
            .Sum(sheet =>
            {
                using var stream = new MemoryStream();
                DxfWriter.Write(sheet, parameters.Units, stream);
                return stream.Length;
            })));
        Line(name, "shop tables", Median(runs, () =>
            StockPlanTable.Csv(model, DisplayUnits.For(parameters.Units)).Length
            + TreatmentTable.Csv(model, DisplayUnits.For(parameters.Units)).Length
            + HardwareTable.Csv(model).Length
            + AssemblyTable.Csv(model).Length));
    }

    private static double Median(int runs, Func<long> work)
    {
        var times = new List<double>();
        for (var run = 0; run <= runs; run++)
        {
            var watch = Stopwatch.StartNew();
            _ = work();
            times.Add(watch.Elapsed.TotalMilliseconds);
        }

        times.RemoveAt(0);
        return times.Order().ElementAt(runs / 2);
    }

    private static void Line(string name, string what, double? milliseconds) => Console.WriteLine(
        milliseconds is { } ms
            ? string.Create(CultureInfo.InvariantCulture, $"{name,-20}{what,-28}{ms,10:0.0} ms")
            : $"{name,-20}{what}");
}
