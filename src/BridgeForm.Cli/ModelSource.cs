using BridgeForm.Project;

namespace BridgeForm.Cli;

/// <summary>Builds the model for a command.</summary>
internal static class ModelSource
{
    /// <summary>The model. Stops when the shape has no solution.</summary>
    public static BridgeModel Build(BridgeParameters parameters) =>
        Bridge.TryBuild(parameters, out var model, out var failure)
            ? model
            : throw new Stop(ExitCode.NoSolution, "bridgeform: error: " + failure);
}
