using System.Collections.Immutable;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files;

/// <summary>Kinds of files that <c>make --only</c> takes.</summary>
internal static class OutputKinds
{
    /// <summary>All kinds that this version makes, in the order they are written.</summary>
    public static ImmutableArray<string> Names { get; } = [.. OutputFiles.Makers.Select(m => m.Kind)];

    /// <summary>The kinds of a comma-separated list; all when there is none. Stops at a word that is no kind.</summary>
    public static ImmutableHashSet<string> Parse(string? list)
    {
        if (list is null)
        {
            return [.. Names];
        }

        var words = list.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var word in words)
        {
            if (!Names.Contains(word, StringComparer.Ordinal))
            {
                throw new Stop(
                    ExitCode.WrongInput,
                    $"bridgeform: error: --only: '{word}' is nothing this version makes; it makes {string.Join(", ", Names)}");
            }
        }

        return words.Length > 0
            ? [.. words]
            : throw new Stop(ExitCode.WrongInput, $"bridgeform: error: --only: name one or more of {string.Join(", ", Names)}");
    }
}
