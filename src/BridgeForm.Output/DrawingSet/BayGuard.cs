using BridgeForm.Checks.Codes;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>The left guard of a bay seen from the deck; x along the bay's chord, y square to it, origin at its first node.</summary>
internal sealed class BayGuard
{
    private readonly DrawingContext _context;
    private readonly int _bay;
    private readonly View _view;
    private readonly SheetPoint _origin;
    private readonly IReadOnlyList<SeenLine> _lines;
    private readonly List<Bar> _rails = [];
    private readonly Bar _cap;
    private readonly Bar? _handrail;
    private readonly Bar? _picket;

    /// <summary>The guard of a bay, with the left halves of its frames.</summary>
    public BayGuard(DrawingContext context, int bay)
    {
        (_context, _bay) = (context, bay);
        var (from, to) = (context.Layout.Poses[bay - 1].Node, context.Layout.Poses[bay].Node);
        var along = (to - from).Normalized();
        _view = new View(along, Vector3d.UnitZ.Cross(along));
        _origin = _view.Of(from);
        var shapes = context.Shapes;
        var ids = shapes.Ids(bay - 1).Concat(shapes.Ids(bay))
            .Where(i => RoleTable.IsUnder(shapes.RoleOf(i).Role, DrawingSection.Guard) && SideOf(i) != Side.Right).ToList();
        var own = shapes.Ids(shapes.BayGroup(bay))
            .Where(i => shapes.RoleOf(i).Section == DrawingSection.Guard && SideOf(i) == Side.Left)
            .ToList();
        ids.AddRange([.. shapes.DeckFromSide(bay), .. own]);
        _lines = [.. HiddenLines.Find([.. ids.Select(shapes.Of)], _view).Select(l => l with { From = Local(l.From), To = Local(l.To) })];
        Box = ViewLines.BoxOf(_lines);
        _rails.AddRange(own.Where(i => shapes.RoleOf(i).Role == Role.Rail).Select(BarOf).OrderBy(r => r.Middle.Y));
        _cap = BarOf(own.Single(i => shapes.RoleOf(i).Role == Role.Cap));
        _handrail = own.Where(i => shapes.RoleOf(i).Role == Role.Handrail).Select(BarOf).FirstOrDefault();
        _picket = own.Where(i => shapes.RoleOf(i).Role == Role.Picket).Select(BarOf).FirstOrDefault();
    }

    /// <summary>Box around the drawing.</summary>
    public SheetBox Box { get; }

    /// <summary>What is seen.</summary>
    public static string Note => "seen from the deck, square to the bay; cuts: A end / B end. " + DrawnWay.Words;

    /// <summary>Draws it with its figures.</summary>
    public void Draw(Canvas canvas, ViewMap map)
    {
        var text = _context.Text;
        canvas.Draw(_lines, map, PageLayers.Pocket, PageLayers.Cut);
        foreach (var half in _rails.Append(_cap).SelectMany(
            b => DrawnWay.Of(b.Piece, b.Placement, _view, w => map.Of(Local(_view.Of(w))), map.Ratio)))
        {
            canvas.Add(half);
        }

        foreach (var bar in _rails)
        {
            Name(canvas, map, bar, $"{bar.Piece.Mark}  {text.Size(bar.Piece.BlankLength)}  miter {Degrees(bar.Near.Mitre)} / "
                + $"{Degrees(bar.Far.Mitre)}");
        }

        Name(canvas, map, _cap, $"{_cap.Piece.Mark}  {text.Size(_cap.Piece.BlankLength)}  bevel {Degrees(_cap.Near.Bevel)} / "
            + $"{Degrees(_cap.Far.Bevel)}");
        Inner(canvas, map);
        Gaps(canvas, map);
        Net(canvas, map);
        var p = _context.Layout.Parameters;
        var (a, b) = (Foot(_bay - 1), Foot(_bay));
        canvas.Level(map.Of(a), map.Of(b), map.Of(0, Box.MinY).Y - 0.007, "posts at the base's top " + text.Size(b.X - a.X));
        var head = p.Frames.Post.Length * Elementary.Cos(p.Frames.Post.Lean);
        var (c, d) = (Foot(_bay - 1, head), Foot(_bay, head));
        canvas.Level(map.Of(c), map.Of(d), map.Of(0, Box.MaxY).Y + 0.006, "posts at the heads " + text.Size(d.X - c.X));
    }

    /// <summary>Marks of handrail and pickets, and the widest gap beside a picket.</summary>
    private void Inner(Canvas canvas, ViewMap map)
    {
        var left = map.Of(Box.MinX, 0).X;
        if (_handrail is { } handrail)
        {
            var at = map.Of(handrail.Middle);
            canvas.Leader(
                at, new SheetPoint(at.X + 0.010, map.Of(0, Box.MaxY).Y + 0.011),
                $"{handrail.Piece.Mark} handrail  {_context.Text.Size(handrail.Piece.BlankLength)}");
        }

        if (_picket is { } picket && PicketGaps.Widest(_context.Layout, _bay) is { } gap)
        {
            var at = map.Of(picket.Middle);
            canvas.Leader(
                at, new SheetPoint(left - 0.002, map.Of(0, Box.MinY).Y - 0.011),
                $"{picket.Piece.Mark} and others: pickets, gaps up to {_context.Text.Size(gap)}");
        }
    }

    /// <summary>Edges of the netting and the cross that stands for a panel, with its name.</summary>
    private void Net(Canvas canvas, ViewMap map)
    {
        if (_context.Layout.Parameters.Guard.Net is not { } net)
        {
            return;
        }

        var panel = NetPanel.Lay(_context.Layout, _bay, Side.Left);
        SheetPoint At(Vector3d p) => map.Of(Local(_view.Of(p)));
        SheetPoint[] corners = [At(panel.LowFrom), At(panel.LowTo), At(panel.HighTo), At(panel.HighFrom)];
        for (var i = 0; i < corners.Length; i++)
        {
            canvas.Line(PageLayers.Hidden, corners[i], corners[(i + 1) % corners.Length]);
        }

        canvas.Line(PageLayers.Dim, corners[0], corners[2]);
        canvas.Line(PageLayers.Dim, corners[1], corners[3]);
        var middle = At(panel.Middle);
        canvas.Leader(
            middle, new SheetPoint(middle.X + 0.008, middle.Y + 0.002), "net, opening " + _context.Text.Size(net.Opening));
    }

    /// <summary>Clear between rails, square to them, beside the drawing.</summary>
    private void Gaps(Canvas canvas, ViewMap map)
    {
        var x = map.Of(Box.MaxX, 0).X + 0.009;
        for (var i = 1; i < _rails.Count; i++)
        {
            var (low, high) = (_rails[i - 1], _rails[i]);
            var across = Math.Abs(low.Placement.Y.Dot(high.World - low.World));
            var clear = across - ((low.Piece.Shape.Width + high.Piece.Shape.Width) / 2);
            var lean = Math.Abs(_view.Up.Dot(low.Placement.Y)) / 2;
            var (from, to) = (low.End.Y + (lean * low.Piece.Shape.Width), high.End.Y - (lean * high.Piece.Shape.Width));
            canvas.Upright(map.Of(low.End.X, from), map.Of(high.End.X, to), x, text(clear));
        }

        if (_rails.Count < 2)
        {
            return;
        }

        canvas.Label(
            PageText.Left(
                x - 0.006, map.Of(0, _rails[^1].End.Y).Y + 0.006, "clear, square to the rails", PageText.Small));
        string text(double clear) => _context.Text.Size(clear);
    }

    /// <summary>Along the middle of a bar; where that is too long for all words, its first two, or its mark alone.</summary>
    private static void Name(Canvas canvas, ViewMap map, Bar bar, string words)
    {
        var (at, end) = (map.Of(bar.Middle), map.Of(bar.End));
        var turn = Elementary.Atan2(end.Y - at.Y, end.X - at.X);
        var (sin, cos) = Elementary.SinCos(turn);
        SheetText Along(string text)
        {
            var (half, drop) = (PageText.Width(text, PageText.Small) / 2, PageText.Small / 2);
            return PageText.Left(
                at.X - (half * cos) + (drop * sin), at.Y - (half * sin) - (drop * cos), text, PageText.Small) with
            { Turn = turn };
        }

        var parts = words.Split("  ");

        // A name that found no room on its bar says whose it is.
        var placed = canvas.Label(
            t => Canvas.Leading(t, at, PageText.Small) is { } way ? canvas.Cost(way, at) : 0,
            Along(words), Along(parts[0] + "  " + parts[1]), Along(parts[0]));
        if (Canvas.Leading(placed, at, PageText.Small) is { } from)
        {
            canvas.LeaderLine(from, at);
        }
    }

    private static Side SideOf(string id) => PartId.Read(id)!.Value.Side;

    private Bar BarOf(string id)
    {
        var (piece, placement) = (_context.Shapes.PieceAt(id)!, _context.Shapes.PlacementOf(id));
        var world = placement.ToWorld(new Vector3d(piece.BlankLength / 2, 0, 0));
        var turned = placement.X.X < 0;
        var end = placement.ToWorld(new Vector3d(turned ? 0 : piece.BlankLength, 0, 0));
        return new Bar(piece, placement, world, Local(_view.Of(world)), Local(_view.Of(end)), turned);
    }

    private SheetPoint Foot(int frame, double up = 0)
    {
        var pose = _context.Layout.Poses[frame];
        return Local(_view.Of(pose.At(0, _context.Layout.Levels[frame].Top + up, 0)));
    }

    private static string Degrees(double radians) => Numbers.Fixed(Numbers.Degrees(radians), 1) + "°";

    private SheetPoint Local(SheetPoint p) => new(p.X - _origin.X, p.Y - _origin.Y);

    /// <summary>A rail or cap where it lies.</summary>
    private sealed record Bar(Piece Piece, Placement Placement, Vector3d World, SheetPoint Middle, SheetPoint End, bool Turned)
    {
        /// <summary>The cut at the left of the drawing.</summary>
        public EndCut Near => Turned ? Piece.Far : Piece.Near;

        /// <summary>The cut at the right.</summary>
        public EndCut Far => Turned ? Piece.Near : Piece.Far;
    }
}
