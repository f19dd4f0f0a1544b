using BridgeForm.Quantities;

namespace BridgeForm.Cli.Streams;

/// <summary>What the program says to the shell.</summary>
internal static class ExitCode
{
    /// <summary>Done; with <c>check</c>: no check fails, and none lacked a value.</summary>
    public const int Done = 0;

    /// <summary>
    /// <c>check</c> found a failing check, or wood that it has no value to check with; a search found no design that passes.
    /// </summary>
    public const int CheckFails = 1;

    /// <summary>The project file or the command line is wrong.</summary>
    public const int WrongInput = 2;

    /// <summary>A file could not be read or written.</summary>
    public const int FileTrouble = 3;

    /// <summary>The shape has no solution.</summary>
    public const int NoSolution = 4;

    /// <summary>A defect in the program (EX_SOFTWARE of sysexits.h).</summary>
    public const int Defect = 70;

    /// <summary>The terminal was closed (128 and the number of SIGHUP, as shells count).</summary>
    public const int HungUp = 129;

    /// <summary>Ctrl-C (128 and the number of SIGINT).</summary>
    public const int Interrupted = 130;

    /// <summary>Another program asked for an end (128 and the number of SIGTERM).</summary>
    public const int Terminated = 143;
}

/// <summary>Ends a command early with an exit code and words for people, each text on a line of its own.</summary>
internal sealed class Stop(int code, params IEnumerable<string> lines)
    : Exception(string.Join("\n", lines.Select(PlainLine.Of)))
{
    /// <summary>Exit code.</summary>
    public int Code { get; } = code;
}
