namespace BridgeForm.Cli;

/// <summary>Where words for people go.</summary>
/// <param name="Out">Results.</param>
/// <param name="Error">Errors, failing checks, progress.</param>
internal sealed record Terminal(TextWriter Out, TextWriter Error);
