using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>
/// What people write that YAML reads otherwise, and what to write instead: found in the line where the parser stopped, for the
/// parser's own words help nobody who has never heard of scalars.
/// </summary>
internal static class YamlCure
{
    private const string Closers = ",}]";
    private const int UsualStep = 2;

    /// <summary>What is wrong in plain words, with the cure; null when none of the usual slips is found.</summary>
    /// <param name="text">The file.</param>
    /// <param name="place">Where the parser stopped.</param>
    public static string? Find(string text, Place place)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        if (place.Line > lines.Length)
        {
            return null;
        }

        var line = lines[place.Line - 1];
        var before = lines.Take(place.Line - 1).LastOrDefault(IsContent) ?? "";
        return Pair(line, place.Column) ?? (line.Contains(": ", StringComparison.Ordinal) ? null : NoBlank(line)) ?? NoBlank(before)
            ?? Open(line) ?? TooFarIn(line, before, place.Line);
    }

    /// <summary>A line that a tab indents, with the blanks that belong there.</summary>
    public static string Tab(string text, Place place)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var before = lines.Take(place.Line - 1).LastOrDefault(IsContent) ?? "";
        var blanks = before.TakeWhile(char.IsWhiteSpace).Sum(c => c == '\t' ? UsualStep : 1)
            + (Bare(before).EndsWith(':') ? UsualStep : 0);
        return FormattableString.Invariant($"a tab indents this line, and YAML takes blanks alone; take the tab out and write {blanks} ")
            + $"blanks before {QuantityReader.Quote(lines[place.Line - 1].Trim())}";
    }

    private static bool IsContent(string line) => line.Trim() is { Length: > 0 } content && content[0] != '#';

    // Without the comment at its end.
    private static string Bare(string text)
    {
        var comment = text.IndexOf(" #", StringComparison.Ordinal);
        return (comment < 0 ? text : text[..comment]).Trim();
    }

    // Key and value about the column: in braces from comma to comma, else the whole line.
    private static string? Pair(string line, int column)
    {
        var at = Math.Clamp(column - 1, 0, line.Length);
        var isFlow = line[..at].Contains('{');
        var from = isFlow ? line.AsSpan(0, at).LastIndexOfAny('{', ',', '[') + 1 : 0;
        var length = isFlow ? line.AsSpan(at).IndexOfAny(Closers) : -1;
        var pair = Bare(length < 0 ? line[from..] : line[from..(at + length)]);
        pair = pair.StartsWith("- ", StringComparison.Ordinal) ? pair[2..].TrimStart() : pair;
        var colon = pair.IndexOf(": ", StringComparison.Ordinal);
        return colon > 0 && pair[0] is not ('\'' or '"') ? Value(pair[..colon], pair[(colon + 2)..].Trim()) : null;
    }

    private static string? Value(string key, string value)
    {
        if (value.Length == 0)
        {
            return null;
        }

        var quoted = $"put it in quotes: write {key}: '{value.Replace("'", "''", StringComparison.Ordinal)}'";
        var closes = value[0] switch { '[' => value.LastIndexOf(']'), '{' => value.LastIndexOf('}'), _ => -1 };
        return value[0] switch
        {
            '@' or '`' or '%' => $"the value of {key} begins with {value[0]}, which YAML keeps for itself; {quoted}",
            '[' or '{' when closes > 0 && closes < value.Length - 1 =>
                $"the value of {key} begins with {value[0]}, as a list or a mapping does; {quoted}",
            '[' or '{' or '\'' or '"' => null,
            _ when value.Contains(": ", StringComparison.Ordinal) || value.EndsWith(':') =>
                $"the value of {key} has a colon in it, which YAML takes for one more key; {quoted}",
            _ => null,
        };
    }

    // name:A is one word to YAML.
    private static string? NoBlank(string line)
    {
        var bare = Bare(line);
        var colon = bare.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && colon + 1 < bare.Length && bare[colon + 1] != ' ' && bare[..colon].All(c => char.IsAsciiLetter(c) || c == '_')
            ? $"a blank is missing behind the colon of {bare[..colon]}; write {bare[..colon]}: {bare[(colon + 1)..]}"
            : null;
    }

    private static string? Open(string line)
    {
        var open = new Stack<char>();
        var quote = '\0';
        foreach (var c in Bare(line))
        {
            if (quote != '\0')
            {
                quote = c == quote ? '\0' : quote;
            }
            else if (c == '"')
            {
                quote = c;
            }
            else if (c is '{' or '[')
            {
                open.Push(c);
            }
            else if (c is '}' or ']' && open.Count > 0)
            {
                open.Pop();
            }
        }

        return quote != '\0' ? $"a {quote} is opened here and not closed; write a second one where the text ends"
            : open.TryPeek(out var last)
            ? $"a {last} is opened here and not closed; write its {(last == '{' ? '}' : ']')} behind what it holds"
            : null;
    }

    private static string? TooFarIn(string line, string before, int number)
    {
        var (here, above) = (line.Length - line.TrimStart().Length, before.Length - before.TrimStart().Length);
        return here > above && !Bare(before).EndsWith(':') && Bare(line).Contains(':')
            ? FormattableString.Invariant($"line {number} is set in further than the line before it, which has a value already; begin ")
                + FormattableString.Invariant($"both after {above} blanks")
            : null;
    }
}
