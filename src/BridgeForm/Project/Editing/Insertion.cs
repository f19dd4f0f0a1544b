namespace BridgeForm.Project.Editing;

/// <summary>Where a new key goes: into braces before they close, into a block as a line behind its last one.</summary>
internal static class Insertion
{
    /// <summary>A new entry, or several lines of them, behind the last line of a block at the indent of its entries.</summary>
    /// <param name="text">The file.</param>
    /// <param name="block">The mapping or list.</param>
    /// <param name="first">Where its first entry begins.</param>
    /// <param name="lines">Lines without the block's indent.</param>
    public static TextChange Block(string text, Spot block, int first, IEnumerable<string> lines)
    {
        var (newLine, indent) = (LineText.Break(text), LineText.Indent(text, first));
        var put = string.Join(newLine, lines.Select(l => indent + l));
        var (end, next) = (LineText.End(text, block.End), LineText.Next(text, block.End));
        return next > end ? new TextChange(next, next, put + newLine) : new TextChange(end, end, newLine + put);
    }

    /// <summary>A new entry before a bracket closes: on a line of its own where the last one has one.</summary>
    /// <param name="text">The file.</param>
    /// <param name="flow">The mapping or list.</param>
    /// <param name="last">Its last entry; null when it has none.</param>
    /// <param name="entry">What to put in.</param>
    public static IEnumerable<TextChange> Flow(string text, Spot flow, (int Start, int End)? last, string entry)
    {
        if (last is not var (start, end))
        {
            var closes = text[flow.Start + 1] is '}' or ']';
            var blank = text[flow.Start] is '{' ? " " : "";
            return [new TextChange(flow.Start + 1, flow.Start + 1, blank + entry + (closes ? blank : ""))];
        }

        var comma = Comma(text, end, flow.End);
        var isOwnLine = LineText.IsFirst(text, start);
        var put = isOwnLine ? LineText.Break(text) + LineText.Indent(text, start) + entry : " " + entry;
        if (comma >= 0)
        {
            var at = isOwnLine ? LineText.End(text, comma) : comma + 1;
            return [new TextChange(at, at, put + ",")];
        }

        var closesLater = LineText.End(text, end) < flow.End;
        var behind = isOwnLine && closesLater ? LineText.End(text, end) : end;
        return behind == end
            ? [new TextChange(end, end, "," + put)]
            : [new TextChange(end, end, ","), new TextChange(behind, behind, put)];
    }

    /// <summary>The comma behind an entry, over blanks, line ends and comments; -1 when there is none.</summary>
    public static int Comma(string text, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (text[i] == ',')
            {
                return i;
            }

            if (text[i] == '#')
            {
                i = LineText.End(text, i);
            }
            else if (!char.IsWhiteSpace(text[i]))
            {
                break;
            }
        }

        return -1;
    }
}
