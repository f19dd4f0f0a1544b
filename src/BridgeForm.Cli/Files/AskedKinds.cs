using System.Collections.Immutable;
using BridgeForm.Cli.Streams;
using BridgeForm.Output.Kinds;

namespace BridgeForm.Cli.Files;

/// <summary>Kinds of files that <c>make --only</c> takes.</summary>
internal static class AskedKinds
{
    /// <summary>All kinds that this version makes, in the order they are written.</summary>
    public static ImmutableArray<string> Names { get; } = OutputKinds.Words;

    /// <summary>How a list that was begun may go on: what stands before its last comma, and each kind that is not in it.</summary>
    public static IEnumerable<string> After(string begun)
    {
        var before = begun[..(begun.LastIndexOf(',') + 1)];
        var named = before.Split(',');
        return Names.Where(n => !named.Contains(n, StringComparer.Ordinal)).Select(n => before + n);
    }

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
