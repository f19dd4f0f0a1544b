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
    /// <param name="reading">The file.</param>
    /// <param name="progress">Where it is told.</param>
    /// <param name="withStock">With a stock plan; without one where nothing is told of it.</param>
    public static BridgeModel Build(ProjectReading reading, Progress progress, bool withStock = true)
    {
        progress.Say("working out the bridge");
        var (rebuild, parameters) = (new Rebuild(Together.Run), reading.Parameters!);
        if (!(withStock
            ? rebuild.TryWhole(parameters, CancellationToken.None, out var model, out var fault)
            : rebuild.TryVerdict(parameters, CancellationToken.None, out model, out fault)))
        {
            throw Told(reading, fault!);
        }

        ModelAudit.Demand(model!);
        return model!;
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
