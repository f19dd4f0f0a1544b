using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Tests.Checks;

/// <summary>What checks look at, made from a project file.</summary>
internal static class Contexts
{
    public static CheckContext Of(string text) => Of(Bridges.Read(text));

    public static CheckContext Of(BridgeParameters parameters)
    {
        Assert.True(Bridge.TryShape(parameters, out var rope, out var fault), fault?.Message);
        var layout = BridgeLayout.Lay(parameters, rope);
        var masses = BridgeMasses.Weigh(layout);
        var lines = RopeRuns.Draw(parameters, rope);
        Assert.True(PieceSet.TryOf(parameters, Members.Lay(layout), out var pieces, out var failure), failure);
        var work = RopeWork.Work(layout, rope, masses);
        return new CheckContext(
            parameters, layout, rope, pieces, ContactSweep.Sweep(layout, pieces, lines), masses, work,
            WindWork.Work(layout, rope, masses, StandingWeights.Weigh(layout)));
    }

    /// <summary>As if no frame leaned in any case: what comes onto a base by statics alone.</summary>
    public static CheckContext Upright(CheckContext context) => context with
    {
        Ropework = context.Ropework with { Cases = [.. context.Cases.Select(c => c with { CrossSlope = 0 })] },
    };

    public static CheckResult Check(CheckContext context, string id) => AllChecks.Run(context).Single(c => c.Id == id);

    public static CheckResult Check(string text, string id) => Check(Of(text), id);

    public static CheckStatus Status(string text, string id) => Check(text, id).Status;
}
