namespace BridgeForm.Project.Editing;

/// <summary>Lines of a text, ended as the parser ends them.</summary>
internal static class LineText
{
    private const string Breaks = "\r\n\u2028\u2029";

    /// <summary>How the text ends its first line; a line feed where it has but one line.</summary>
    public static string Break(string text)
    {
        var at = text.AsSpan().IndexOfAny('\r', '\n');
        return at < 0 || text[at] == '\n' ? "\n" : text.AsSpan(at).StartsWith("\r\n") ? "\r\n" : "\r";
    }

    /// <summary>Where the line of a place begins.</summary>
    public static int Start(string text, int at) => text.AsSpan(0, at).LastIndexOfAny(Breaks) + 1;

    /// <summary>Where the line of a place ends, before its line end.</summary>
    public static int End(string text, int at)
    {
        var length = text.AsSpan(at).IndexOfAny(Breaks);
        return length < 0 ? text.Length : at + length;
    }

    /// <summary>Where the line after that of a place begins; the end of the text for the last.</summary>
    public static int Next(string text, int at)
    {
        var end = End(text, at);
        return end == text.Length ? end : text.AsSpan(end).StartsWith("\r\n") ? end + 2 : end + 1;
    }

    /// <summary>Whether nothing but blanks stands before a place in its line.</summary>
    public static bool IsFirst(string text, int at) => text.AsSpan(Start(text, at)..at).IsWhiteSpace();

    /// <summary>Whether nothing but blanks and a comment follows a place in its line.</summary>
    public static bool IsLast(string text, int at)
    {
        var rest = text.AsSpan(at..End(text, at)).TrimStart();
        return rest.IsEmpty || rest[0] == '#';
    }

    /// <summary>Blanks as wide as what stands before a place in its line.</summary>
    public static string Indent(string text, int at) => new(' ', at - Start(text, at));
}
