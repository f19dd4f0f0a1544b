using System.Text;

namespace BridgeForm.Output.Lists;

/// <summary>The page of all lists but the checks, which have one of their own.</summary>
public static class ListPage
{
    private const string Checks = "checks";

    /// <summary>Markdown with LF line ends.</summary>
    public static string Markdown()
    {
        var kinds = AllLists.Kinds.Where(k => k.Word is not Checks).ToList();
        var text = new StringBuilder();
        text.Append("# Tables\n\nWritten by the program from its own tables; a test compares this page with them. ");
        text.Append("`bridgeform list WORD` prints each of them: ");
        text.AppendJoin(", ", kinds.Select(k => $"[{k.Word}](#{k.Word})")).Append("; `bridgeform list ").Append(Checks);
        text.Append("` those of [checks.md](checks.md). What each key takes besides: [project-file.md](project-file.md).\n");
        foreach (var list in kinds.Select(k => k.Make()))
        {
            List(text, list);
        }

        return text.ToString();
    }

    private static void List(StringBuilder text, ReferenceList list)
    {
        text.Append("\n## ").Append(list.Title).Append('\n');
        foreach (var table in list.Tables)
        {
            _ = table.Title.Length > 0 ? text.Append("\n### ").Append(table.Title).Append('\n') : text;
            text.Append("\n| ").AppendJoin(" | ", table.Columns.Select(c => c.Name)).Append(" |\n|");
            text.AppendJoin('|', table.Columns.Select(c => c.Form is ColumnForm.Number ? "---:" : "---")).Append("|\n");
            foreach (var row in table.Rows)
            {
                text.Append("| ").AppendJoin(" | ", row.Select((cell, i) => Cell(table.Columns[i], cell))).Append(" |\n");
            }
        }

        foreach (var note in list.Notes)
        {
            text.Append('\n').Append(note).Append('\n');
        }
    }

    private static string Cell(ListColumn column, string text) => column.Form is ColumnForm.Key ? $"`{text}`" : text;
}
