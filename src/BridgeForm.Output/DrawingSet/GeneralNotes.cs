using BridgeForm.Roles;
namespace BridgeForm.Output.DrawingSet;

/// <summary>Notes that hold for all sheets.</summary>
internal static class GeneralNotes
{
    /// <summary>The notes in order.</summary>
    public static IEnumerable<string> Of(DrawingContext context)
    {
        var p = context.Model.Parameters;
        var words = context.Text.Words;
        yield return Caution.Text;
        yield return "Levels are heights above the rope's axis at support A; stations are measured level from A. Left and right are those of someone walking from A to B. North by others.";
        yield return $"Shape: bridge complete and empty at {words.Temperature(p.Site.ReferenceTemperature)}. The crew sets the ropes by the hoisting table, not by these levels.";
        yield return "Written figures go before measured ones. Check a scale bar before measuring on a print.";
        yield return "Wood touches rope nowhere but in the channels. Ease the channels' mouths. Zinc on the rope must not bear on copper-treated wood: use a liner that is not metal.";
        yield return "Brush every cut, hole and channel in treated wood with field preservative. Fasteners in treated wood: hot-dip galvanised or stainless.";
        yield return "Angles of cuts are from square, as a saw is set: mitre / bevel. Signs and every piece: cut list. True-scale templates and saw set-ups are in their own files.";
        yield return "Supports, anchors, saddles and terminations are not designed here; forces on them: load cases.";
    }
}
