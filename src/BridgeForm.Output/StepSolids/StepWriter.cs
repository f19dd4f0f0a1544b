using BridgeForm.Output.Part21;
using BridgeForm.Roles;

namespace BridgeForm.Output.StepSolids;

/// <summary>
/// Writes the bridge as STEP, AP242: exact solids in millimetres, a product a mark in the piece's own axes, and an assembly with
/// every part in its place. Holes, ropes, bolts and what is bought round are cylinders.
/// </summary>
public static class StepWriter
{
    private const string Schema = "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 1 1 4 }";

    /// <summary>Writes the file; the stream stays open. Same model, same bytes.</summary>
    public static void Write(BridgeModel model, Stream stream)
    {
        using var file = new Part21File(stream, "model.step", ["Footbridge: one product a mark, millimetres", Caution.Text], Schema);
        var parts = new StepParts(file, model);
        parts.Wood();
        parts.Ropes();
        parts.Steel();
        parts.Beside();
        parts.End();
        file.End();
    }
}
