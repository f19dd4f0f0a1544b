using System.Collections.Immutable;
using System.Text;

namespace BridgeForm.Project.Files;

/// <summary>A field of a line.</summary>
/// <param name="Text">Its text without quotes and blanks around it.</param>
/// <param name="Column">Column where it begins, from 1.</param>
internal readonly record struct PriceField(string Text, int Column);

/// <summary>A line of a price list.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Fields">Its fields.</param>
/// <param name="Places">Which field holds which column.</param>
internal sealed record PriceLine(int Number, ImmutableArray<PriceField> Fields, int[] Places)
{
    /// <summary>The field of a column; empty at the end of the line when the line is too short.</summary>
    public PriceField this[int column] => Places[column] < Fields.Length
        ? Fields[Places[column]]
        : new PriceField("", Fields.Length == 0 ? 1 : Fields[^1].Column + Fields[^1].Text.Length);

    /// <summary>Fields of a line of comma-separated text; a field in double quotes may hold commas, and quotes doubled.</summary>
    public static ImmutableArray<PriceField> Split(string line)
    {
        var fields = ImmutableArray.CreateBuilder<PriceField>();
        var text = new StringBuilder();
        var (start, quoted) = (0, false);
        for (var i = 0; i <= line.Length; i++)
        {
            if (i == line.Length || (line[i] == ',' && !quoted))
            {
                fields.Add(new PriceField(text.ToString().Trim(), start + 1));
                text.Clear();
                (start, quoted) = (i + 1, false);
            }
            else if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                text.Append('"');
                i++;
            }
            else if (line[i] == '"')
            {
                quoted = !quoted;
            }
            else
            {
                text.Append(line[i]);
            }
        }

        return fields.ToImmutable();
    }
}
