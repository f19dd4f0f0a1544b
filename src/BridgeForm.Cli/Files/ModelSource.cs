using BridgeForm.Cli.Streams;
using BridgeForm.Pieces;
using BridgeForm.Project.Files;

namespace BridgeForm.Cli.Files;

/// <summary>Builds the model for a command.</summary>
internal static class ModelSource
{
    /// <summary>
    /// The model, every solid of it audited. Stops when the shape has no solution, and with faults of the file when a part does
    /// not fit on it.
    /// </summary>
    public static BridgeModel Build(ProjectReading reading, Progress progress)
    {
        progress.Say("working out the bridge");
        return new Rebuild(Together.Run).TryWhole(reading.Parameters!, CancellationToken.None, out var model, out var fault)
            ? Audited(model)
            : throw Told(reading, fault);
    }

    /// <summary>The same without a stock plan: nothing is printed of it.</summary>
    public static BridgeModel BuildWithoutStock(ProjectReading reading, Progress progress)
    {
        progress.Say("working out the bridge");
        return new Rebuild(Together.Run).TryVerdict(reading.Parameters!, CancellationToken.None, out var model, out var fault)
            ? Audited(model)
            : throw Told(reading, fault);
    }

    private static BridgeModel Audited(BridgeModel model)
    {
        ModelAudit.Demand(model);
        return model;
    }

    private static Stop Told(ProjectReading reading, BridgeFault fault) => fault.Misfits.IsEmpty
        ? new Stop(
            fault.Kind == BridgeFaultKind.NoShape ? ExitCode.NoSolution : ExitCode.WrongInput,
            $"bridgeform: error: {fault.Message} [{fault.Code}]")
        : new Stop(
            ExitCode.WrongInput,
            FitFaults.Tell(reading, fault.Misfits).Select(f => f.In(reading.FileName)));
}

/// <summary>The program's own look at every solid before anything is written.</summary>
internal static class ModelAudit
{
    /// <summary>Throws when a solid is open, inside out or not finite: a defect that must not reach a file.</summary>
    /// <exception cref="InvalidOperationException">Which piece and what is wrong with it.</exception>
    public static void Demand(BridgeModel model) =>
        Together.Run([.. model.Pieces.Select(piece => (Action)(() => Demand(piece)))]);

    private static void Demand(Piece piece)
    {
        var faults = piece.Solid.Audit();
        if (faults.Length > 0)
        {
            throw new InvalidOperationException($"The solid of {piece.Mark} is faulty: {string.Join("; ", faults)}");
        }
    }
}
