using BridgeForm.Quantities;

namespace BridgeForm.Project.Editing;

/// <summary>A comment put beside or above a key's line; one that stands there already is not put twice.</summary>
internal static class Remarks
{
    private const int WidestLine = 110;

    /// <summary>The text with the comment in the first place where it can stand; null when there is none.</summary>
    public static string? Put(string text, KeyWay way, string comment)
    {
        var trail = Trail.Follow(SpotReader.Read(text), way.Names);
        var remark = "# " + PlainLine.Of(comment.Trim().TrimStart('#').TrimStart());
        var key = trail.Entries.LastOrDefault(e => e is not null)?.Start ?? trail.Last.Start;
        var (line, end) = (LineText.Start(text, key), LineText.End(text, trail.Last.End));
        var begins = Begins(trail.Spots[0], text, trail.Last.End, end);
        if ((begins >= 0 && Same(text.AsSpan(begins..end), remark)) || (line > 0 && Same(LineAbove(text, line), remark)))
        {
            return text;
        }

        var before = Leaves.Of(text)!;
        var top = LineText.Start(text, trail.Entries[0]!.Start);
        return new[] { Beside(text, remark, end, begins >= 0), Above(text, remark, line), Above(text, remark, top) }
            .FirstOrDefault(t => t is not null && Leaves.Of(t) is { } after && Leaves.AreSame(before, after, []));
    }

    private static string? Beside(string text, string remark, int end, bool hasOne)
    {
        var start = LineText.Start(text, end);
        var length = text.AsSpan(start..end).TrimEnd().Length;
        return hasOne || length + remark.Length + 2 > WidestLine
            ? null
            : string.Concat(text.AsSpan(0, start + length), "  ", remark, text.AsSpan(end));
    }

    private static string Above(string text, string remark, int line)
    {
        var blanks = text.AsSpan(line).Length - text.AsSpan(line).TrimStart(' ').Length;
        return text.Insert(line, new string(' ', blanks) + remark + LineText.Break(text));
    }

    private static bool Same(ReadOnlySpan<char> written, string remark) => written.Trim().SequenceEqual(remark);

    private static ReadOnlySpan<char> LineAbove(string text, int line)
    {
        var end = line - 1;
        return text.AsSpan(LineText.Start(text, end > 0 && text.AsSpan(end - 1).StartsWith("\r\n") ? end - 1 : end)..end);
    }

    // Where a comment begins on a line; -1 for none. A sharp within a value begins none.
    private static int Begins(Spot root, string text, int from, int end)
    {
        for (var i = from; i < end; i++)
        {
            if (text[i] == '#' && char.IsWhiteSpace(text[i - 1]) && !IsInValue(root, i))
            {
                return i;
            }
        }

        return -1;
    }

    private static bool IsInValue(Spot spot, int at) => at >= spot.Start && at < spot.End && spot switch
    {
        MapSpot map => map.Entries.Any(e => (at >= e.Start && at < e.KeyEnd) || IsInValue(e.Value, at)),
        ListSpot list => list.Items.Any(i => IsInValue(i, at)),
        _ => true,
    };
}
