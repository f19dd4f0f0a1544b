using BridgeForm.Quantities;

namespace BridgeForm.Cli.Streams;

/// <summary>Ends a command early with an exit code and words for people, each text on a line of its own.</summary>
internal sealed class Stop(int code, params IEnumerable<string> lines)
    : Exception(string.Join("\n", lines.Select(PlainLine.Of)))
{
    /// <summary>Exit code.</summary>
    public int Code { get; } = code;
}
