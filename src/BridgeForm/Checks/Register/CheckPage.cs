using System.Text;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Register;

/// <summary>The page of all checks, written from their declarations.</summary>
public static class CheckPage
{
    /// <summary>Markdown with LF line ends.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder();
        text.Append("# Checks\n\n");
        text.Append("Written by the program from its own list; a test compares this page with it.\n\n");
        text.Append(Caution.Text).Append("\n\n");
        text.Append("`holds`: the demand is not above the capacity. `review`: worth a second look, stops nothing. ");
        text.Append("`fails`: does not hold, and `check` ends with 1. `engineer`: cannot be judged here; where that is because no table "
            + "has a value for the wood, the verdict says \"not checked\" and `check` ends with 1 as well. In `report.json` these are ");
        text.Append("`pass`, `warn`, `fail` and `engineer`. A value that says \"from memory\" was not looked up in its standard; put your "
            + "own in its place under ");
        text.Append("`values`, `species` or `ropes` of the project file.\n\n");
        text.Append("Where there is nothing to compare a demand with, no ratio is given: it prints as `no capacity`, is null in "
            + "`report.json`, and such a check never holds.\n");
        foreach (var check in AllChecks.Declared)
        {
            text.Append("\n## ").Append(check.Title).Append("\n\n");
            text.Append('`').Append(check.Id).Append("` · ").Append(string.Join(", ", check.Statuses.Select(s => s.Word()))).Append("\n\n");
            text.Append(check.Compares).Append("\n\n");
            text.Append("Source: ").Append(check.Source).Append(".\n");
        }

        return text.ToString();
    }
}
