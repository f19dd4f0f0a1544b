namespace BridgeForm.Cli.Streams;

/// <summary>Where words for people go, as plain text.</summary>
internal sealed class Terminal(TextWriter output, TextWriter error)
{
    /// <summary>Results.</summary>
    public TextWriter Out { get; } = new PlainWriter(output);

    /// <summary>Errors, failing checks.</summary>
    public TextWriter Error { get; } = new PlainWriter(error);

    /// <summary>
    /// A bar on standard error, when that is looked at by a person who has not asked for quiet, not written to a file or a pipe.
    /// It moves the cursor, so it writes past the plain text; its words are the program's own.
    /// </summary>
    public Progress Progress(bool quiet) =>
        new(error, !quiet && ReferenceEquals(error, Console.Error) && !Console.IsErrorRedirected, TimeProvider.System);
}
