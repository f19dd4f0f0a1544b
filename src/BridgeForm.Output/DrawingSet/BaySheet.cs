using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>A bay: deck from above and guard from within, and the parts they are made of.</summary>
internal static class BaySheet
{
    private const double Room = 0.029;

    /// <summary>The bay in the middle, the first one, whose ends differ, and the last one where it does not mirror the first.</summary>
    public static IEnumerable<DrawnPage> Of(DrawingContext context)
    {
        var last = context.Layout.Bays;
        var middle = (last / 2) + 1;
        yield return Page(context, middle, $"Bay on the ropes ({FramePoses.BayName(middle, last)})");
        if (middle != 1)
        {
            yield return Page(context, 1, $"End bay ({FramePoses.BayName(1, last)})");
        }

        if (middle != last && context.EndsDiffer)
        {
            yield return Page(context, last, $"End bay ({FramePoses.BayName(last, last)})");
        }
    }

    private static DrawnPage Page(DrawingContext context, int bay, string title)
    {
        var body = context.Body;
        var deck = new BayDeck(context, bay);
        var guard = new BayGuard(context, bay);
        var half = (body.MaxX - body.MinX) / 2;
        const double share = 0.76;
        var floor = body.MaxY - ((body.MaxY - body.MinY) * share);
        var canvas = Canvas.Twice(body, c =>
        {
            Place(context, c, deck.Box, new SheetBox(body.MinX, floor, body.MinX + half, body.MaxY), "Deck", deck.Note, deck.Draw);
            Place(context, c, guard.Box, new SheetBox(body.MinX + half, floor, body.MaxX, body.MaxY), "Left-hand guard", guard.Note, guard.Draw);
        });
        var ids = context.Shapes.Ids(context.Shapes.BayGroup(bay));
        var table = PartTable.Of(context, "Parts of this bay", ids, 0.16);
        var x = body.MinX;
        for (var next = 0; next < table.Rows.Length; x += table.Widths().Sum() + 0.008)
        {
            (next, _) = table.Set(canvas, x, floor - 0.002, body.MinY, next);
        }

        return new DrawnPage("E", title, "deck: from above; guard: from the middle of the deck towards the left; A at the left", canvas.Entities);
    }

    private static void Place(
        DrawingContext context, Canvas canvas, SheetBox box, SheetBox cell, string title, string note, Action<Canvas, ViewMap> draw)
    {
        var (w, h) = (box.MaxX - box.MinX, box.MaxY - box.MinY);
        var (roomW, roomH) = (cell.MaxX - cell.MinX - (2 * Room), cell.MaxY - cell.MinY - Room - Captions.Height);
        var scale = DrawingScale.Fitting(context.Text.Units, w, h, roomW, roomH);
        var left = cell.MinX + ((cell.MaxX - cell.MinX - (w / scale.Ratio)) / 2);
        var bottom = cell.MinY + Captions.Height + (Room * 0.38) + ((roomH - (h / scale.Ratio)) / 2);
        draw(canvas, ViewMap.Placing(box, left, bottom, scale.Ratio));
        canvas.Caption(cell.MinX, cell.MinY + Captions.Height, title, note, scale, context.Text);
    }
}

/// <summary>The deck of a bay, seen square to its boards; x along the boards, y to the left, origin at the bay's first node.</summary>
internal sealed class BayDeck
{
    private readonly DrawingContext _context;
    private readonly int _bay;
    private readonly View _view;
    private readonly SheetPoint _origin;
    private readonly IReadOnlyList<SeenLine> _lines;
    private readonly List<(string Mark, SheetBox Box)> _parts = [];

    /// <summary>The deck of a bay, with the bases at its ends.</summary>
    public BayDeck(DrawingContext context, int bay)
    {
        (_context, _bay) = (context, bay);
        _view = new View(context.Layout.Deck.Direction(bay), -Vector3d.UnitZ);
        _origin = _view.Of(context.Layout.Poses[bay - 1].Node);
        var shapes = context.Shapes;
        var ids = shapes.Ids(shapes.BayGroup(bay)).Where(i => IsDeck(i)).ToList();
        ids.AddRange(shapes.Ids(bay - 1).Concat(shapes.Ids(bay)).Where(i =>
            i.EndsWith("/base", StringComparison.Ordinal) || i.EndsWith("/packer", StringComparison.Ordinal)));
        _lines = [.. HiddenLines.Of([.. ids.Select(shapes.Of)], _view).Select(l => l with { From = Local(l.From), To = Local(l.To) })];
        Box = ViewLines.BoxOf(_lines);
        foreach (var id in ids.Where(IsDeck))
        {
            var box = shapes.Of(id).Cells.SelectMany(c => c.Corners).Select(c => Local(_view.Of(c)))
                .Aggregate(SheetBox.Empty, (b, p) => b.With(p.X, p.Y));
            _parts.Add((shapes.PieceAt(id)!.Mark, box));
        }
    }

    /// <summary>Box around the drawing.</summary>
    public SheetBox Box { get; }

    /// <summary>What is seen.</summary>
    public string Note => "seen square to the boards, right-hand side below; posts' feet dashed";

    /// <summary>Draws it with its figures.</summary>
    public void Draw(Canvas canvas, ViewMap map)
    {
        var (p, text) = (_context.Layout.Parameters, _context.Text);
        canvas.Draw(_lines, map, PageLayers.Pocket, PageLayers.Cut);
        foreach (var z in (double[])[-p.Frames.Post.Foot, p.Frames.Post.Foot])
        {
            canvas.Line(PageLayers.Hidden, map.Of(Box.MinX, z), map.Of(Box.MaxX, z));
        }

        var tops = _parts.OrderByDescending(s => s.Box.MaxY).ToList();
        var right = map.Of(Box.MaxX, 0).X;
        var filled = DeckWidth.Filled(p) / 2;
        SheetPoint Edge(double y) => map.Of(Box.MaxX, y);
        canvas.Upright(Edge(-p.Frames.Post.Foot), Edge(p.Frames.Post.Foot), right + 0.022, "between posts' feet " + text.Size(2 * p.Frames.Post.Foot));
        canvas.Upright(Edge(-filled), Edge(filled), right + 0.015, text.Size(2 * filled));
        canvas.Upright(Edge(filled), Edge(p.Frames.Post.Foot), right + 0.015, text.Size(p.Deck.SideGap));
        Steps(canvas, map, tops, right + 0.007);
        Lengths(canvas, map);
        foreach (var (mark, box) in _parts)
        {
            canvas.Label(PageText.Centered(map.Of((box.MinX + box.MaxX) / 2, 0).X, map.Of(0, (box.MinY + box.MaxY) / 2).Y - (PageText.Small / 2), mark, PageText.Small));
        }
    }

    private static bool IsDeck(string id) => id.Contains("/board-", StringComparison.Ordinal)
        || id.Contains("/tread-", StringComparison.Ordinal) || id.Contains("/stringer-", StringComparison.Ordinal);

    /// <summary>Width of one board and the gap to the next, where they lie side by side.</summary>
    private void Steps(Canvas canvas, ViewMap map, List<(string Mark, SheetBox Box)> parts, double x)
    {
        if (_context.Layout.Parameters.Deck.Stringer is not null || parts.Count < 2)
        {
            return;
        }

        var (first, second) = (parts[0].Box, parts[1].Box);
        SheetPoint Edge(double y) => map.Of(Box.MaxX, y);
        canvas.Upright(Edge(first.MinY), Edge(first.MaxY), x, _context.Text.Size(first.MaxY - first.MinY));
        canvas.Upright(Edge(second.MaxY), Edge(first.MinY), x, "gap " + _context.Text.Size(first.MinY - second.MaxY));
    }

    private void Lengths(Canvas canvas, ViewMap map)
    {
        var text = _context.Text;
        var y = map.Of(0, Box.MaxY).Y;
        var longest = _parts.MaxBy(s => s.Box.MaxX - s.Box.MinX).Box;
        var next = Local(_view.Of(_context.Layout.Poses[_bay].Node));
        canvas.Level(map.Of(longest.MinX, longest.MaxY), map.Of(longest.MaxX, longest.MaxY), y + 0.006, "over all " + text.Size(longest.MaxX - longest.MinX));
        canvas.Level(map.Of(0, Box.MaxY), map.Of(next.X, Box.MaxY), y + 0.0125, "node to node, along the boards " + text.Size(next.X));
        var below = map.Of(0, Box.MinY).Y;
        var stringer = _context.Layout.Parameters.Deck.Stringer;
        var treads = _parts.Where(s => s.Mark.StartsWith('T')).Select(s => s.Box).OrderBy(b => b.MinX).ToList();
        if (stringer is not null && treads.Count > 1)
        {
            canvas.Level(map.Of(treads[0].MinX, Box.MinY), map.Of(treads[0].MaxX, Box.MinY), below - 0.005, text.Size(treads[0].MaxX - treads[0].MinX));
            canvas.Level(map.Of(treads[0].MaxX, Box.MinY), map.Of(treads[1].MinX, Box.MinY), below - 0.005, "gap " + text.Size(treads[1].MinX - treads[0].MaxX));
        }
    }

    private SheetPoint Local(SheetPoint p) => new(p.X - _origin.X, p.Y - _origin.Y);
}
