using System.Collections.Immutable;

namespace BridgeForm.Project.Editing;

/// <summary>Where a node stands in the text: from its first character to behind its last, comments and line ends not counted.</summary>
internal abstract record Spot(int Start, int End);

/// <summary>A single value; empty where a key has none.</summary>
internal sealed record ScalarSpot(int Start, int End) : Spot(Start, End);

/// <summary>A list, in brackets or one entry a line.</summary>
internal sealed record ListSpot(int Start, int End, bool Flow, ImmutableArray<Spot> Items) : Spot(Start, End);

/// <summary>A mapping, in braces or one key a line.</summary>
internal sealed record MapSpot(int Start, int End, bool Flow, ImmutableArray<SpotEntry> Entries) : Spot(Start, End)
{
    /// <summary>The entry of a key; null when the mapping has none.</summary>
    public SpotEntry? Find(string name) => Entries.FirstOrDefault(e => string.Equals(e.Key, name, StringComparison.Ordinal));
}

/// <summary>A key and what stands under it.</summary>
/// <param name="Key">The key's word.</param>
/// <param name="Start">Where the key begins.</param>
/// <param name="KeyEnd">Behind the key, before its colon.</param>
/// <param name="Value">What stands under it.</param>
internal sealed record SpotEntry(string Key, int Start, int KeyEnd, Spot Value)
{
    /// <summary>Behind the value.</summary>
    public int End => Value.End;
}
