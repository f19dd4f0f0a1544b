using System.Globalization;
using System.Text;

namespace BridgeForm.Output.Dxf;

/// <summary>Texts as a DXF file holds them: ASCII, with escapes for what is not.</summary>
internal static class DxfText
{
    /// <summary>
    /// A degree sign becomes <c>%%d</c>, a diameter sign <c>%%c</c>, plus-or-minus <c>%%p</c>, other characters beyond
    /// ASCII <c>\U+XXXX</c>; control characters become spaces.
    /// </summary>
    public static string Encoded(string text)
    {
        if (text.All(c => c is >= ' ' and <= '~'))
        {
            return text;
        }

        var result = new StringBuilder();
        foreach (var c in text)
        {
            _ = c switch
            {
                '°' => result.Append("%%d"),
                '⌀' or 'Ø' => result.Append("%%c"),
                '±' => result.Append("%%p"),
                >= ' ' and <= '~' => result.Append(c),
                < ' ' or '\u007f' => result.Append(' '),
                _ => result.Append(CultureInfo.InvariantCulture, $"\\U+{(int)c:X4}"),
            };
        }

        return result.ToString();
    }
}
