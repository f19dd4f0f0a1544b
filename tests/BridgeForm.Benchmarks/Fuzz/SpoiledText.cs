namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>A project file with one to six things done to it that happen on the way: by hand, by a program, or on purpose.</summary>
internal static class SpoiledText
{
    private const int MostDone = 6;
    private const int LongestCut = 12;

    private const string Ugly = "{}[]&*!|>'\"%@`#,:?- \t\n\r0123456789.eE/½°′″abcxyz\\~=+<>\u0085\u2028\0\u001b\u202e\ufeff\ufffd";

    // Values that are right somewhere, and nodes that are right nowhere or nearly so.
    private static readonly string[] Nodes =
    [
        "", "~", "2", "0", "-1", "1e999", "NaN", "30 ft", "0 in", "-1 in", "1e9 m", "6 %", "200 %", "8 deg", "89.9 deg", "auto", "true",
        "2x4", "16x16",
        "1 x 1 mm", "38 x 89 mm", "southern-pine", "cedar", "a1", "rope-6x19-iwrc-eips-3/4", "\"\"", "\"\\e[31m\"", "\"\\U0010FFFF\"", "[]",
        "{}", "[1, 2]",
        "[[1 m, 2 m]]", "[20 ft]", "{ a: 1 }", "{ low: 1 kg/m3, high: 2 kg/m3 }", "&a 1", "*a", "!!str 1", "!x [1]", "| \n  text", "> ",
        "? [a]", "- 1",
    ];

    private static readonly Func<string, Random, string>[] Deeds =
    [
        Replace, Replace, Node, Node, Node, SwapValues, DropLine, RepeatLine, SwapLines, Shift, Rename, CutOff, Nest,
    ];

    /// <summary>The file spoiled.</summary>
    public static string Of(string text, Random random)
    {
        for (var left = random.Next(1, MostDone + 1); left > 0; left--)
        {
            text = Deeds[random.Next(Deeds.Length)](text, random);
        }

        return text;
    }

    /// <summary>A few characters gone and a few ugly ones in their place.</summary>
    private static string Replace(string text, Random random)
    {
        var at = random.Next(text.Length + 1);
        var cut = Math.Min(random.Next(LongestCut), text.Length - at);
        var put = string.Concat(Enumerable.Range(0, random.Next(LongestCut / 2)).Select(_ => Ugly[random.Next(Ugly.Length)]));
        return text[..at] + put + text[(at + cut)..];
    }

    /// <summary>Another node under a key.</summary>
    private static string Node(string text, Random random) => InPlaceOf(Value(text, random), text, Nodes[random.Next(Nodes.Length)]);

    private static string SwapValues(string text, Random random)
    {
        var (from, to) = Value(text, random);
        return InPlaceOf(Value(text, random), text, text[from..to]);
    }

    private static string DropLine(string text, Random random) => Lines(text, random, (lines, at) => lines.RemoveAt(at));

    private static string RepeatLine(string text, Random random) => Lines(text, random, (lines, at) => lines.Insert(at, lines[at]));

    private static string SwapLines(string text, Random random) => Lines(text, random, (lines, at) =>
    {
        var other = random.Next(lines.Count);
        (lines[at], lines[other]) = (lines[other], lines[at]);
    });

    private static string Shift(string text, Random random) => Lines(text, random, (lines, at) =>
        lines[at] = random.Next(2) == 0 ? new string(' ', random.Next(1, 5)) + lines[at] : lines[at].TrimStart());

    /// <summary>A letter of a word taken out, as a slip of the hand does.</summary>
    private static string Rename(string text, Random random)
    {
        var letter = text.Length == 0 ? -1 : text.IndexOf(text.FirstOrDefault(char.IsAsciiLetter, ' '), random.Next(text.Length));
        return letter < 0 ? text : text.Remove(letter, 1);
    }

    private static string CutOff(string text, Random random) => random.Next(4) == 0 ? text[..random.Next(text.Length + 1)] : text;

    private static string Nest(string text, Random random) =>
        InPlaceOf(Value(text, random), text, string.Concat(Enumerable.Repeat(random.Next(2) == 0 ? "[" : "{ a: ", random.Next(1, 30))));

    /// <summary>From where to where a value stands: between a colon, comma or bracket and the next end of one.</summary>
    private static (int From, int To) Value(string text, Random random)
    {
        var start = random.Next(text.Length + 1);
        var from = text.IndexOf(": ", start, StringComparison.Ordinal);
        if (from < 0)
        {
            return (start, start);
        }

        var to = text.AsSpan(from + 2).IndexOfAny(",}]\n");
        return (from + 2, to < 0 ? text.Length : from + 2 + to);
    }

    private static string InPlaceOf((int From, int To) place, string text, string node) =>
        text[..place.From] + node + text[place.To..];

    private static string Lines(string text, Random random, Action<List<string>, int> change)
    {
        List<string> lines = [.. text.Split('\n')];
        change(lines, random.Next(lines.Count));
        return string.Join('\n', lines);
    }
}
