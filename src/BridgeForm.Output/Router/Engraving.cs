using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.Router;

/// <summary>A piece's mark in its own face, as open lines: the one thing in router files that is not closed.</summary>
internal static class Engraving
{
    // Large enough to read under a coat of stain. Common practice, no source. Metres.
    private const double Tallest = 0.012;

    // A mark is looked for a place at these steps from the near end. Metres.
    private const double Step = 0.005;

    /// <summary>
    /// The strokes in the axes of the view, at the first place from the near end that is clear of cuts; empty when there is none.
    /// </summary>
    public static ImmutableArray<SheetPolyline> Draw(Piece piece, PageView view)
    {
        var face = StickFace.Draw(piece.Shape, piece.BlankLength, view);
        var across = face.Max(p => p.Y) - face.Min(p => p.Y);
        var height = Math.Min(Tallest, across / 3);
        var (width, clear) = (StrokeLetters.Width(piece.Mark, height), height / 2);
        for (var x = face.Min(p => p.X) + clear; x + width + clear < face.Max(p => p.X); x += Step)
        {
            if (IsFree(piece, face, view, new SheetBox(x - clear, -height, x + width + clear, height)))
            {
                return
                [
                    .. StrokeLetters.Draw(piece.Mark, new SheetPoint(x, -height / 2), height)
                        .Select(stroke => new SheetPolyline(RouterLayers.Engrave, stroke, false)),
                ];
            }
        }

        return [];
    }

    private static bool IsFree(Piece piece, ImmutableArray<SheetPoint> face, PageView view, SheetBox box)
    {
        SheetPoint[] corners = [new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)];
        return corners.All(c => IsWithin(face, c))
            && !piece.Shape.Channels.Any(c => c.Center + (c.Width / 2) > box.MinX && c.Center - (c.Width / 2) < box.MaxX)
            && !piece.Shape.Holes.Any(h => Meets(h, RouterCuts.Across(h, view), box));
    }

    /// <summary>Whether a point lies in a convex polygon, counter-clockwise.</summary>
    private static bool IsWithin(ImmutableArray<SheetPoint> polygon, SheetPoint point)
    {
        for (var i = 0; i < polygon.Length; i++)
        {
            var (p, q) = (polygon[i], polygon[(i + 1) % polygon.Length]);
            if (((q.X - p.X) * (point.Y - p.Y)) - ((q.Y - p.Y) * (point.X - p.X)) < 0)
            {
                return false;
            }
        }

        return true;
    }

    private static bool Meets(Hole hole, double across, SheetBox box)
    {
        var (dx, dy) = (hole.X - Math.Clamp(hole.X, box.MinX, box.MaxX), across - Math.Clamp(across, box.MinY, box.MaxY));
        return (dx * dx) + (dy * dy) < hole.Diameter * hole.Diameter / 4;
    }
}
