using System.Text;

namespace BridgeForm.Project.Reading.Faults;

/// <summary>docs/faults.md: every code with cause and cure, from the table.</summary>
public static class FaultPage
{
    /// <summary>The whole page.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder("# Faults\n\nMade from the program's own table of faults; a test compares.\n\n");
        text.Append("What is wrong in a project file or a price list is told on standard error with its place and what would be right, all "
            + "of it at once, ");
        text.Append("and the program ends with 2 ([exit codes](../README.md#exit-codes)):\n\n");
        text.Append("```\nbridge.yaml:5:9: error: span: '30' has no unit; a length is written with in, ft, mm, cm or m, as in 36 ft "
            + "[not-a-quantity]\n```\n\n");
        text.Append("The words may change from one version to the next; the code in brackets at the end of the line stays. ");
        text.Append("Faults are printed only: `report.json` is written of a bridge that could be built. ");
        text.Append("What concerns files and folders, or the command line, has no code.\n");
        foreach (var group in FaultTable.Groups)
        {
            text.Append("\n## ").Append(group.Title).Append("\n\n| code | cause | cure |\n|---|---|---|\n");
            foreach (var row in group.Rows)
            {
                text.Append("| `").Append(row.Id).Append("` | ").Append(row.Cause).Append(" | ").Append(row.Cure).Append(" |\n");
            }
        }

        return text.ToString();
    }
}
