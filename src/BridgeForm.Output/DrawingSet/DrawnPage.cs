using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A page before it gets its number and title block.</summary>
/// <param name="Type">Type of the document, as the title block names it.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Direction">Direction of view, in words.</param>
/// <param name="Content">What is drawn.</param>
internal sealed record DrawnPage(string Type, string Title, string Direction, ImmutableArray<SheetEntity> Content)
{
    /// <summary>Numbers of the drawings on it that marks on other sheets lead to.</summary>
    public ImmutableArray<int> Drawings { get; init; } = [];

    /// <summary>A cover whose words left the picture no room.</summary>
    public bool LacksPicture { get; init; }
}

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
    private const double LengthShown = Quantities.Units.MetresPerInch / 32;

    /// <summary>The title block has no room for all that the file gives: the sheet of notes has it.</summary>
    public bool TitleInFull { get; init; }

    /// <summary>By how much everything is enlarged when it is done: letters are laid out at the size of other printed pages.</summary>
    public double Enlargement { get; init; } = 1;

    /// <summary>Scales to draw to, largest first: true length over length before the page is enlarged.</summary>
    public ImmutableArray<DrawingScale> Scales =>
        [.. DrawingScale.All(Text.Units).Select(s => s with { Ratio = s.Ratio * Enlargement })];

    /// <summary>The plan stands above the elevation: third angle, as on sheets in inches.</summary>
    public bool PlanAbove => Text.Imperial;

    /// <summary>An empty page.</summary>
    public Canvas NewCanvas() => new(Body);
}

/// <summary>Size of the drawing sheets, landscape. Metres.</summary>
/// <param name="Name">As written in the title block.</param>
internal sealed record SheetSize(string Name, double Width, double Height)
{
    /// <summary>
    /// Height of capitals of the smallest text, metres: 2.5 mm on ISO sheets (ISO 3098 begins its useful sizes there, from memory),
    /// 0.12 in on those of inches (ASME Y14.2, from memory).
    /// </summary>
    public double LeastLetter { get; init; } = 0.12 * Quantities.Units.MetresPerInch;

    /// <summary>By how much a page laid out with the letters of other printed pages is enlarged.</summary>
    public double Enlargement => LeastLetter / PageText.Small;

    /// <summary>
    /// ANSI B (11 × 17 in) for imperial and ISO A3 for metric projects: the largest sheets that office printers and copy shops
    /// take, still readable when a letter or A4 printer reduces them. A larger sheet, or the other system's, when
    /// <c>shop.paper</c> names one; rolls give Arch D sheets.
    /// </summary>
    public static SheetSize Choose(BridgeParameters parameters)
    {
        var name = parameters.Shop.Paper switch
        {
            "arch-d" or "roll-24" or "roll-36" => "arch-d",
            "a1" or "a3" or "tabloid" => parameters.Shop.Paper,
            _ => parameters.Units == UnitSystem.Imperial ? "tabloid" : "a3",
        };
        var paper = Paper.Named(name);
        const double iso = 0.0025;
        var size = new SheetSize(Title(name), paper.Height, paper.Width);
        return name is "a1" or "a3" ? size with { LeastLetter = iso } : size;
    }

    private static string Title(string name) => name switch
    {
        "tabloid" => "ANSI B (11 × 17 in)",
        "arch-d" => "Arch D (24 × 36 in)",
        "a3" => "ISO A3 (297 × 420 mm)",
        _ => "ISO A1 (594 × 841 mm)",
    };
}
