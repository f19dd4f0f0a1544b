using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>The deck of a bay, seen square to its boards; x along the boards, y to the left, origin at the bay's first node.</summary>
internal sealed class BayDeck
{
    private readonly DrawingContext _context;
    private readonly int _bay;
    private readonly View _view;
    private readonly SheetPoint _origin;
    private readonly IReadOnlyList<SeenLine> _lines;
    private readonly List<DeckPart> _parts = [];

    /// <summary>The deck of a bay, with the bases at its ends.</summary>
    public BayDeck(DrawingContext context, int bay)
    {
        (_context, _bay) = (context, bay);
        _view = new View(context.Layout.Deck.Direction(bay), -Vector3d.UnitZ);
        _origin = _view.Of(context.Layout.Poses[bay - 1].Node);
        var shapes = context.Shapes;
        var ids = shapes.Ids(shapes.BayGroup(bay)).Where(i => shapes.RoleOf(i).Section == DrawingSection.Deck).ToList();
        var under = shapes.Ids(bay - 1).Concat(shapes.Ids(bay)).Where(i => RoleTable.IsUnder(shapes.RoleOf(i).Role, DrawingSection.Deck));
        _lines = [
            .. HiddenLines.Find([.. ids.Concat(under).Select(shapes.Of)], _view)
                .Select(l => l with { From = Local(l.From), To = Local(l.To) }),
        ];
        Box = ViewLines.BoxOf(_lines);
        foreach (var id in ids.Where(i => !shapes.RoleOf(i).LiesOnTop))
        {
            var box = shapes.Of(id).Cells.SelectMany(c => c.Corners).Select(c => Local(_view.Of(c)))
                .Aggregate(SheetBox.Empty, (b, p) => b.With(p.X, p.Y));
            _parts.Add(new DeckPart(id, shapes.PieceAt(id)!.Mark, box, RoleTable.IsUnder(shapes.RoleOf(id).Role, DrawingSection.Deck)));
        }
    }

    /// <summary>Box around the drawing.</summary>
    public SheetBox Box { get; }

    /// <summary>What is seen.</summary>
    public string Note => OnStringers
        ? "seen square to the treads, right-hand side below; posts' feet and stringers below the treads dashed. " + DrawnWay.Words
        : "seen square to the boards, right-hand side below; posts' feet dashed. " + DrawnWay.Words;

    private bool OnStringers => _context.Layout.Parameters.Deck.Stringer is not null;

    private IEnumerable<DeckPart> Stringers => _parts.Where(p => p.IsStringer);

    private IEnumerable<DeckPart> Tops => _parts.Where(p => !p.IsStringer);

    /// <summary>Draws it with its figures.</summary>
    public void Draw(Canvas canvas, ViewMap map)
    {
        var (p, text) = (_context.Layout.Parameters, _context.Text);
        canvas.Draw(_lines, map, PageLayers.Pocket, PageLayers.Cut);
        foreach (var z in (double[])[-p.Frames.Post.Foot, p.Frames.Post.Foot])
        {
            canvas.Line(PageLayers.Hidden, map.Of(Box.MinX, z), map.Of(Box.MaxX, z));
        }

        var right = map.Of(Box.MaxX, 0).X;
        var filled = DeckWidth.Filled(p) / 2;
        SheetPoint Edge(double y) => map.Of(Box.MaxX, y);
        canvas.Upright(
            Edge(-p.Frames.Post.Foot), Edge(p.Frames.Post.Foot), right + 0.022, "between posts' feet " + text.Size(2 * p.Frames.Post.Foot));
        canvas.Upright(Edge(-filled), Edge(filled), right + 0.015, text.Size(2 * filled));
        canvas.Upright(Edge(filled), Edge(p.Frames.Post.Foot), right + 0.015, text.Size(p.Deck.SideGap));
        Steps(canvas, map, right + 0.007);
        Lengths(canvas, map);
        MarkStringers(canvas, map);
        foreach (var half in Tops.SelectMany(t => DrawnWay.Of(
            _context.Shapes.PieceAt(t.Id)!, _context.Shapes.PlacementOf(t.Id), _view, p => map.Of(Local(_view.Of(p))), map.Ratio)))
        {
            canvas.Add(half);
        }

        MarkTops(canvas, map);
    }

    /// <summary>Marks on boards and treads; those of treads between two stringers, along the tread where it is narrow.</summary>
    private void MarkTops(Canvas canvas, ViewMap map)
    {
        double[] middles = [.. Stringers.Select(s => s.MidY).OrderDescending()];
        foreach (var part in Tops)
        {
            var at = map.Of(part.MidX, middles.Length > 1 ? (middles[0] + middles[1]) / 2 : part.MidY);
            var level = PageText.Centered(at.X, at.Y - (PageText.Small / 2), part.Mark, PageText.Small);
            var half = PageText.Width(part.Mark, PageText.Small) / 2;
            var turned = level with { At = new SheetPoint(at.X + (PageText.Small / 2), at.Y - half), Turn = Math.PI / 2 };
            if (2 * half < (part.Box.MaxX - part.Box.MinX) / map.Ratio)
            {
                canvas.Label(level);
            }
            else
            {
                canvas.Label(turned);
            }
        }
    }

    /// <summary>Stringers below the treads dashed, with their marks beside the deck: on a tread they would name the tread.</summary>
    private void MarkStringers(Canvas canvas, ViewMap map)
    {
        foreach (var part in Stringers)
        {
            var box = part.Box;
            foreach (var y in (double[])[box.MinY, box.MaxY])
            {
                canvas.Line(PageLayers.Hidden, map.Of(box.MinX, y), map.Of(box.MaxX, y));
            }

            var seen = Math.Max(box.MinX, Math.Min(box.MaxX, Tops.Min(t => t.Box.MinX)));
            canvas.Leader(
                map.Of((box.MinX + seen) / 2, part.MidY),
                new SheetPoint(map.Of(Box.MinX, 0).X - 0.008, map.Of(0, part.MidY).Y + 0.004),
                part.Mark,
                toLeft: true);
        }
    }

    /// <summary>Width of one board and the gap to the next, where they lie side by side.</summary>
    private void Steps(Canvas canvas, ViewMap map, double x)
    {
        var parts = _parts.OrderByDescending(s => s.Box.MaxY).ToList();
        if (OnStringers || parts.Count < 2)
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
        var longest = _parts.MaxBy(s => s.Box.MaxX - s.Box.MinX)!.Box;
        var next = Local(_view.Of(_context.Layout.Poses[_bay].Node));
        canvas.Level(
            map.Of(longest.MinX, longest.MaxY), map.Of(longest.MaxX, longest.MaxY), y + 0.006,
            "overall " + text.Size(longest.MaxX - longest.MinX));
        canvas.Level(
            map.Of(0, Box.MaxY), map.Of(next.X, Box.MaxY), y + 0.0125,
            $"node to node, along the {(OnStringers ? "deck" : "boards")} " + text.Size(next.X));
        var below = map.Of(0, Box.MinY).Y;
        var treads = Tops.Select(s => s.Box).OrderBy(b => b.MinX).ToList();
        if (OnStringers && treads.Count > 1)
        {
            canvas.Level(
                map.Of(treads[0].MinX, Box.MinY), map.Of(treads[0].MaxX, Box.MinY), below - 0.005,
                text.Size(treads[0].MaxX - treads[0].MinX));
            canvas.Level(
                map.Of(treads[0].MaxX, Box.MinY), map.Of(treads[1].MinX, Box.MinY), below - 0.005,
                "gap " + text.Size(treads[1].MinX - treads[0].MaxX));
        }
    }

    private SheetPoint Local(SheetPoint p) => new(p.X - _origin.X, p.Y - _origin.Y);

    /// <summary>A board, tread or stringer where it lies.</summary>
    private sealed record DeckPart(string Id, string Mark, SheetBox Box, bool IsStringer)
    {
        /// <summary>Its middle, lengthways of the deck.</summary>
        public double MidX => (Box.MinX + Box.MaxX) / 2;

        /// <summary>Its middle, across the deck.</summary>
        public double MidY => (Box.MinY + Box.MaxY) / 2;
    }
}
