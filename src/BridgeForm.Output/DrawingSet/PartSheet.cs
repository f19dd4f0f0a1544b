using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Tables of the parts, heights and levels of the frames that are drawn and of their bays.</summary>
internal static class PartSheet
{
    /// <summary>The sheets.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var flow = new TableFlow(context.Body);
        var shown = FrameSheet.Shown(context).ToList();
        foreach (var table in (IEnumerable<FlowTable>)
            [.. shown.Select(f => FrameSheet.Parts(context, f)), FrameSheet.Heights(context, shown), FrameSheet.Levels(context, shown)])
        {
            flow.Add(table);
        }

        if (FramePlates.Table(context) is { } plates)
        {
            flow.Add(plates);
        }

        if (FrameHoles.Table(context) is { } holes)
        {
            flow.Add(holes);
        }

        return flow.Pages.Select(c => new DrawnPage(DocumentType.List, "Frames and bays: parts, heights, levels", "tables", c.Entities));
    }
}
