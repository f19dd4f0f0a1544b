namespace BridgeForm.Cli;

/// <summary>Ends a command early with an exit code and words for people.</summary>
internal sealed class Stop(int code, string message) : Exception(message)
{
    /// <summary>Exit code.</summary>
    public int Code { get; } = code;
}
