using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Ropes;
using BridgeForm.Stocking;
using BridgeForm.Trials;

namespace BridgeForm;

/// <summary>
/// The pipe in stages, each worked out anew only where what it looks at has changed since the last time. Not for several
/// threads at once; what it returns is immutable and stays as it is.
/// </summary>
/// <param name="run">How works that do not hang on each other are run; null for one after another.</param>
public sealed class Rebuild(SideBySide? run = null)
{
    private readonly SideBySide _run = run ?? OneAfterAnother;
    private readonly StageResult<(RopeShape? Rope, BridgeFault? Fault)> _shape = new(Stage.Shape);
    private readonly StageResult<(BridgeLayout? Layout, BridgeFault? Fault)> _layout = new(Stage.Layout);
    private readonly StageResult<ImmutableArray<MemberGroup>> _members = new(Stage.Members);
    private readonly StageResult<(ImmutableArray<Piece> Pieces, BridgeFault? Fault)> _pieces = new(Stage.Pieces);
    private readonly StageResult<(BridgeMasses Masses, RopeWork Work)> _ropework = new(Stage.Ropework);
    private readonly StageResult<WindWork> _wind = new(Stage.Wind);
    private readonly StageResult<ContactFindings> _contacts = new(Stage.Contacts);
    private readonly StageResult<ImmutableArray<CheckResult>> _checks = new(Stage.Checks);
    private readonly StageResult<StockPlan> _stock = new(Stage.Stock);
    private readonly StageResult<ImmutableArray<Remedy>> _remedies = new(Stage.Remedies);
    private BridgeParameters? _before;

    /// <summary>Stages that the last call worked out anew, in their order.</summary>
    public ImmutableArray<Stage> Anew => [.. All.Where(s => s.IsAnew).Select(s => s.Stage)];

    private StageResult[] All => new StageResult[]
    {
        _shape, _layout, _members, _pieces, _ropework, _wind, _contacts, _checks, _stock, _remedies,
    };

    /// <summary>The bridge without stock plan and remedies, or why it cannot be built.</summary>
    /// <exception cref="OperationCanceledException">The token asked for it. What is finished is kept for the next call.</exception>
    public bool TryAnswer(
        BridgeParameters parameters,
        CancellationToken token,
        [NotNullWhen(true)] out BridgeModel? model,
        [NotNullWhen(false)] out BridgeFault? fault) => TryBuild(parameters, (false, false), token, out model, out fault);

    /// <summary>The bridge with remedies, without stock plan, or why it cannot be built.</summary>
    /// <exception cref="OperationCanceledException">The token asked for it. What is finished is kept for the next call.</exception>
    public bool TryVerdict(
        BridgeParameters parameters,
        CancellationToken token,
        [NotNullWhen(true)] out BridgeModel? model,
        [NotNullWhen(false)] out BridgeFault? fault) => TryBuild(parameters, (false, true), token, out model, out fault);

    /// <summary>The whole bridge, or why it cannot be built.</summary>
    /// <exception cref="OperationCanceledException">The token asked for it. What is finished is kept for the next call.</exception>
    public bool TryWhole(
        BridgeParameters parameters,
        CancellationToken token,
        [NotNullWhen(true)] out BridgeModel? model,
        [NotNullWhen(false)] out BridgeFault? fault) => TryBuild(parameters, (true, true), token, out model, out fault);

    /// <summary>
    /// The answer in steps, for who must look up between them on one thread: what <see cref="TryAnswer"/> makes, no step longer than
    /// one stage and the checks group by group. Who stops asking loses nothing that is finished.
    /// </summary>
    /// <param name="asked">What the builder asked for.</param>
    /// <param name="token">Asked within each step.</param>
    /// <exception cref="OperationCanceledException">The token asked for it.</exception>
    public IEnumerable<BuildStep> Steps(BridgeParameters asked, CancellationToken token = default)
    {
        var parameters = Begin(asked);
        var found = Layout(parameters, token);
        yield return new(Stage.Layout, null, found.Fault);
        if (found.Layout is not { } layout)
        {
            yield break;
        }

        var rope = _shape.Value.Rope!;
        var lines = RopeRuns.Draw(parameters, rope);
        var (pieces, fault) = Cut(layout, token);
        yield return new(Stage.Pieces, fault is null ? Picture(layout, rope, lines) : null, fault);
        if (fault is not null)
        {
            yield break;
        }

        _contacts.For(parameters, () => ContactSweep.Sweep(layout, pieces, lines, token));
        yield return new(Stage.Contacts, null, null);
        _ropework.For(parameters, () => Ropework(layout, rope, token));
        yield return new(Stage.Ropework, null, null);
        _wind.For(parameters, () => Blown(layout, rope, token));
        yield return new(Stage.Wind, null, null);
        var context = Context(parameters, layout, rope);
        if (!_checks.Holds(parameters))
        {
            var results = ImmutableArray.CreateBuilder<CheckResult>();
            foreach (var work in AllChecks.Works(context, token))
            {
                yield return new(Stage.Checks, null, null);
                results.AddRange(work());
            }

            _checks.For(parameters, results.ToImmutable);
        }

        yield return new(Stage.Checks, Model(context, lines), null);
    }

    private static void OneAfterAnother(Action[] works)
    {
        foreach (var work in works)
        {
            work();
        }
    }

    private bool TryBuild(
        BridgeParameters asked,
        (bool Stock, bool Remedies) with,
        CancellationToken token,
        [NotNullWhen(true)] out BridgeModel? model,
        [NotNullWhen(false)] out BridgeFault? fault)
    {
        model = null;
        var parameters = Begin(asked);
        var found = Layout(parameters, token);
        if (found.Layout is not { } layout)
        {
            fault = found.Fault!;
            return false;
        }

        var rope = _shape.Value.Rope!;
        var lines = RopeRuns.Draw(parameters, rope);
        _run(
            () => CutAndCompared(layout, lines, token),
            () => _ropework.For(parameters, () => Ropework(layout, rope, token)),
            () => _wind.For(parameters, () => Blown(layout, rope, token)));
        fault = _pieces.Value.Fault;
        if (fault is not null)
        {
            return false;
        }

        var context = Context(parameters, layout, rope);
        if (with.Stock)
        {
            _run(
                () => Judge(context, token),
                () => _stock.For(parameters, () => StockPlanner.Plan(context.Pieces, parameters, parameters.PriceList, token)));
        }
        else
        {
            Judge(context, token);
        }

        if (with.Remedies)
        {
            _remedies.For(parameters, () => Cures(context, token));
        }

        model = Model(context, lines);
        model = with.Remedies ? model with { Remedies = _remedies.Value } : model;
        model = with.Stock ? model with { StockPlan = _stock.Value } : model;
        return true;
    }

    private BridgeParameters Begin(BridgeParameters asked)
    {
        foreach (var stage in All)
        {
            stage.Begin();
        }

        return _before = _before is null ? asked : KeptParameters.Keep(asked, _before);
    }

    private CheckContext Context(BridgeParameters parameters, BridgeLayout layout, RopeShape rope) => new(
        parameters, layout, rope, _pieces.Value.Pieces, _contacts.Value, _ropework.Value.Masses, _ropework.Value.Work, _wind.Value);

    private (BridgeLayout? Layout, BridgeFault? Fault) Layout(BridgeParameters parameters, CancellationToken token)
    {
        var (rope, fault) = _shape.For(parameters, () => (FormFinding.Find(parameters, token, out var none), none));
        var found = _layout.For(parameters, () => Laid(parameters, rope, fault, token));
        // The layout carries the parameters on to those that look at more of them than it does.
        return found.Layout is { } layout ? (layout with { Parameters = parameters }, null) : found;
    }

    /// <summary>Frames on the shape, when every part is one.</summary>
    internal static (BridgeLayout? Layout, BridgeFault? Fault) Laid(
        BridgeParameters parameters, RopeShape? rope, BridgeFault? fault, CancellationToken token)
    {
        var layout = rope is null ? FormFinding.OnEvenLoads(parameters) : BridgeLayout.Lay(parameters, rope);
        ImmutableArray<Misfit> misfits = layout is null ? [] : LayoutFit.Check(layout, token);
        return misfits.IsEmpty ? (fault is null ? layout : null, fault) : (null, BridgeFault.Of(misfits));
    }

    private void CutAndCompared(BridgeLayout layout, ImmutableArray<RopeLine> lines, CancellationToken token)
    {
        var (pieces, fault) = Cut(layout, token);
        if (fault is null)
        {
            _contacts.For(layout.Parameters, () => ContactSweep.Sweep(layout, pieces, lines, token));
        }
    }

    private (ImmutableArray<Piece> Pieces, BridgeFault? Fault) Cut(BridgeLayout layout, CancellationToken token)
    {
        var members = _members.For(layout.Parameters, () => Placed(layout, token));
        return _pieces.For(layout.Parameters, () => Cut(layout.Parameters, members, token));
    }

    // Weighs the bridge by itself: that costs less than to wait for the ropes.
    private static WindWork Blown(BridgeLayout layout, RopeShape rope, CancellationToken token) =>
        WindWork.Work(layout, rope, BridgeMasses.Weigh(layout, token), StandingWeights.Weigh(layout, token), token);

    private static ImmutableArray<MemberGroup> Placed(BridgeLayout layout, CancellationToken token)
    {
        var groups = ImmutableArray.CreateBuilder<MemberGroup>((2 * layout.Bays) + 1);
        foreach (var group in Members.Lay(layout))
        {
            token.ThrowIfCancellationRequested();
            groups.Add(group);
        }

        return groups.MoveToImmutable();
    }

    internal static (ImmutableArray<Piece> Pieces, BridgeFault? Fault) Cut(
        BridgeParameters parameters, ImmutableArray<MemberGroup> members, CancellationToken token) =>
        PieceSet.TryOf(parameters, members, out var pieces, out var failure, token)
            ? (pieces, null)
            : (ImmutableArray<Piece>.Empty, new BridgeFault(BridgeFaultKind.DoesNotFit, FaultCode.PieceNotCut.Id(), failure!));

    private static (BridgeMasses Masses, RopeWork Work) Ropework(BridgeLayout layout, RopeShape rope, CancellationToken token)
    {
        var masses = BridgeMasses.Weigh(layout, token);
        return (masses, RopeWork.Work(layout, rope, masses, token));
    }

    private void Judge(CheckContext context, CancellationToken token) => _checks.For(context.Parameters, () =>
    {
        var works = AllChecks.Works(context, token);
        var results = new ImmutableArray<CheckResult>[works.Length];
        _run(works.Select((work, i) => (Action)(() => results[i] = work())).ToArray());
        return results.SelectMany(r => r).ToImmutableArray();
    });

    private ImmutableArray<Remedy> Cures(CheckContext context, CancellationToken token) =>
    [
        .. Remedies.Find(context.Parameters, context.Cases, _checks.Value, FormFinding.Within, token),
        .. RollRemedies.Find(context, _checks.Value, FormFinding.Within, token),
        .. TimberRemedies.Find(context, _checks.Value, FormFinding.Within, token),
        // Of joints that are left to an engineer only when asked: that search takes longer than the whole answer.
        .. JointRemedies.Find(context.Layout, context.Ropework, _checks.Value.Where(c => c.Status == CheckStatus.Fail), token),
    ];

    // What can be drawn before anything is known of loads.
    private BridgeModel Picture(BridgeLayout layout, RopeShape rope, ImmutableArray<RopeLine> lines) => new()
    {
        Parameters = layout.Parameters,
        Rope = rope,
        RopeLines = lines,
        Frames = layout.Poses,
        Groups = [.. _members.Value.Select(g => new GroupIds(g.Name, [.. g.Members.Select(m => m.Id)]))],
        Pieces = _pieces.Value.Pieces,
        Hoisting = [],
        Marks = [],
        Cases = [],
        Checks = [],
    };

    private BridgeModel Model(CheckContext context, ImmutableArray<RopeLine> lines) => Picture(context.Layout, context.Rope, lines) with
    {
        Hoisting = context.Ropework.Hoisting.Rows,
        Marks = context.Ropework.Marks,
        Cases = context.Ropework.Cases,
        Checks = _checks.Value,
        Ropework = context.Ropework,
        Wind = context.Wind,
    };
}
