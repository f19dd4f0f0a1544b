using BridgeForm.Project;

namespace BridgeForm.Cli;

/// <summary>Builds the model for a command.</summary>
internal static class ModelSource
{
    /// <summary>The model. Stops when the shape has no solution or a part does not fit on it.</summary>
    public static BridgeModel Build(BridgeParameters parameters, Progress progress)
    {
        progress.Say("working out the bridge");
        return Bridge.TryBuild(parameters, out var model, out var fault)
            ? model
            : throw new Stop(
                fault.Kind == BridgeFaultKind.NoShape ? ExitCode.NoSolution : ExitCode.WrongInput,
                "bridgeform: error: " + fault.Message);
    }
}
