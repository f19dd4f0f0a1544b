using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Stocking;
using BridgeForm.Trials;

namespace BridgeForm;

/// <summary>Parameters → rope shape → frames → members → pieces → contacts and checks → model: the whole pipe.</summary>
public static class Bridge
{
    // Node loads and positions have settled when they move by less than this share of the span or of the total load: six
    // digits beyond what a builder can set.
    private const double ShapeAccuracy = 1e-11;
    private const int MaxIterations = 100;

    // Newtons a node, about a light frame: what counts is that every node has the same.
    private const double EvenLoad = 500;

    /// <summary>Builds the whole model, or says why it cannot be built.</summary>
    public static bool TryBuild(
        BridgeParameters parameters,
        [NotNullWhen(true)] out BridgeModel? model,
        [NotNullWhen(false)] out BridgeFault? fault)
    {
        model = null;
        if (!TryLayout(parameters, out var rope, out var layout, out fault))
        {
            return false;
        }

        // Ropes and pieces hang on the layout alone, and are worked out side by side.
        var shape = rope;
        var lines = RopeRuns.Of(parameters, shape);
        var masses = BridgeMasses.Of(layout);
        var working = Task.Run(() => RopeWork.Of(layout, shape, masses));
        if (!TryPieces(layout, out var pieces, out var groups, out fault))
        {
            Settle(working);
            return false;
        }

        // Contacts and the stock plan hang on the pieces as cut, the checks on ropes and contacts.
        var cut = pieces;
        var surveying = Task.Run(() => ContactSurveyor.Survey(layout, cut, lines));
        var planning = Task.Run(() => StockPlanner.Plan(cut, parameters, parameters.PriceList));
        var work = working.GetAwaiter().GetResult();
        var context = new CheckContext(parameters, layout, rope, surveying.GetAwaiter().GetResult(), masses, work);
        var own = AllChecks.Of(context);
        var stock = planning.GetAwaiter().GetResult();
        ImmutableArray<CheckResult> checks = [.. own, StockLengthCheck.Of(pieces, parameters)];
        model = new BridgeModel
        {
            Parameters = parameters,
            Rope = rope,
            RopeLines = lines,
            Frames = layout.Poses,
            Groups = groups,
            Pieces = pieces,
            Hoisting = work.Hoisting.Rows,
            Marks = work.Marks,
            Cases = work.Cases,
            Checks = checks,
            Ropework = work,
            Remedies = [.. Remedies.Of(parameters, checks, ShapeWithin), .. TimberRemedies.Of(context, checks, Bridge.ShapeWithin)],
            StockPlan = stock,
        };
        return true;
    }

    /// <summary>The shape and everything that lies on it, when every part of it is one.</summary>
    internal static bool TryLayout(
        BridgeParameters parameters,
        [NotNullWhen(true)] out RopeShape? rope,
        [NotNullWhen(true)] out BridgeLayout? layout,
        [NotNullWhen(false)] out BridgeFault? fault)
    {
        // Parts that turn over have no weight to find a shape with: then they are looked for on ropes under even loads.
        layout = TryShape(parameters, out rope, out fault) ? BridgeLayout.Of(parameters, rope) : OnEvenLoads(parameters);
        var misfits = layout is null ? [] : LayoutFit.Of(layout);
        fault = misfits.IsEmpty ? fault : BridgeFault.Of(misfits);
        return fault is null && rope is not null && layout is not null;
    }

    /// <summary>Shape of the ropes and weights of the members, found together.</summary>
    public static bool TryShape(
        BridgeParameters parameters, [NotNullWhen(true)] out RopeShape? rope, [NotNullWhen(false)] out BridgeFault? fault) =>
        TryShape(parameters, null, ShapeAccuracy, out rope, out fault);

    /// <summary>The same for a trial design, given up when it takes more than its effort.</summary>
    internal static bool TryShape(
        BridgeParameters parameters,
        Effort? effort,
        double accuracy,
        [NotNullWhen(true)] out RopeShape? rope,
        [NotNullWhen(false)] out BridgeFault? fault)
    {
        var request = Request(parameters) with
        {
            NodeLoads = nodes => Weighed(nodes, null).Loads,
            Stepped = Weighed,
        };
        fault = DesignState.TryFind(request, accuracy, MaxIterations, out rope, out var failure)
            ? null
            : new BridgeFault(BridgeFaultKind.NoShape, failure!);
        return fault is null && rope is not null;

        SteppedLoads Weighed(ImmutableArray<RopePoint> nodes, ImmutableArray<int>? steps)
        {
            var own = BridgeLayout.Of(parameters, nodes);
            if (effort is not null && !effort.TrySpend())
            {
                return SteppedLoads.GivenUp(nodes.Length, own.Steps.Counted);
            }

            var layout = steps is { } held ? own.With(held) : own;
            return new SteppedLoads(BridgeMasses.Of(layout).NodeLoads(), own.Steps.Counted);
        }
    }

    /// <summary>The shape of a trial design; null where it has none, or none within its effort.</summary>
    internal static RopeShape? ShapeWithin(BridgeParameters parameters, Effort effort, double? accuracy) =>
        TryShape(parameters, effort, accuracy ?? ShapeAccuracy, out var rope, out _) ? rope : null;

    private static BridgeLayout? OnEvenLoads(BridgeParameters parameters)
    {
        var request = Request(parameters) with { NodeLoads = nodes => [.. nodes.Select(_ => EvenLoad)] };
        return DesignState.TryFind(request, ShapeAccuracy, MaxIterations, out var rope, out _) ? BridgeLayout.Of(parameters, rope!) : null;
    }

    private static DesignRequest Request(BridgeParameters parameters) => new()
    {
        Span = parameters.Site.Span,
        Rise = parameters.Site.Rise,
        Sag = parameters.Ropes.Sag,
        Step = parameters.Frames.Step,
        Spacing = parameters.Frames.Spacing,
        WeightPerLength = parameters.Ropes.Rope.MassPerLength * BridgeMasses.Gravity,
        AxialStiffness = parameters.Ropes.Rope.AxialStiffness,
        NodeLoads = _ => [],
    };

    /// <summary>Waits for work that nobody needs any more, so that none outlives its bridge; the fault that stopped it goes first.</summary>
    private static void Settle(params Task[] tasks) =>
        Task.WhenAll(tasks).ContinueWith(all => all.Exception, TaskScheduler.Default).GetAwaiter().GetResult();

    private static bool TryPieces(
        BridgeLayout layout,
        out ImmutableArray<Piece> pieces,
        out ImmutableArray<GroupIds> groups,
        [NotNullWhen(false)] out BridgeFault? fault)
    {
        var names = ImmutableArray.CreateBuilder<GroupIds>((2 * layout.Bays) + 1);
        fault = PieceSet.TryOf(layout.Parameters, Noted(Members.Of(layout), names), out pieces, out var failure)
            ? null
            : new BridgeFault(BridgeFaultKind.DoesNotFit, failure!);
        groups = names.ToImmutable();
        return fault is null;
    }

    private static IEnumerable<MemberGroup> Noted(IEnumerable<MemberGroup> groups, ImmutableArray<GroupIds>.Builder names)
    {
        foreach (var group in groups)
        {
            names.Add(new GroupIds(group.Name, [.. group.Members.Select(m => m.Id)]));
            yield return group;
        }
    }
}
