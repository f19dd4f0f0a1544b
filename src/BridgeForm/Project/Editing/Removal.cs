namespace BridgeForm.Project.Editing;

/// <summary>Takes an entry out: with its line where it has one to itself, else with its comma.</summary>
internal static class Removal
{
    /// <summary>The changes that take an entry out of a mapping that has others; none when it cannot be done.</summary>
    public static IReadOnlyList<TextChange> Of(string text, MapSpot map, SpotEntry entry)
    {
        var at = map.Entries.IndexOf(entry);
        var next = at + 1 < map.Entries.Length ? map.Entries[at + 1] : null;
        return map.Flow ? Flow(text, map, entry, at == 0 ? null : map.Entries[at - 1])
            : LineText.IsFirst(text, entry.Start) ? [Lines(text, entry)]
            : next is not null ? [new TextChange(entry.Start, next.Start, "")]
            : [];
    }

    private static TextChange Lines(string text, SpotEntry entry)
    {
        var (start, next) = (LineText.Start(text, entry.Start), LineText.Next(text, entry.End));
        var isOpenEnd = next == LineText.End(text, entry.End);
        return new TextChange(isOpenEnd && start > 0 ? BreakBefore(text, start) : start, next, "");
    }

    private static int BreakBefore(string text, int start) =>
        start > 1 && text.AsSpan(start - 2).StartsWith("\r\n") ? start - 2 : start - 1;

    private static IReadOnlyList<TextChange> Flow(string text, MapSpot map, SpotEntry entry, SpotEntry? before)
    {
        var comma = Insertion.Comma(text, entry.End, map.End);
        var end = comma < 0 ? entry.End : comma + 1;
        // The comma before goes when the last entry does and left none behind itself.
        var first = before is null || comma >= 0 ? -1 : Insertion.Comma(text, before.End, entry.Start);
        if (LineText.IsFirst(text, entry.Start) && LineText.IsLast(text, end) && LineText.Next(text, end) < map.End)
        {
            return [.. CommaGone(first), Lines(text, entry)];
        }

        if (LineText.IsLast(text, end) || comma < 0)
        {
            var start = entry.Start - (text.AsSpan(0, entry.Start).Length - text.AsSpan(0, entry.Start).TrimEnd(" \t").Length);
            return [.. CommaGone(first), new TextChange(Math.Max(start, first + 1), end, "")];
        }

        var blanks = text.AsSpan(end).Length - text.AsSpan(end).TrimStart(" \t").Length;
        return [new TextChange(entry.Start, end + blanks, "")];
    }

    private static TextChange[] CommaGone(int comma) => comma < 0 ? [] : [new TextChange(comma, comma + 1, "")];
}
