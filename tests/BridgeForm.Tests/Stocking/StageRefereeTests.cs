using System.Text.Json;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Tests.Output.Referees;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.Stocking;

/// <summary>
/// An independent solution of every stage of building: total potential energy minimised by scipy's general optimiser
/// (tests/referees/rope_energy.py), with weights put together here from the pieces.
/// </summary>
[Trait("Category", "Referee")]
public sealed class StageRefereeTests
{
    private const double Gravity = 9.80665;

    // Of a bay: what hangs nearly bare sags between its frames.
    private const int Bars = 8;

    private static readonly string[] s_bridges =
    [
        Short("span: 18 ft", "one-end"),
        Short("span: 18 ft, rise: 1 ft", "both-ends"),
    ];

    private static string Short(string span, string order) => Bridges.Garden.Replace("span: 30 ft", span, StringComparison.Ordinal)
        .Replace("spacing: 3 ft", "spacing: 38 in", StringComparison.Ordinal) + $"\nerection: {order}\n";

    [Fact]
    public void Each_stage_hangs_as_the_least_energy_has_it()
    {
        var stages = s_bridges.Select(b => Bridges.Build(Bridges.Read(b))).SelectMany(Asked).ToList();
        Assert.True(stages.Count > 6);
        var asked = stages.Select(s => new
        {
            span = s.Rope.Nodes[^1].X,
            rise = s.Rope.Nodes[^1].Y,
            lengths = s.Rope.Segments.Select(p => p.UnstressedLength),
            loads = s.Loads,
            weight = s.Rope.WeightPerLength,
            stiffness = s.Rope.AxialStiffness,
            bars = Bars,
            all = true,
        });
        Referee.OnFile(JsonSerializer.SerializeToUtf8Bytes(asked), "stages.json", path =>
        {
            var answers = JsonDocument.Parse(Referee.Scipy("rope_energy.py", path)).RootElement.EnumerateArray().ToArray();
            Assert.Equal(stages.Count, answers.Length);
            foreach (var (stage, answer) in stages.Zip(answers))
            {
                var points = answer.EnumerateArray().Select(p => new RopePoint(p[0].GetDouble(), p[1].GetDouble())).ToArray();
                var nodes = points.Where((_, i) => i % Bars == 0).ToArray();
                if (stage.Sag is { } sag)
                {
                    Assert.Equal((points[^1].Y / 2) - At(points, points[^1].X / 2), sag, 1e-4);
                }

                Assert.Equal(
                    nodes.Zip(nodes.Skip(1), (a, b) => Math.Abs((b.Y - a.Y) / (b.X - a.X))).Max(), stage.Steepest, 1e-4);
                // Each bar pulls by its stretch; that at an end, whose own half weight hangs outside it.
                var lengths = stage.Rope.Segments.SelectMany(p => Enumerable.Repeat(p.UnstressedLength / Bars, Bars)).ToArray();
                var pulls = points.Zip(points.Skip(1), (a, b) => RopeSamples.Distance(a, b))
                    .Zip(lengths, (chord, length) => stage.Rope.AxialStiffness * ((chord / length) - 1));
                Assert.Equal(pulls.Max(), stage.Tension, 0.01 * stage.Tension);
            }
        });
    }

    private static double At(RopePoint[] points, double x)
    {
        var after = Array.FindIndex(points, p => p.X > x);
        var (a, b) = (points[after - 1], points[after]);
        return a.Y + ((x - a.X) / (b.X - a.X) * (b.Y - a.Y));
    }

    private sealed record Stage(RopeShape Rope, double[] Loads, double? Sag, double Steepest, double Tension);

    private static IEnumerable<Stage> Asked(BridgeModel model)
    {
        var masses = model.Pieces.SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Mass)))
            .ToDictionary(p => p.Id, p => p.Mass, StringComparer.Ordinal);
        var loads = new double[model.Frames.Length];
        var told = model.Stages().ToDictionary(s => s.Stage);
        foreach (var stage in model.Assembly().GroupBy(s => s.Stage))
        {
            foreach (var step in stage)
            {
                var mass = step.Parts.Sum(p => masses[p])
                    + (step.Work == AssemblyWork.HangFrame ? model.Parameters.Frames.HardwareMass : 0);
                var number = int.Parse(step.Where[1..], System.Globalization.CultureInfo.InvariantCulture);
                int[] nodes = step.Where[0] == 'F' ? [number] : [number - 1, number];
                foreach (var node in nodes.Where(n => n > 0 && n < loads.Length - 1))
                {
                    loads[node] += mass / nodes.Length * Gravity / 2;
                }
            }

            var state = told[stage.Key];
            yield return new Stage(model.Rope, [.. loads], state.Sag, state.Steepest, state.Tension);
            // From one end the crew stands at the one frame of the stage: 500 lbf (2224.1 N), half on either rope.
            if (state.Crew is { } crew && model.Parameters.Erection == ErectionOrder.OneEnd)
            {
                double[] with = [.. loads.Select((l, i) => l + (i == crew.Frames.Single() ? 500 * 4.4482216 / 2 : 0))];
                yield return new Stage(model.Rope, with, null, crew.Steepest!.Value, crew.Tension!.Value);
            }
        }
    }
}
