using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A page before it gets its number and title block.</summary>
/// <param name="Series">Letter of its number: G general, E enlarged, L lists.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Direction">Direction of view, in words.</param>
/// <param name="Content">What is drawn.</param>
internal sealed record DrawnPage(string Series, string Title, string Direction, ImmutableArray<SheetEntity> Content);

/// <summary>What every page is drawn from.</summary>
/// <param name="Model">The bridge.</param>
/// <param name="Shapes">Its bodies.</param>
/// <param name="Text">How figures are written.</param>
/// <param name="Body">Room for drawing on a sheet.</param>
internal sealed record DrawingContext(BridgeModel Model, BridgeShapes Shapes, DrawingText Text, SheetBox Body)
{
    /// <summary>Lines that parts lie on.</summary>
    public Frames.BridgeLayout Layout => Shapes.Layout;

    /// <summary>An empty page.</summary>
    public Canvas NewCanvas() => new(Body);
}
