namespace BridgeForm.Cli;

/// <summary>Where words for people go.</summary>
/// <param name="Out">Results.</param>
/// <param name="Error">Errors, failing checks, progress.</param>
internal sealed record Terminal(TextWriter Out, TextWriter Error)
{
    /// <summary>Standard error is looked at by a person, not written to a file or a pipe.</summary>
    public bool IsErrorShown => ReferenceEquals(Error, Console.Error) && !Console.IsErrorRedirected;
}
