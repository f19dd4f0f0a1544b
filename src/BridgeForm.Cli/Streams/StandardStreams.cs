using System.Text;

namespace BridgeForm.Cli.Streams;

/// <summary>Standard output and error. One that was closed before the program began must not be written to: the number may by now be that of another open file.</summary>
internal static class StandardStreams
{
    private const int OutputNumber = 1;
    private const int ErrorNumber = 2;
    private const int CloseOnExec = 1;

    /// <summary>Standard output.</summary>
    public static TextWriter Out => IsOpen(OutputNumber) ? Console.Out : new ClosedWriter("standard output");

    /// <summary>Standard error.</summary>
    public static TextWriter Error => IsOpen(ErrorNumber) ? Console.Error : new ClosedWriter("standard error");

    /// <summary>What a program is begun with is not marked to close when a program begins; what it opened since then is.</summary>
    private static bool IsOpen(int number) =>
        !OperatingSystem.IsLinux() || (LinuxCalls.FlagsOf(number) is >= 0 and var flags && (flags & CloseOnExec) == 0);

    private sealed class ClosedWriter(string name) : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException(name + " is closed");

        public override void Write(string? value) => throw new IOException(name + " is closed");
    }
}
