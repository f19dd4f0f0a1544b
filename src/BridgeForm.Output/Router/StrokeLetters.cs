using System.Collections.Frozen;
using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Router;

/// <summary>
/// Letters and digits as open lines that a pointed bit follows. Each is drawn on a grid of 4 by 6: two digits are a corner, x
/// before y; a bar lifts the bit.
/// </summary>
internal static class StrokeLetters
{
    private const double Rows = 6;

    // From one letter's left edge to the next one's: its width and half of that.
    private const double Step = 6;

    private static readonly FrozenDictionary<char, string> s_strokes = new Dictionary<char, string>
    {
        ['0'] = "00 40 46 06 00",
        ['1'] = "04 26 20",
        ['2'] = "05 16 36 45 44 00 40",
        ['3'] = "06 46 24 34 43 41 30 10 01",
        ['4'] = "30 36 02 42",
        ['5'] = "46 06 04 34 43 41 30 00",
        ['6'] = "36 16 04 01 10 30 41 42 33 13 02",
        ['7'] = "06 46 10",
        ['8'] = "13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33",
        ['9'] = "10 30 42 45 36 16 05 04 13 33 44",
        ['B'] = "03 33 42 41 30 00 06 36 45 44 33",
        ['C'] = "45 36 16 05 01 10 30 41",
        ['D'] = "00 06 26 44 42 20 00",
        ['G'] = "45 36 16 05 01 10 30 41 43 23",
        ['H'] = "00 06|40 46|03 43",
        ['K'] = "00 06|46 03 40",
        ['L'] = "06 00 40",
        ['N'] = "00 06 40 46",
        ['P'] = "00 06 36 45 44 33 03",
        ['R'] = "00 06 36 45 44 33 03|23 40",
        ['S'] = "45 36 16 05 04 13 33 42 41 30 10 01",
        ['T'] = "06 46|20 26",
        ['U'] = "06 01 10 30 41 46",
        ['V'] = "06 20 46",
        ['W'] = "06 10 23 30 46",
    }.ToFrozenDictionary();

    /// <summary>Width of a text of that height, metres.</summary>
    public static double Width(string text, double height) => ((text.Length * Step) - (Step - 4)) * height / Rows;

    /// <summary>Its strokes, from left to right. Marks have no other characters than the table (tested over all roles).</summary>
    /// <param name="text">A mark.</param>
    /// <param name="at">Lower left corner.</param>
    /// <param name="height">Height of a letter, metres.</param>
    public static IEnumerable<ImmutableArray<SheetVertex>> Draw(string text, SheetPoint at, double height)
    {
        var unit = height / Rows;
        return text.SelectMany((letter, i) => s_strokes[letter].Split('|').Select(stroke =>
            stroke.Split(' ').Select(c => new SheetVertex(at.X + (((i * Step) + (c[0] - '0')) * unit), at.Y + ((c[1] - '0') * unit)))
                .ToImmutableArray()));
    }
}
