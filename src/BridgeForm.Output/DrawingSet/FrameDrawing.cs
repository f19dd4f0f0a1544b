using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>
/// A frame in its own plane: x to the right (z of the bridge), y along n, origin on the ropes' axes, metres. The parts of its
/// bay are shown as short stubs cut at the frame.
/// </summary>
internal sealed class FrameDrawing
{
    /// <summary>Length of a stub: too short for the bay's slope to show. Metres.</summary>
    private const double StubLength = 0.004;
    private const double Shade = 0.14;

    private readonly DrawingContext _context;
    private readonly View _view;
    private readonly SheetPoint _node;
    private readonly ImmutableArray<string> _own;
    private readonly ImmutableArray<SheetArea> _cutFaces;

    /// <summary>The frame of an index.</summary>
    /// <param name="withBay">With stubs of its bay's parts.</param>
    public FrameDrawing(DrawingContext context, int frame, bool withBay = true)
    {
        _context = context;
        var pose = context.Layout.Poses[frame];
        _view = new View(Vector3d.UnitZ, pose.Up);
        _node = _view.Of(pose.Node);
        _own = [.. context.Shapes.Ids(frame).Where(i => !context.Shapes.RoleOf(i).StandsOnLanding)];
        var shapes = _own.Select(context.Shapes.Of).ToList();
        var faces = ImmutableArray.CreateBuilder<SheetArea>();
        string[] bay = withBay ? [.. context.Shapes.Ids(context.Shapes.BayGroup(context.BayOf(frame)))] : [];
        var atB = context.BayOf(frame) == frame;
        foreach (var id in bay.Where(RunsAlong))
        {
            var (shape, placement, stock) = context.Shapes.Stub(id, StubLength, atB);
            shapes.Add(shape);
            faces.Add(CutFace(placement, stock));
            Stubs.Add((PartId.Read(id)!.Value, SheetBoxOf(shape)));
        }

        // Of what does not run along the bay, the part of each kind that stands nearest to the frame is seen whole.
        foreach (var kind in bay.Where(i => !RunsAlong(i)).GroupBy(i => (context.Shapes.RoleOf(i).Role, PartId.Read(i)!.Value.Side)))
        {
            var nearest = context.Shapes.Of(atB ? kind.Last() : kind.First());
            shapes.Add(nearest);
            if (kind.Key.Role == Role.Picket)
            {
                _pickets.Add((kind.Key.Side, SheetBoxOf(nearest)));
            }
        }

        _cutFaces = faces.ToImmutable();
        Lines = [.. HiddenLines.Find(shapes, _view).Select(l => l with { From = Local(l.From), To = Local(l.To) })];
        var box = ViewLines.BoxOf(Lines);
        Box = box.With(0, -context.Layout.Parameters.Ropes.Rope.Radius);
    }

    /// <summary>Visible lines.</summary>
    public ImmutableArray<SeenLine> Lines { get; }

    /// <summary>Box around everything.</summary>
    public SheetBox Box { get; }

    /// <summary>Boxes of the stubs, in the bay's order: rails lowest first.</summary>
    public List<(PartId Id, SheetBox Box)> Stubs { get; } = [];

    private readonly List<(Side Side, SheetBox Box)> _pickets = [];

    /// <summary>The middle of the picket of one side that stands nearest to the frame; null without pickets.</summary>
    public SheetPoint? PicketAt(Side side) => _pickets.FindIndex(p => p.Side == side) is >= 0 and var i
        ? new SheetPoint((_pickets[i].Box.MinX + _pickets[i].Box.MaxX) / 2, (_pickets[i].Box.MinY + _pickets[i].Box.MaxY) / 2)
        : null;

    /// <summary>Boxes of the stubs of a role on one side.</summary>
    public List<(PartId Id, SheetBox Box)> StubsOf(Role role, Side side) => Stubs.FindAll(s => s.Id.Role == role && s.Id.Side == side);

    /// <summary>A place of the world in the frame's own plane.</summary>
    public SheetPoint Of(Solids.Vector3d world) => Local(_view.Of(world));

    /// <summary>Draws lines, cut faces, ropes and hidden holes; what lies outside a window is cut off.</summary>
    public void Draw(Canvas canvas, ViewMap map, SheetBox? window = null)
    {
        foreach (var face in _cutFaces.Where(f => window is not { } w || f.Corners.All(c => Within(w, c))))
        {
            canvas.Add(face with { Corners = [.. face.Corners.Select(map.Of)] });
        }

        canvas.Draw(Lines, map, PageLayers.Pocket, PageLayers.Cut, window);
        var p = _context.Layout.Parameters;
        foreach (var z in (double[])[-p.Ropes.Spacing / 2, p.Ropes.Spacing / 2])
        {
            if (window is not { } w || Within(w, new SheetPoint(z, 0)))
            {
                Rope(canvas, map, z, p.Ropes.Rope.Radius);
            }
        }
    }

    /// <summary>Netting where it meets the frame, its lower and its upper edge; null without it.</summary>
    public (SheetPoint Low, SheetPoint High)? Net(int frame, Side side)
    {
        if (_context.Layout.Parameters.Guard.Net is null)
        {
            return null;
        }

        var bay = _context.BayOf(frame);
        var panel = NetPanel.Lay(_context.Layout, bay, side);
        return bay == frame ? (Of(panel.LowTo), Of(panel.HighTo)) : (Of(panel.LowFrom), Of(panel.HighFrom));
    }

    /// <summary>Circle with centre lines.</summary>
    public static void Rope(Canvas canvas, ViewMap map, double z, double radius)
    {
        var at = map.Of(z, 0);
        canvas.Add(new SheetCircle(PageLayers.Cut, at, radius / map.Ratio));
        var reach = (radius / map.Ratio) + 0.002;
        canvas.Line(PageLayers.Dim, at.X - reach, at.Y, at.X + reach, at.Y);
        canvas.Line(PageLayers.Dim, at.X, at.Y - reach, at.X, at.Y + reach);
    }

    /// <summary>Way marks of the frame's own sticks.</summary>
    public void DrawWays(Canvas canvas, ViewMap map)
    {
        var shapes = _context.Shapes;
        foreach (var id in _own.Where(i => shapes.RoleOf(i).Role is Role.Base or Role.Post or Role.Brace))
        {
            foreach (var half in DrawnWay.Of(shapes.PieceAt(id)!, shapes.PlacementOf(id), _view, p => map.Of(Of(p)), map.Ratio))
            {
                canvas.Add(half);
            }
        }
    }

    private bool RunsAlong(string id) => _context.Shapes.RoleOf(id).Axis == RoleAxis.Along;

    private static bool Within(SheetBox w, SheetPoint p) => p.X >= w.MinX && p.X <= w.MaxX && p.Y >= w.MinY && p.Y <= w.MaxY;

    private SheetArea CutFace(Placement placement, CutStock stock)
    {
        var plane = placement.X.X < 0 ? stock.Far : stock.Near;
        var (y, z) = (stock.Width / 2, stock.Thickness / 2);
        SheetPoint Corner(double cy, double cz) => Local(_view.Of(placement.ToWorld(new Vector3d(plane.XAt(cy, cz), cy, cz))));
        if (stock.IsRound)
        {
            return new SheetArea(PageLayers.Note, [.. RoundStock.Corners(stock.Width).Select(c => Corner(c.Y, c.Z))], Shade);
        }

        return new SheetArea(PageLayers.Note, [Corner(-y, -z), Corner(y, -z), Corner(y, z), Corner(-y, z)], Shade);
    }

    private SheetBox SheetBoxOf(Shape shape)
    {
        var box = SheetBox.Empty;
        foreach (var corner in shape.Cells.SelectMany(c => c.Corners))
        {
            var p = Local(_view.Of(corner));
            box = box.With(p.X, p.Y);
        }

        return box;
    }

    private SheetPoint Local(SheetPoint p) => new(p.X - _node.X, p.Y - _node.Y);
}
