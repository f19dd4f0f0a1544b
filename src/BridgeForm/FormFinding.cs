using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Ropes;
using BridgeForm.Trials;

namespace BridgeForm;

/// <summary>Form finding: the shape of the ropes and the weights of what stands on them, found together.</summary>
internal static class FormFinding
{
    // Node loads and positions have settled when they move by less than this share of the span or of the total load: six
    // digits beyond what a builder can set.
    private const double Accuracy = 1e-11;
    private const int MaxIterations = 100;

    // Newtons a node, about a light frame: what counts is that every node has the same.
    private const double EvenLoad = 500;

    /// <summary>The shape, or why there is none.</summary>
    public static RopeShape? Find(BridgeParameters parameters, CancellationToken token, out BridgeFault? fault) =>
        Find(parameters, null, Accuracy, Sampling.All, token, out fault);

    /// <summary>The shape of a trial design; null where it has none, or none within its effort.</summary>
    public static RopeShape? Within(BridgeParameters parameters, Effort effort, bool roughly) => roughly
        ? Find(parameters, effort, TrialDesign.RoughAccuracy, TrialDesign.Rough, effort.Token, out _)
        : Find(parameters, effort, Accuracy, Sampling.All, effort.Token, out _);

    /// <summary>Frames on ropes under even loads: where parts turn over they have no weight to find a shape with.</summary>
    public static BridgeLayout? OnEvenLoads(BridgeParameters parameters)
    {
        var request = Request(parameters) with { NodeLoads = nodes => [.. nodes.Select(_ => EvenLoad)] };
        return DesignState.TryFind(request, Accuracy, MaxIterations, out var rope, out _) ? BridgeLayout.Lay(parameters, rope!) : null;
    }

    private static RopeShape? Find(
        BridgeParameters parameters, Effort? effort, double accuracy, Sampling sampling, CancellationToken token, out BridgeFault? fault)
    {
        var request = Request(parameters) with
        {
            NodeLoads = nodes => Weighed(nodes, null).Loads,
            Stepped = Weighed,
        };
        var isFound = DesignState.TryFind(request, accuracy, MaxIterations, out var rope, out var failure);
        fault = isFound ? null : new BridgeFault(BridgeFaultKind.NoShape, FaultCode.NoShape.Id(), failure!);
        return isFound ? rope : null;

        SteppedLoads Weighed(ImmutableArray<RopePoint> nodes, ImmutableArray<int>? steps)
        {
            token.ThrowIfCancellationRequested();
            var own = BridgeLayout.Lay(parameters, nodes);
            if (effort is not null && !effort.TrySpend())
            {
                return SteppedLoads.GivenUp(nodes.Length, own.Steps.Counted);
            }

            var layout = steps is { } held ? own.With(held) : own;
            return new SteppedLoads(BridgeMasses.Weigh(layout, sampling, token).NodeLoads(), own.Steps.Counted);
        }
    }

    private static DesignRequest Request(BridgeParameters parameters) => new()
    {
        Span = parameters.Site.Span,
        Rise = parameters.Site.Rise,
        Sag = parameters.Ropes.Sag,
        Step = parameters.Frames.Step,
        Spacing = parameters.Frames.Spacing,
        Bays = parameters.Frames.Bays,
        WeightPerLength = parameters.Ropes.Rope.MassPerLength * BridgeMasses.Gravity,
        AxialStiffness = parameters.Ropes.Rope.AxialStiffness,
        NodeLoads = _ => [],
    };
}
