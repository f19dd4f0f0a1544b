namespace BridgeForm.Cli.Files;

/// <summary>The program's own look at every solid before anything is written.</summary>
internal static class ModelAudit
{
    /// <summary>Throws when a solid is open, inside out or not finite: a defect that must not reach a file.</summary>
    /// <exception cref="InvalidOperationException">Which piece and what is wrong with it.</exception>
    public static void Demand(BridgeModel model)
    {
        foreach (var piece in model.Pieces)
        {
            var faults = piece.Solid.Audit();
            if (faults.Length > 0)
            {
                throw new InvalidOperationException($"The solid of {piece.Mark} is faulty: {string.Join("; ", faults)}");
            }
        }
    }
}
