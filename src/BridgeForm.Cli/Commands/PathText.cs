using System.CommandLine.Parsing;

namespace BridgeForm.Cli.Commands;

/// <summary>Paths as people type them.</summary>
internal static class PathText
{
    /// <summary>An error of the command line for a path that names nothing.</summary>
    public static void Check(SymbolResult result)
    {
        foreach (var token in result.Tokens)
        {
            if (string.IsNullOrWhiteSpace(token.Value) || token.Value.Contains('\0', StringComparison.Ordinal))
            {
                result.AddError("an empty path names nothing; name a file or folder");
            }
        }
    }
}
