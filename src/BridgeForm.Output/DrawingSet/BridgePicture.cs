using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A still picture of the bridge: the isometric view alone, for where nothing else can be shown.</summary>
public static class BridgePicture
{
    private const double Width = 0.240;
    private const double Height = 0.160;
    private const double Edge = 0.005;

    /// <summary>One page of 240 by 160 mm.</summary>
    public static SheetPage Of(BridgeModel model)
    {
        var room = new SheetBox(Edge, Edge, Width - Edge, Height - Edge);
        var context = new DrawingContext(model, new BridgeShapes(model), new DrawingText(model.Parameters.Units), room);
        var canvas = context.NewCanvas();
        // Without a scale: a screen shows it in any size.
        var (title, _) = IsometricView.Draw(context, canvas, room);
        return new SheetPage(Width, Height, new Sheet($"{model.Parameters.Name}: {title}", PageLayers.All, canvas.Entities));
    }
}
