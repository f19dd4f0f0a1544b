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

    /// <summary>The bay that is drawn with a frame: the one after it, and at B the one before.</summary>
    public int BayOf(int frame) => Math.Min(frame + 1, Layout.Bays);

    /// <summary>
    /// Whether support B needs drawings of its own: it does not where its end mirrors A's, as on a bridge on level supports.
    /// </summary>
    public bool EndsDiffer
    {
        get
        {
            var last = Layout.Bays;
            var (a, b) = (Layout.Levels[0], Layout.Levels[last]);
            return Math.Abs(Math.Abs(Layout.Poses[0].Slope) - Math.Abs(Layout.Poses[last].Slope)) > SlopeShown
                || Math.Abs(a.ChannelDepth - b.ChannelDepth) > LengthShown
                || Math.Abs(a.Top - b.Top) > LengthShown
                || Math.Abs(Layout.Deck.Lifts[0] - Layout.Deck.Lifts[last]) > LengthShown;
        }
    }

    // Half of the last figure that the sheets print: 0.1 degree and 1/16 in.
    private const double SlopeShown = 0.05 * Math.PI / 180;
    private const double LengthShown = 0.0254 / 32;

    /// <summary>An empty page.</summary>
    public Canvas NewCanvas() => new(Body);
}
