using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.ShopSheets;

/// <summary><c>labels.pdf</c>: a label a part, to cut apart and staple on: mark, section and length to find the stick by.</summary>
public static class LabelSheet
{
    private const double LeastWidth = 0.062;
    private const double Height = 0.025;
    private const double Pad = 0.002;

    /// <summary>Labels in the order of assembly.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="order">Ids of all parts in the order they are put up; the first gets number 1.</param>
    public static SheetBook Draw(BridgeModel model, IReadOnlyList<string> order)
    {
        var paper = Paper.Named(model.Parameters.Shop.Paper);
        var words = SheetWords.For(model, "Piece labels");
        var frame = PageFrame.On(paper, words, bars: false);
        var text = new QuantityText(model.Parameters.Units);
        var (width, height) = (frame.Body.MaxX - frame.Body.MinX, frame.Body.MaxY - frame.Body.MinY);
        var (columns, rows) = ((int)(width / LeastWidth), (int)(height / Height));
        var pieces = model.Pieces
            .SelectMany(p => p.Occurrences.Select(o => (o.Id, Piece: p, Place: o)))
            .ToDictionary(p => p.Id, p => (p.Piece, p.Place), StringComparer.Ordinal);
        var pages = order.Chunk(columns * rows).ToList();
        return new SheetBook(
            words.Title,
            [
                .. pages.Select((ids, page) => frame.Page(
                    ids.SelectMany((id, i) => Label(
                        new SheetBox(
                            frame.Body.MinX + (i % columns * width / columns),
                            frame.Body.MaxY - ((i / columns) + 1) * Height,
                            frame.Body.MinX + (((i % columns) + 1) * width / columns),
                            frame.Body.MaxY - (i / columns * Height)),
                        pieces[id].Piece,
                        pieces[id].Place,
                        id,
                        text,
                        (page * columns * rows) + i + 1)),
                    page + 1,
                    pages.Count)),
            ]);
    }

    private static IEnumerable<SheetEntity> Label(SheetBox box, Piece piece, Occurrence place, string id, QuantityText text, int number) =>
    [
        new SheetPolyline(
            PageLayers.Dim,
            [new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)],
            Closed: true),
        PageText.Left(box.MinX + Pad, box.MaxY - Pad - MarkHeight, piece.Mark, MarkHeight, bold: true),
        PageText.Right(
            box.MaxX - Pad, box.MaxY - Pad - PageText.Large, FormattableString.Invariant($"No. {number}"), PageText.Large,
            layer: PageLayers.Accent),
        PageText.Left(box.MinX + Pad, box.MinY + Pad + 0.0048, id, PageText.Normal),
        .. Wood(box, piece, id),
        PageText.Right(
            box.MaxX - Pad, box.MaxY - Pad - PageText.Large - ArrowDown, "arrow " + TurnWords.Arrow(piece, place), PageText.Small,
            bold: place.Turned),
        .. Size(box, piece, text),
        .. place.Turned || place.Turn.IsRolled ? Turn(box, TurnWords.Write(piece, place), place.Turned) : Array.Empty<SheetEntity>(),
    ];

    /// <summary>Section and length, and what is drilled into it; how many alone where all has no room.</summary>
    private static IEnumerable<SheetEntity> Size(SheetBox box, Piece piece, QuantityText text)
    {
        var size = $"{piece.Section} · {text.Size(piece.BlankLength)}";
        yield return PageText.Left(box.MinX + Pad, box.MinY + Pad, size, PageText.Large, bold: true);
        if (piece.Shape.Holes.IsEmpty)
        {
            yield break;
        }

        var room = box.MaxX - box.MinX - (3 * Pad) - PageText.Width(size, PageText.Large, bold: true);
        var words = ((string[])[HoleRows.Counted(piece.Shape, text), FormattableString.Invariant($"{piece.Shape.Holes.Length} holes")])
            .FirstOrDefault(w => PageText.Width(w, PageText.Small) <= room);
        if (words is not null)
        {
            yield return PageText.Right(box.MaxX - Pad, box.MinY + Pad, words, PageText.Small);
        }
    }

    /// <summary>What it is and its stock beside the id; shorter where that is long.</summary>
    private static IEnumerable<SheetEntity> Wood(SheetBox box, Piece piece, string id)
    {
        var room = box.MaxX - box.MinX - (3 * Pad) - PageText.Width(id, PageText.Normal);
        var role = RoleTable.Of(piece.Role).Printed;
        var words = ((string[])[$"{role} · {piece.Stock}", role]).FirstOrDefault(w => PageText.Width(w, PageText.Small) <= room);
        return words is null ? [] : [PageText.Right(box.MaxX - Pad, box.MinY + Pad + 0.0048, words, PageText.Small)];
    }

    /// <summary>End for end is bold: whoever puts the part up must turn it. What is rolled over goes on in one way only.</summary>
    private static IEnumerable<SheetEntity> Turn(SheetBox box, string words, bool turned) =>
        ((turned ? "TURNED: " : "rolled over: ") + words).Split(", ").Reverse().Select((line, i) =>
            PageText.Left(box.MinX + Pad, box.MinY + Pad + 0.0088 + (i * LineStep), line, PageText.Small, bold: turned));

    /// <summary>From the number down to the arrow's words.</summary>
    private const double ArrowDown = 0.0034;

    /// <summary>From one small line to the next: tails of letters clear the capitals below.</summary>
    private const double LineStep = 0.0027;

    /// <summary>Capitals of the mark: read from two steps away.</summary>
    private const double MarkHeight = 0.0055;
}
