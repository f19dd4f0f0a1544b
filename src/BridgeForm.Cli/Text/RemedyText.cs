namespace BridgeForm.Cli.Text;

/// <summary>What would pass, and what people who handle the ropes must know.</summary>
internal static class RemedyText
{
    /// <summary>Changes that would make failing checks pass; nothing when there are none.</summary>
    public static void WriteRemedies(TextWriter output, BridgeModel model)
    {
        if (model.Remedies.IsEmpty)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine("WHAT WOULD PASS");
        foreach (var remedy in model.Remedies)
        {
            Columns.Wrapped(output, $"{remedy.CheckId}: {remedy.Text}", "", "  ");
        }
    }

    /// <summary>Cautions of rope work.</summary>
    public static void WriteCautions(TextWriter output, BridgeModel model)
    {
        output.WriteLine();
        output.WriteLine("WITH THE ROPES");
        foreach (var caution in model.Ropework.Cautions)
        {
            Columns.Wrapped(output, "- " + caution, "", "  ");
        }
    }
}
