using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using BridgeForm.Solids;

namespace BridgeForm.Output.Part21;

/// <summary>Text of one entity, put together by the compiler from an interpolated string.</summary>
[InterpolatedStringHandler]
internal readonly ref struct Part21Line
{
    // Of a unit vector what keeps a corner five metres away within a hundred thousandth of a micrometre: solid modellers take what
    // misses by less than a tenth of a nanometre as meeting. Places are rounded before.
    private const int Decimals = 12;
    private const string NumberFormat = "0.0###########";

    /// <summary>Called by the compiler.</summary>
    public Part21Line(int literalLength, int formattedCount, Part21File file)
    {
        _ = literalLength + formattedCount;
        Text = file.Rent();
    }

    /// <summary>What is written so far.</summary>
    internal StringBuilder Text { get; }

    /// <summary>As it stands.</summary>
    public void AppendLiteral(string text) => Text.Append(text);

    /// <summary>A reference: <c>#12</c>.</summary>
    public void AppendFormatted(Ref reference) => Text.Append('#').Append(CultureInfo.InvariantCulture, $"{reference.Number}");

    /// <summary>A list of references: <c>(#12,#13)</c>.</summary>
    public void AppendFormatted(IEnumerable<Ref> references)
    {
        Text.Append('(');
        foreach (var reference in references)
        {
            AppendFormatted(reference);
            Text.Append(',');
        }

        EndList();
    }

    /// <summary>A whole number.</summary>
    public void AppendFormatted(int number) => Text.Append(CultureInfo.InvariantCulture, $"{number}");

    /// <summary>A list of whole numbers.</summary>
    public void AppendFormatted(IEnumerable<int> numbers)
    {
        Text.Append('(');
        foreach (var number in numbers)
        {
            AppendFormatted(number);
            Text.Append(',');
        }

        EndList();
    }

    /// <summary>A list of lists of whole numbers.</summary>
    public void AppendFormatted(IEnumerable<IEnumerable<int>> lists)
    {
        Text.Append('(');
        foreach (var list in lists)
        {
            AppendFormatted(list);
            Text.Append(',');
        }

        EndList();
    }

    /// <summary>A list of points.</summary>
    public void AppendFormatted(IEnumerable<Vector3d> points)
    {
        Text.Append('(');
        foreach (var point in points)
        {
            AppendFormatted(point);
            Text.Append(',');
        }

        EndList();
    }

    /// <summary>A number, to twelve decimals; always with a point.</summary>
    public void AppendFormatted(double number)
    {
        Span<char> digits = stackalloc char[64];
        _ = Numbers.Rounded(number, Decimals).TryFormat(digits, out var length, NumberFormat, CultureInfo.InvariantCulture);
        Text.Append(digits[..length]);
    }

    /// <summary>A point or a direction: <c>(1.0,0.0,0.0)</c>.</summary>
    public void AppendFormatted(Vector3d vector)
    {
        Text.Append('(');
        AppendFormatted(vector.X);
        Text.Append(',');
        AppendFormatted(vector.Y);
        Text.Append(',');
        AppendFormatted(vector.Z);
        Text.Append(')');
    }

    /// <summary>A text in quotes.</summary>
    public void AppendFormatted(string text) => Text.Append(Part21Text.Quoted(text));

    /// <summary><c>.T.</c> or <c>.F.</c>.</summary>
    public void AppendFormatted(bool value) => Text.Append(value ? ".T." : ".F.");

    // In place of the last comma.
    private void EndList()
    {
        if (Text[^1] == ',')
        {
            Text.Length--;
        }

        Text.Append(')');
    }
}

/// <summary>Texts as the format holds them (ISO 10303-21:2016, 6.4.3, from memory).</summary>
internal static class Part21Text
{
    /// <summary>
    /// In single quotes, which are doubled inside, as backslashes are. What is not printable ASCII stands as the hexadecimal
    /// digits of its number: four after <c>\X2\</c>, eight after <c>\X4\</c>.
    /// </summary>
    public static string Quoted(string text)
    {
        var quoted = new StringBuilder(text.Length + 2).Append('\'');
        foreach (var rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '\'' => quoted.Append("''"),
                '\\' => quoted.Append(@"\\"),
                >= ' ' and <= '~' => quoted.Append((char)rune.Value),
                <= 0xFFFF => quoted.Append(CultureInfo.InvariantCulture, $@"\X2\{rune.Value:X4}\X0\"),
                _ => quoted.Append(CultureInfo.InvariantCulture, $@"\X4\{rune.Value:X8}\X0\"),
            };
        }

        return quoted.Append('\'').ToString();
    }
}
