using BridgeForm.Cli.Streams;
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
        if (!new Rebuild(Together.Run).TryWhole(reading.Parameters!, CancellationToken.None, out var model, out var fault))
        {
            throw Told(reading, fault);
        }

        ModelAudit.Demand(model);
        return model;
    }

    private static Stop Told(ProjectReading reading, BridgeFault fault) => fault.Misfits.IsEmpty
        ? new Stop(
            fault.Kind == BridgeFaultKind.NoShape ? ExitCode.NoSolution : ExitCode.WrongInput,
            "bridgeform: error: " + fault.Message)
        : new Stop(
            ExitCode.WrongInput,
            FitFaults.Of(reading, fault.Misfits).Select(f => f.In(reading.FileName)));
}
