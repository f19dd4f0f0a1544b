using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Stocking;

/// <summary>How the ropes hang when a stage of the assembly is done.</summary>
/// <param name="Stage">Number of the stage.</param>
/// <param name="Steepest">Slope of the steepest chord between two frames' places, rise over run, positive.</param>
/// <param name="Sag">At half the span below the line A–B, metres.</param>
public sealed record StageSlope(int Stage, double Steepest, double Sag)
{
    /// <summary>Largest tension of one rope, newtons.</summary>
    public required double Tension { get; init; }

    /// <summary>Force of one rope on support A, world axes, newtons.</summary>
    public required RopePoint ReactionA { get; init; }

    /// <summary>The same on support B.</summary>
    public required RopePoint ReactionB { get; init; }

    /// <summary>
    /// By how much the ends of two bays' boards come nearer over a frame that hangs than on the finished bridge, at the most, at the deck's
    /// surface, metres; 0 where heights are left out.
    /// </summary>
    public double BoardsNearer { get; init; }

    /// <summary>With the crew on it; null where the stage hangs no frame, or heights are left out.</summary>
    public CrewOnStage? Crew { get; init; }
}

/// <summary>The slope at the end of each stage: the crew walks on it, and it is steeper than the finished bridge.</summary>
public static class StageSlopes
{
    // Each stage is a load case over the whole bridge: on a very long one only so many are solved, evenly spread.
    private const int MostSolved = 120;

    /// <summary>
    /// Stages in order, at the reference temperature, without people; of a long bridge a part of them, the last always among
    /// them. A stage whose shape cannot be found is left out.
    /// </summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="design">Its ropes as drawn.</param>
    /// <param name="pieces">Its parts, for their weights.</param>
    /// <param name="groups">Frames and bays in which they are hung.</param>
    /// <param name="steps">In this order.</param>
    /// <param name="stretch">Share by which the ropes are longer than drawn; negative where they were set short for it.</param>
    /// <param name="standing">How high everything stands, for the crew on it; null to leave the crew out.</param>
    public static ImmutableArray<StageSlope> Find(
        BridgeParameters parameters, RopeShape design,
        ImmutableArray<Piece> pieces, ImmutableArray<GroupIds> groups, ImmutableArray<AssemblyStep> steps, double stretch = 0,
        StandingWeights? standing = null)
    {
        var count = steps.Length == 0 ? 0 : steps[^1].Stage;
        var stride = Math.Max(1, (count + MostSolved - 1) / MostSolved);
        var layout = BridgeLayout.Lay(parameters, design);
        var weights = new PartWeights(design, parameters.Frames.HardwareMass, pieces, groups)
        {
            Nets = [.. Enumerable.Range(1, layout.Bays).Select(bay => GuardNet.Mass(layout, bay))],
        };
        var (loads, moments) = (new double[design.Nodes.Length], new double[design.Nodes.Length]);
        var slopes = ImmutableArray.CreateBuilder<StageSlope>();
        foreach (var stage in steps.GroupBy(s => s.Stage))
        {
            foreach (var step in stage)
            {
                weights.Add(step, loads);
            }

            AddMoments(standing, stage.Select(s => (weights.Place(s.Where), s.Work)), moments);
            var rope = LoadCaseRequest.At(design, 0, Backstays.Of(parameters.Site), stretch) with { Loads = [.. loads] };
            if (((count - stage.Key) % stride == 0) && Solve(rope) is { } shape)
            {
                var (a, b) = shape.Reactions();
                slopes.Add(new StageSlope(stage.Key, RopeCurve.Steepest(shape.Nodes), shape.Sag)
                {
                    Tension = shape.LargestTension,
                    ReactionA = a,
                    ReactionB = b,
                    BoardsNearer = standing is null ? 0 : Nearer(design, shape, loads, standing.DeckHeights),
                    Crew = standing is null ? null : CrewOnStage.On(
                        parameters, rope with { Start = shape },
                        new PairLoads([.. loads.Select(l => 2 * l)], [.. loads.Select(_ => 0.0)], [.. moments]), standing.DeckHeights,
                        [.. stage.Where(s => s.Work == AssemblyWork.HangFrame).Select(s => weights.Place(s.Where))]),
                });
            }
        }

        return slopes.ToImmutable();
    }

    // Where the chords turn by so much more over a frame, points at a height over the ropes come nearer by angle × height.
    private static double Nearer(RopeShape design, RopeShape shape, double[] loads, ImmutableArray<double> heights) => Enumerable
        .Range(1, loads.Length - 2).Where(i => loads[i] > 0)
        .Select(i => (RopeCurve.Turn(shape.Nodes, i) - RopeCurve.Turn(design.Nodes, i)) * heights[i]).Append(0).Max();

    private static RopeShape? Solve(LoadCaseRequest rope) => LoadCaseSolver.TryFind(
        rope, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var shape, out _) ? shape : null;

    // A frame's at its node; of deck and guard there, half with either bay. Nothing stands on the ropes at the supports.
    private static void AddMoments(StandingWeights? standing, IEnumerable<(int Place, AssemblyWork Work)> done, double[] moments)
    {
        if (standing is null)
        {
            return;
        }

        var last = moments.Length - 1;
        foreach (var (place, work) in done)
        {
            if (work == AssemblyWork.HangFrame)
            {
                moments[place] += standing.FrameMoments[place];
            }
            else if (work is AssemblyWork.LayDeck or AssemblyWork.FixCaps)
            {
                foreach (var node in (int[])[place - last - 1, place - last])
                {
                    moments[node] += (work == AssemblyWork.FixCaps
                        ? standing.GuardMoments[node]
                        : standing.Moments[node] - standing.FrameMoments[node] - standing.GuardMoments[node]) / 2;
                }
            }
        }
    }

    /// <summary>Weights of parts on one rope, by the frame or bay that they belong to.</summary>
    private sealed class PartWeights
    {
        private readonly Dictionary<string, double> _masses;
        private readonly Dictionary<string, int> _places;
        private readonly int _last;
        private readonly double _hardware;

        public PartWeights(RopeShape design, double hardware, ImmutableArray<Piece> pieces, ImmutableArray<GroupIds> groups)
        {
            _masses = pieces
                .SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Mass)))
                .ToDictionary(p => p.Id, p => p.Mass, StringComparer.Ordinal);
            _last = design.Nodes.Length - 1;
            _places = Enumerable.Range(0, groups.Length)
                .ToDictionary(g => groups[g].Name, g => g, StringComparer.Ordinal);
            _hardware = hardware;
        }

        /// <summary>Number of a frame; of a bay, counted on after the last frame.</summary>
        public int Place(string where) => _places[where];

        /// <summary>Netting of each bay, both sides, kilograms.</summary>
        public required ImmutableArray<double> Nets { get; init; }

        /// <summary>Adds a step's parts: a frame's at its node, half of a bay's at each of its two; nothing at the supports.</summary>
        public void Add(AssemblyStep step, double[] loads)
        {
            var mass = step.Parts.Sum(id => _masses[id]);
            var place = _places[step.Where];
            if (place <= _last)
            {
                // A frame built on the ground loads the ropes from the step that hangs it; both lie in one stage.
                mass += step.Work == AssemblyWork.HangFrame ? _hardware : 0;
                Put(loads, place, mass);
                return;
            }

            // Netting is laced to the caps when they are on.
            mass += step.Work == AssemblyWork.FixCaps ? Nets[place - _last - 1] : 0;
            Put(loads, place - _last - 1, mass / 2);
            Put(loads, place - _last, mass / 2);
        }

        private void Put(double[] loads, int node, double mass)
        {
            if (node > 0 && node < _last)
            {
                loads[node] += mass * BridgeMasses.Gravity / 2;
            }
        }
    }
}
