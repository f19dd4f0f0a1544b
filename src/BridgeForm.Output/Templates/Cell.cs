using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Templates;

/// <summary>What is put on a page as a whole: its lower left corner at the origin.</summary>
internal sealed record Cell(double Width, double Height, ImmutableArray<SheetEntity> Entities)
{
    /// <summary>What it is, for the index; empty for none.</summary>
    public string Title { get; init; } = string.Empty;

    /// <summary>Clear space between heading and drawing, metres.</summary>
    private const double Gap = 0.003;

    /// <summary>More than half the widest line, metres.</summary>
    private const double LineRoom = 0.0004;

    /// <summary>
    /// A block as one cell; notes are wrapped to the drawing's width but never narrower than <paramref name="notesWidth"/>.
    /// </summary>
    public static Cell Draw(TemplateBlock block, double notesWidth)
    {
        var box = BoxOf(block);
        var (width, height) = (box.MaxX - box.MinX, box.MaxY - box.MinY);
        var wide = Math.Max(notesWidth, width);
        var (heading, headingHeight) = Heading(block.Title, block.Notes, wide);
        var full = height + Gap + headingHeight;
        return new Cell(
            wide,
            full,
            [
                .. heading.Select(e => Moved(e, 0, full)),
                Window(block.Entities, box, new SheetPoint(0, 0)),
            ])
        {
            Title = block.Title,
        };
    }

    /// <summary>Box around a block's drawing, with room for half the width of its lines.</summary>
    public static SheetBox BoxOf(TemplateBlock block)
    {
        var box = PageBox.Of(block.Entities);
        return new SheetBox(box.MinX - LineRoom, box.MinY - LineRoom, box.MaxX + LineRoom, box.MaxY + LineRoom);
    }

    /// <summary>Title and notes below y = 0.</summary>
    public static (ImmutableArray<SheetText> Texts, double Height) Heading(string title, ImmutableArray<string> notes, double width)
    {
        var titles = PageText.Wrapped(title, width, PageText.Normal, bold: true);
        ImmutableArray<string> lines = [.. notes.SelectMany(n => PageText.Wrapped(n, width, PageText.Small))];
        var top = -PageText.HeightOf(titles.Length, PageText.Normal) - (Gap / 3);
        return (
            [
                .. PageText.Heading(0, 0, titles, title),
                .. PageText.Column(0, top, lines, PageText.Small).Cast<SheetText>(),
            ],
            -top + PageText.HeightOf(lines.Length, PageText.Small));
    }

    /// <summary>Part of a drawing with its lower left corner at a point.</summary>
    public static SheetWindow Window(ImmutableArray<SheetEntity> entities, SheetBox part, SheetPoint at) =>
        new(PageLayers.Note, new Sheet(string.Empty, PageLayers.All, entities), part, at);

    /// <summary>The cell's content with its lower left corner at a point of the page.</summary>
    public IEnumerable<SheetEntity> At(double x, double y) => Entities.Select(e => Moved(e, x, y));

    private static SheetEntity Moved(SheetEntity entity, double x, double y) => entity switch
    {
        SheetText text => text with { At = new SheetPoint(text.At.X + x, text.At.Y + y) },
        SheetLine line => line with { From = Moved(line.From, x, y), To = Moved(line.To, x, y) },
        SheetArea area => area with { Corners = [.. area.Corners.Select(p => Moved(p, x, y))] },
        SheetWindow window => window with { At = Moved(window.At, x, y) },
        _ => throw new NotSupportedException(entity.GetType().Name),
    };

    private static SheetPoint Moved(SheetPoint p, double x, double y) => new(p.X + x, p.Y + y);
}
