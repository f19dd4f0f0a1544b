using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>
/// The drawing of one piece at true size: the wide face at +Z in the page with its lower left corner at the origin and the
/// length along +X; below it each narrow face that has channels or holes; below them the notes.
/// </summary>
public static class ProfileSheet
{
    /// <summary>Clear space between a view and what stands below it, metres.</summary>
    private const double Space = 0.012;

    /// <summary>The drawing of a piece.</summary>
    /// <param name="piece">A piece whose solid is closed.</param>
    /// <param name="units">How lengths and angles are written.</param>
    /// <param name="verdict">What fails and what was not checked, as every sheet says it; empty for neither.</param>
    public static Sheet Draw(Piece piece, DisplayUnits units, string verdict = "")
    {
        var edges = new SolidEdges(piece.Solid);
        var outline = WideView.Outline(piece, edges);
        var (dx, dy) = (-outline.Min(l => l.Min(p => p.X)), -outline.Min(l => l.Min(p => p.Y)));
        var length = outline.Max(l => l.Max(p => p.X)) + dx;

        var entities = ImmutableArray.CreateBuilder<SheetEntity>();
        var view = WideView.Draw(piece, edges, outline, p => new SheetPoint(p.X + dx, p.Y + dy), units);
        var bottom = Add(entities, view, length);
        var (distances, above) = ProfileDimensions.Draw(piece, dx, view.Box.MaxY, length, units);
        entities.AddRange(distances);
        var width = outline.Max(l => l.Max(p => p.Y)) + dy;
        var shorter = ShortEdge([.. outline.SelectMany(l => l).Select(p => new SheetPoint(p.X + dx, p.Y + dy))], width, length);
        if (shorter is var (from, to))
        {
            above += 2 * LabelRows.Pitch;
            entities.Add(new SheetDimension(
                ProfileLayers.Dim, from, to, new SheetPoint(0, above), LabelRows.TextHeight, units.Length(to.X - from.X)));
        }

        entities.AddRange(Overall(view, length, width, above + Space, units));
        foreach (var face in NarrowView.FacesWorthDrawing(piece.Shape))
        {
            bottom = Add(entities, NarrowView.Draw(piece, face, dx, bottom - Space, units), length);
        }

        var characters = (int)(length / SheetText.WidthOf(1, LabelRows.TextHeight));
        var notes = PieceNotes.Write(piece, units, verdict, characters);
        entities.AddRange(LabelRows.Column(ProfileLayers.Text, notes, bottom - Space).Texts);
        return new Sheet(piece.Mark, ProfileLayers.All, entities.ToImmutable());
    }

    /// <summary>
    /// The ends of the upper or the lower edge, whichever is the shorter; null where both are as long as the piece. What the saw
    /// leaves is measured on either edge, and a bevelled end says nothing of the other one.
    /// </summary>
    private static (SheetPoint From, SheetPoint To)? ShortEdge(ImmutableArray<SheetPoint> outline, double width, double length)
    {
        var edges = ((double[])[0, width]).Select(y => outline.Where(p => Math.Abs(p.Y - y) < Tolerances.ShortestEdge).ToList())
            .Where(e => e.Count > 1).Select(e => (From: e.MinBy(p => p.X), To: e.MaxBy(p => p.X))).ToList();
        return edges.Count > 0 && edges.MinBy(e => e.To.X - e.From.X) is var shorter
            && length - (shorter.To.X - shorter.From.X) > Tolerances.SameDimension
            ? shorter
            : null;
    }

    /// <summary>Length and width of the outline, above the view at <paramref name="level"/> and to its right.</summary>
    private static ImmutableArray<SheetEntity> Overall(ViewDrawing view, double length, double width, double level, DisplayUnits units)
    {
        var box = view.Box;
        return
        [
            Dimension(new(0, width), new(length, width), new(0, level), units.Length(length)),
            Dimension(new(length, 0), new(length, width), new(box.MaxX + Space, 0), units.Length(width)),
        ];

        static SheetDimension Dimension(SheetPoint from, SheetPoint to, SheetPoint line, string text) =>
            new(ProfileLayers.Dim, from, to, line, LabelRows.TextHeight, text);
    }

    /// <summary>Adds a view and the labels below it.</summary>
    /// <returns>Y below everything added.</returns>
    private static double Add(ImmutableArray<SheetEntity>.Builder entities, ViewDrawing view, double length)
    {
        var (labels, bottom) = LabelRows.Place(view.Labels, view.Box.MinY - Space, length);
        entities.AddRange(view.Entities);
        entities.AddRange(labels);
        return bottom;
    }
}

/// <summary>What is written below the drawing of a piece.</summary>
internal static class PieceNotes
{
    /// <summary>Lines are wrapped at no fewer characters than this, so that a short piece does not get a tall column.</summary>
    private const int ShortestLine = 48;

    /// <summary>All notes, wrapped to a number of characters.</summary>
    public static ImmutableArray<string> Write(Piece piece, DisplayUnits units, string verdict, int characters)
    {
        var inches = units.System == UnitSystem.Imperial;
        var ends = RoleTable.Of(piece.Role).Ends;
        string[] notes =
        [
            $"{piece.Mark} {RoleTable.Of(piece.Role).Printed}, {piece.Occurrences.Length} off",
            $"Stock: {piece.Stock}, {piece.Section} ({units.Length(piece.Shape.Thickness)} x {units.Length(piece.Shape.Width)}),"
                + $" blank {units.Length(piece.BlankLength)} long",
            EndNote(ends.Near + " (left)", piece.Near, piece.Shape),
            EndNote(ends.Far + " (right)", piece.Far, piece.Shape),
            .. TaperNote(piece, units),
            $"Face up: {TurnWords.Faces(piece).Drawn}. Grain runs left to right.",
            TurnWords.Mark(piece) + ", drawn on this face",
            .. TurnNote(piece),
            inches ? "Units: inches" : "Units: millimeters",
            Caution.Text,
            .. verdict.Length > 0 ? [verdict] : (string[])[],
        ];
        return [.. notes.SelectMany(note => Wrapped(note, Math.Max(characters, ShortestLine)))];
    }

    private static string EndNote(string end, EndCut cut, CutStock stock) =>
        $"{end}: miter {Numbers.DegreeText(cut.Mitre)}, bevel {Numbers.DegreeText(cut.Bevel)}, edge line {Numbers.DegreeText(cut.Edge)}, "
        + (cut.InReach ? "in reach of the saw"
            : cut.NeedsTemplate ? "out of reach: " + CutWays.Words(cut, stock)
            : $"out of reach: saw with a taper block of {Numbers.DegreeText(cut.Wedge)}");

    /// <summary>Places where near end and face lie otherwise than the notes before say.</summary>
    private static IEnumerable<string> TurnNote(Piece piece) => TurnWords.Groups(piece).Select(g =>
        $"Stands {TurnWords.Name(g.Places[0])} in {g.Places.Length} of {piece.Occurrences.Length} places, {g.Words}: "
            + $"{OccurrenceRanges.Write(g.Places.Select(o => o.Id))}");

    private static IEnumerable<string> TaperNote(Piece piece, DisplayUnits units)
    {
        if (Taper.Measure(piece) is { } taper)
        {
            yield return $"Ripped to a taper of {Numbers.DegreeText(taper.Angle)}: {units.Length(taper.Thick)} at the thick edge, "
                + $"{units.Length(taper.Thin)} at the thin edge, {units.Length(taper.Width)} from edge to edge";
        }
    }

    private static IEnumerable<string> Wrapped(string text, int characters)
    {
        var line = string.Empty;
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > characters)
            {
                yield return line;
                line = string.Empty;
            }

            line = line.Length == 0 ? word : line + " " + word;
        }

        yield return line;
    }
}
