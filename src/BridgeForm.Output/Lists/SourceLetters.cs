using System.Collections.Immutable;

namespace BridgeForm.Output.Lists;

/// <summary>Gives each source a letter, so that every row can say where it is from.</summary>
internal sealed class SourceLetters
{
    private readonly List<string> _sources = [];

    /// <summary>The column that holds the letters.</summary>
    public static ListColumn Column { get; } = new("from", ColumnForm.Words);

    /// <summary>Letter of a source; the first one is <c>a</c>. There are fewer than 26 in any table.</summary>
    public string Of(string source)
    {
        if (!_sources.Contains(source, StringComparer.Ordinal))
        {
            _sources.Add(source);
        }

        return ((char)('a' + _sources.IndexOf(source))).ToString();
    }

    /// <summary>What the letters stand for, one a line.</summary>
    public ImmutableArray<string> Lines() => [.. _sources.Select(s => $"{Of(s)}: {s}.")];
}
