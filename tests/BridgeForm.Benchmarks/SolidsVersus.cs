using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using BenchmarkDotNet.Attributes;
using BridgeForm.Solids;

namespace BridgeForm.Benchmarks;

/// <summary>
/// A base trimmed by two planes with two channels taken out: ours against manifold-3d (tests/referees/manifold-bench.mjs),
/// each warm in its own process, with the mesh read back.
/// </summary>
[MemoryDiagnoser]
public class SolidsVersus
{
    private const int WarmUp = 20_000;
    private const int Runs = 20_000;

    private static readonly Solid s_blank = Solid.Box(new Vector3d(-0.8, -0.0445, -0.0445), new Vector3d(0.8, 0.0445, 0.0445));
    private static readonly Plane s_near = End(-1);
    private static readonly Plane s_far = End(1);
    private static readonly ConvexCutter s_left = Channel(-0.56);
    private static readonly ConvexCutter s_right = Channel(0.56);

    [Benchmark]
    public int TrimTwiceAndSubtractTwice() => s_blank
        .Cut(s_near, FaceOrigin.Cut).Value
        .Cut(s_far, FaceOrigin.Cut).Value
        .Subtract(s_left).Value
        .Subtract(s_right).Value
        .Triangulate().TriangleCount;

    [Benchmark]
    public Solid PlainMember() => StockSolid.Build(s_plain).Value;

    [Benchmark]
    public Solid BaseWithEverything() => StockSolid.Build(s_base).Value;

    /// <summary>Prints both medians and how many times faster ours is.</summary>
    public static int RunQuick()
    {
        var bench = new SolidsVersus();
        var ours = Median(bench.TrimTwiceAndSubtractTwice);
        var plain = Median(() => bench.PlainMember().Vertices.Length);
        var full = Median(() => bench.BaseWithEverything().Vertices.Length);
        var theirs = Theirs();
        Print($"ours          {ours,8:f1} us, {bench.TrimTwiceAndSubtractTwice()} triangles");
        Print($"manifold-3d   {theirs.Median,8:f1} us, {theirs.Triangles} triangles");
        Print($"ratio         {theirs.Median / ours,8:f1}");
        Print($"plain member  {plain,8:f1} us");
        Print($"base with two sloped channels and four blind holes {full,8:f1} us");
        return 0;
    }

    private static readonly CutStock s_plain = new(0.089, 0.038, End(-1), End(1));

    private static readonly CutStock s_base = new(0.089, 0.089, End(-1), End(1))
    {
        Channels =
        [
            new Channel(StockFace.MinusY, -0.56, 0.016, 0.0175, 0.1),
            new Channel(StockFace.MinusY, 0.56, 0.016, 0.0175, 0.1),
        ],
        Holes =
        [
            new Hole(StockFace.MinusY, -0.59, 0, 0.00635, 0.05),
            new Hole(StockFace.MinusY, -0.53, 0, 0.00635, 0.05),
            new Hole(StockFace.MinusY, 0.53, 0, 0.00635, 0.05),
            new Hole(StockFace.MinusY, 0.59, 0, 0.00635, 0.05),
        ],
    };

    private static Plane End(int sign)
    {
        var (sin, cos) = Math.SinCos(8 * Math.PI / 180);
        return new Plane(new Vector3d(sign * cos, -sin, 0), 0.711);
    }

    private static ConvexCutter Channel(double x) =>
        ConvexCutter.Box(new Vector3d(x - 0.008, -0.0645, -0.1), new Vector3d(x + 0.008, -0.0245, 0.1), FaceOrigin.Channel);

    private static double Median(Func<int> work)
    {
        for (var i = 0; i < WarmUp; i++)
        {
            work();
        }

        var times = new double[Runs];
        for (var i = 0; i < Runs; i++)
        {
            var start = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMicroseconds;
        }

        Array.Sort(times);
        return times[Runs / 2];
    }

    private static (double Median, int Triangles) Theirs()
    {
        using var node = Process.Start(
            new ProcessStartInfo("node", ["tests/referees/manifold-bench.mjs"]) { RedirectStandardOutput = true, UseShellExecute = false })
            ?? throw new InvalidOperationException("node did not start.");
        var text = node.StandardOutput.ReadToEnd();
        node.WaitForExit();
        if (node.ExitCode != 0)
        {
            throw new InvalidOperationException("Run from the checkout's root, after: npm ci --prefix tests/referees");
        }

        using var answer = JsonDocument.Parse(text);
        return (answer.RootElement.GetProperty("median_us").GetDouble(), answer.RootElement.GetProperty("triangles").GetInt32());
    }

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
