using System.Globalization;
using BridgeForm.Output.Lists;

namespace BridgeForm.Cli.Text;

/// <summary>A list on the terminal: its tables, and below them what they are for and where they come from.</summary>
internal static class ListText
{
    /// <summary>In at most 100 columns.</summary>
    public static void Write(TextWriter output, ReferenceList list)
    {
        output.WriteLine(list.Title.ToUpperInvariant());
        foreach (var table in list.Tables)
        {
            if (table.Title.Length > 0)
            {
                Columns.Wrapped(output, table.Title, "");
            }

            Columns.Table(output, Folded(table), i => table.Columns[i].Form is not ColumnForm.Number);
        }

        foreach (var note in list.Notes)
        {
            Columns.Wrapped(output, note, "", "  ");
        }
    }

    // Words in the last column go on in the next line, below themselves.
    private static List<IReadOnlyList<string>> Folded(ListTable table)
    {
        List<IReadOnlyList<string>> rows = [[.. table.Columns.Select(c => c.Name)], .. table.Rows];
        if (table.Columns[^1].Form is not ColumnForm.Words)
        {
            return rows;
        }

        var room = Columns.Width - Enumerable.Range(0, table.Columns.Length - 1).Sum(i => rows.Max(r => r[i].Length) + Columns.Gap.Length);
        return [.. rows.SelectMany(row => Folds(row[^1], room).Select(
            (part, i) => (string[])[.. row.Take(row.Count - 1).Select(cell => i == 0 ? cell : ""), part]))];
    }

    private static IEnumerable<string> Folds(string text, int room)
    {
        using var lines = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        Columns.Wrapped(lines, text, "", null, room);
        return lines.ToString().TrimEnd('\n').Split('\n');
    }
}
