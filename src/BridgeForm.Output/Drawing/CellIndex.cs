namespace BridgeForm.Output.Drawing;

/// <summary>Convex cells by where they lie on paper, in upright strips.</summary>
internal sealed class CellIndex
{
    private readonly List<(ShapeCell Cell, SheetBox Box, double Nearest)>[] _strips;
    private readonly double _left;
    private readonly double _pitch;

    private CellIndex(List<(ShapeCell Cell, SheetBox Box, double Nearest)>[] strips, double left, double pitch) =>
        (_strips, _left, _pitch) = (strips, left, pitch);

    /// <summary>All cells as seen in a view.</summary>
    public static CellIndex Build(IEnumerable<ShapeCell> cells, View view)
    {
        var placed = cells.Select(c => (Cell: c, Box: BoxOf(c, view), Nearest: c.Corners.Max(view.Toward.Dot))).ToList();
        var all = placed.Aggregate(SheetBox.Empty, (box, c) => box.Union(c.Box));
        var count = Math.Max(1, placed.Count / 4);
        var pitch = placed.Count == 0 ? 1 : Math.Max((all.MaxX - all.MinX) / count, double.Epsilon);
        var strips = new List<(ShapeCell Cell, SheetBox Box, double Nearest)>[count];
        for (var i = 0; i < count; i++)
        {
            strips[i] = [];
        }

        var index = new CellIndex(strips, all.MinX, pitch);
        foreach (var cell in placed)
        {
            for (var i = index.StripAt(cell.Box.MinX); i <= index.StripAt(cell.Box.MaxX); i++)
            {
                strips[i].Add(cell);
            }
        }

        return index;
    }

    /// <summary>Cells that may hide an edge, each at least once.</summary>
    public IEnumerable<ShapeCell> Before(ShapeEdge edge, View view)
    {
        var (from, to) = (view.Of(edge.From), view.Of(edge.To));
        var box = SheetBox.Empty.With(from.X, from.Y).With(to.X, to.Y);
        var farthest = Math.Min(view.Toward.Dot(edge.From), view.Toward.Dot(edge.To));
        var (first, last) = (StripAt(box.MinX), StripAt(box.MaxX));
        for (var i = first; i <= last; i++)
        {
            foreach (var (cell, cellBox, nearest) in _strips[i])
            {
                // In more than one strip: taken in the first that both reach.
                var isFirst = i == first || StripAt(cellBox.MinX) == i;
                if (isFirst && nearest > farthest && Meets(box, cellBox))
                {
                    yield return cell;
                }
            }
        }
    }

    private static bool Meets(SheetBox a, SheetBox b) =>
        a.MinX <= b.MaxX && b.MinX <= a.MaxX && a.MinY <= b.MaxY && b.MinY <= a.MaxY;

    private static SheetBox BoxOf(ShapeCell cell, View view)
    {
        var box = SheetBox.Empty;
        foreach (var corner in cell.Corners)
        {
            var p = view.Of(corner);
            box = box.With(p.X, p.Y);
        }

        return box;
    }

    private int StripAt(double x) => Math.Clamp((int)((x - _left) / _pitch), 0, _strips.Length - 1);
}
