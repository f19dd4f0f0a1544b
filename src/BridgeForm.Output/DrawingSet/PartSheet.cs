using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Tables of the parts, heights and levels of the frames that are drawn and of their bays.</summary>
internal static class PartSheet
{
    /// <summary>The sheets.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var flow = new TableFlow(context.Body);
        foreach (var table in FrameSheet.Shown(context).SelectMany(f => FrameSheet.Tables(context, f)))
        {
            flow.Add(table);
        }

        if (FrameHoles.Table(context) is { } holes)
        {
            flow.Add(holes);
        }

        return flow.Pages.Select(c => new DrawnPage(DocumentType.List, "Frames and bays: parts, heights, levels", "tables", c.Entities));
    }
}
