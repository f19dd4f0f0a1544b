using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Drawing;

/// <summary>A visible stretch of an edge on paper, metres at true size.</summary>
/// <param name="Outline">Only one of its two faces is seen.</param>
internal readonly record struct SeenLine(SheetPoint From, SheetPoint To, bool Outline);

/// <summary>
/// Edges of convex bodies with what is hidden left out, exactly: an edge's point is hidden by a body when the ray from it to
/// the eye passes the body. For one edge and one body both conditions are linear in the place along the edge and the place
/// along the ray, so that the hidden stretch is one interval, found by eliminating the ray (Fourier and Motzkin's method).
/// </summary>
internal static class HiddenLines
{
    /// <summary>All visible stretches.</summary>
    /// <param name="shapes">Bodies in the world.</param>
    /// <param name="view">Where the eye is.</param>
    /// <param name="smallest">Edges shorter than this on paper, metres at true size, are not drawn.</param>
    public static List<SeenLine> Find(IReadOnlyCollection<Shape> shapes, View view, double smallest = 0)
    {
        var toward = view.Toward;
        var index = CellIndex.Build(shapes.SelectMany(s => s.Cells), view);
        var seen = new List<SeenLine>();
        var open = new List<(double From, double To)>();
        foreach (var edge in shapes.SelectMany(s => s.Edges))
        {
            var (a, b) = (edge.NormalA.Dot(toward), edge.NormalB.Dot(toward));
            var (from, to) = (view.Of(edge.From), view.Of(edge.To));
            var length = Math.Sqrt(Square(to.X - from.X) + Square(to.Y - from.Y));
            if (Math.Max(a, b) <= Tolerances.EdgeOn || length <= Math.Max(smallest, Tolerances.ShortestStretch))
            {
                continue;
            }

            open.Clear();
            open.Add((0, 1));
            Hide(edge, view, index, open);
            foreach (var (s, e) in open)
            {
                if ((e - s) * length > Tolerances.ShortestStretch)
                {
                    seen.Add(new SeenLine(Along(from, to, s), Along(from, to, e), Math.Min(a, b) <= Tolerances.EdgeOn));
                }
            }
        }

        return seen;
    }

    private static void Hide(ShapeEdge edge, View view, CellIndex index, List<(double From, double To)> open)
    {
        foreach (var cell in index.Before(edge, view))
        {
            if (Hidden(edge, cell, view.Toward) is { } hidden)
            {
                Subtract(open, hidden);
                if (open.Count == 0)
                {
                    return;
                }
            }
        }
    }

    /// <summary>Stretch of the edge that a cell hides, as shares of its length; null when none.</summary>
    private static (double From, double To)? Hidden(ShapeEdge edge, ShapeCell cell, Vector3d toward)
    {
        double low = 0, high = 1;
        var way = edge.To - edge.From;
        Span<(double A, double C)> upper = stackalloc (double, double)[cell.Planes.Length];
        Span<(double A, double C)> lower = stackalloc (double, double)[cell.Planes.Length + 1];
        var (uppers, lowers) = (0, 1);
        lower[0] = (0, 0); // the ray begins at the edge
        foreach (var plane in cell.Planes)
        {
            var a = plane.Normal.Dot(way);
            var c = plane.Offset - Tolerances.Skin - plane.Normal.Dot(edge.From);
            var b = plane.Normal.Dot(toward);
            if (Math.Abs(b) <= Tolerances.EdgeOn)
            {
                if (!Narrow(a, c, ref low, ref high))
                {
                    return null;
                }
            }
            else if (b > 0)
            {
                upper[uppers++] = (a / b, c / b);
            }
            else
            {
                lower[lowers++] = (a / b, c / b);
            }
        }

        foreach (var l in lower[..lowers])
        {
            foreach (var u in upper[..uppers])
            {
                // l.C − l.A s ≤ t ≤ u.C − u.A s
                if (!Narrow(u.A - l.A, u.C - l.C, ref low, ref high))
                {
                    return null;
                }
            }
        }

        return (low, high);
    }

    /// <summary>Keeps the s with a·s ≤ c.</summary>
    private static bool Narrow(double a, double c, ref double low, ref double high)
    {
        if (Math.Abs(a) <= Tolerances.EdgeOn)
        {
            return c > 0;
        }

        (low, high) = a > 0 ? (low, Math.Min(high, c / a)) : (Math.Max(low, c / a), high);
        return low < high;
    }

    private static void Subtract(List<(double From, double To)> open, (double From, double To) hidden)
    {
        for (var i = open.Count - 1; i >= 0; i--)
        {
            var (from, to) = open[i];
            if (hidden.To <= from || hidden.From >= to)
            {
                continue;
            }

            open.RemoveAt(i);
            if (hidden.To < to)
            {
                open.Insert(i, (hidden.To, to));
            }

            if (hidden.From > from)
            {
                open.Insert(i, (from, hidden.From));
            }
        }
    }

    private static SheetPoint Along(SheetPoint a, SheetPoint b, double s) => new(a.X + (s * (b.X - a.X)), a.Y + (s * (b.Y - a.Y)));

    private static double Square(double x) => x * x;
}
