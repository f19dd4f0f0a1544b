using BridgeForm.Project.Reading.Faults;

namespace BridgeForm.Project.Reading;

/// <summary>What a file's text must be before it is worth parsing.</summary>
internal static class YamlText
{
    private const char ByteOrderMark = '\uFEFF';

    /// <summary>The text without its byte order mark, or null with a fault.</summary>
    /// <param name="text">Of the file.</param>
    /// <param name="largest">Characters that are read at most.</param>
    /// <param name="faults">Where the fault is told.</param>
    public static string? Checked(string text, int largest, FaultList faults)
    {
        if (text.Length > largest)
        {
            faults.Add(FaultCode.FileTooLarge, Place.Start, FormattableString.Invariant($"the file is larger than {largest / 1_000_000} ")
                + "MB; a project file is a few kilobytes of text");
            return null;
        }

        var body = text.StartsWith(ByteOrderMark) ? text[1..] : text;
        var bad = FirstBad(body);
        if (bad >= 0)
        {
            faults.Add(
                FaultCode.BadCharacter, PlaceOf(body, bad),
                FormattableString.Invariant($"character U+{(int)body[bad]:X4} does not belong in a project file; it must be UTF-8 text"));
            return null;
        }

        return body;
    }

    private static int FirstBad(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (IsBad(text, i))
            {
                return i;
            }
        }

        return -1;
    }

    // Control characters, half surrogate pairs and the mark of undecodable bytes. U+0085 and the like would break lines.
    private static bool IsBad(string text, int i)
    {
        var c = text[i];
        if (char.IsSurrogate(c))
        {
            var paired = char.IsHighSurrogate(c)
                ? i + 1 < text.Length && char.IsLowSurrogate(text[i + 1])
                : i > 0 && char.IsHighSurrogate(text[i - 1]);
            return !paired;
        }

        return (char.IsControl(c) && c is not ('\n' or '\r' or '\t')) || c is '\uFFFD' or '\uFFFE' or '\uFFFF' or ByteOrderMark;
    }

    private static Place PlaceOf(string text, int index)
    {
        var before = text.AsSpan(0, index);
        var line = 1 + before.Count('\n');
        return new Place(line, index - before.LastIndexOf('\n'));
    }
}
