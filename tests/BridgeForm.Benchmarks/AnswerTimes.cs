using System.Diagnostics;
using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Materials;
using BridgeForm.Output.Gltf;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Benchmarks;

/// <summary>What an edit costs: warm in process, one thread, the span changed every time; and how soon a build can be stopped.</summary>
internal static class AnswerTimes
{
    private const int Runs = 200;
    private const int FewRuns = 20;
    private const int Cancels = 100;
    private const int Many = 2000;

    /// <summary>Prints medians of the second half of the runs, and latencies of cancels.</summary>
    public static void Print()
    {
        var sample = ProjectReader.Read(
            File.ReadAllText(Path.Combine("viewer-samples", "alder-dell", "project.yaml")), "project.yaml", RopeTable.Catalogue);
        Stages("sample", sample.Parameters!, Runs);
        Stages("long", LongBridges.Of(200), Runs);
        Stages("long", LongBridges.Of(Many), FewRuns);
        Cancel(LongBridges.Of(Many));
    }

    private static void Stages(string name, BridgeParameters start, int runs)
    {
        var bays = Bays(start);
        Line(name, bays, "to pieces", Median(start, runs, Pieces));
        Line(name, bays, "to model.glb", Median(start, runs, Glb));
        Line(
            name, bays, "the answer",
            Median(start, runs, p => Built(new Rebuild().TryAnswer(p, CancellationToken.None, out _, out var fault), fault)));
        Line(
            name, bays, "with stock and remedies",
            Median(start, runs, p => Built(new Rebuild().TryWhole(p, CancellationToken.None, out _, out var fault), fault)));
    }

    private static int Bays(BridgeParameters parameters) =>
        Bridge.TryShape(parameters, out var rope, out _) ? rope.Nodes.Length - 1 : throw new InvalidOperationException();

    private static int Pieces(BridgeParameters parameters) =>
        Bridge.TryShape(parameters, out var rope, out _)
        && PieceSet.TryOf(parameters, Members.Lay(BridgeLayout.Lay(parameters, rope)), out var pieces, out _)
            ? pieces.Length
            : throw new InvalidOperationException();

    private static int Glb(BridgeParameters parameters)
    {
        if (!Bridge.TryShape(parameters, out var rope, out _))
        {
            throw new InvalidOperationException();
        }

        var layout = BridgeLayout.Lay(parameters, rope);
        MemberGroup[] groups = [.. Members.Lay(layout)];
        var model = new BridgeModel
        {
            Parameters = parameters,
            Rope = rope,
            RopeLines = RopeRuns.Draw(parameters, rope),
            Frames = layout.Poses,
            Groups = [.. groups.Select(g => new GroupIds(g.Name, [.. g.Members.Select(m => m.Id)]))],
            Pieces = PieceSet.TryOf(parameters, groups, out var pieces, out _) ? pieces : throw new InvalidOperationException(),
            Hoisting = [],
            Marks = [],
            Cases = [],
            Checks = [],
        };
        using var stream = new MemoryStream();
        GltfWriter.Write(model, solid => solid.Triangulate(), stream);
        return (int)stream.Length;
    }

    private static int Built(bool isBuilt, BridgeFault? fault) => isBuilt ? 1 : throw new InvalidOperationException(fault?.Message);

    private static double Median(BridgeParameters start, int runs, Func<BridgeParameters, int> work)
    {
        var times = new List<double>();
        for (var i = 0; i < runs; i++)
        {
            // A sixteenth of a millimetre at a time: the number of bays stays.
            var parameters = start with { Site = start.Site with { Span = start.Site.Span - (i * 6.25e-5) } };
            var watch = Stopwatch.StartNew();
            work(parameters);
            times.Add(watch.Elapsed.TotalMilliseconds);
        }

        return Middle([.. times.Skip(runs / 2)], 0.5);
    }

    private static void Cancel(BridgeParameters parameters)
    {
        var random = new Random(1);
        var whole = Stopwatch.StartNew();
        Built(new Rebuild().TryWhole(parameters, CancellationToken.None, out _, out var fault), fault);
        var length = whole.Elapsed;
        var late = new List<double>();
        var worst = (Late: 0.0, At: TimeSpan.Zero, Done: "");
        for (var i = 0; i < Cancels; i++)
        {
            using var source = new CancellationTokenSource();
            var asked = length * random.NextDouble();
            var watch = Stopwatch.StartNew();
            var rebuild = new Rebuild();
            source.CancelAfter(asked);
            try
            {
                rebuild.TryWhole(parameters, source.Token, out _, out _);
            }
            catch (OperationCanceledException)
            {
                late.Add((watch.Elapsed - asked).TotalMilliseconds);
                worst = late[^1] > worst.Late ? (late[^1], asked, string.Join(", ", rebuild.Anew)) : worst;
            }
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"cancel at {Many} bays ({length.TotalMilliseconds:0} ms whole): {late.Count} of {Cancels} cancelled, median "
                + $"{Middle(late, 0.5):0.0} ms late, 95 of 100 within {Middle(late, 0.95):0.0} ms, at most {late.Max():0.0} ms, asked at "
                + $"{worst.At.TotalMilliseconds:0} ms with these done: {worst.Done}"));
    }

    private static double Middle(IReadOnlyCollection<double> times, double share) =>
        times.Order().ElementAt((int)(share * (times.Count - 1)));

    private static void Line(string name, int bays, string stage, double milliseconds) => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"{name,-8}{bays,6} bays  {stage,-26}{milliseconds,10:0.00} ms{1000 * milliseconds / bays,10:0} µs a bay"));
}
