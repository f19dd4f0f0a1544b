using System.Collections.Immutable;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.Profiles;

/// <summary>What is written below the drawing of a piece.</summary>
internal static class PieceNotes
{
    /// <summary>Lines are wrapped at no fewer characters than this, so that a short piece does not get a tall column.</summary>
    private const int ShortestLine = 48;

    /// <summary>All notes, wrapped to a number of characters.</summary>
    public static ImmutableArray<string> Of(Piece piece, PeopleUnits units, IReadOnlyCollection<string> failingChecks, int characters)
    {
        var inches = units.System == UnitSystem.Imperial;
        string[] notes =
        [
            $"{piece.Mark} {RoleTable.Of(piece.Role).Name}, {piece.Occurrences.Length} off",
            $"Stock: {piece.Stock}, {piece.Section} ({units.Length(piece.Shape.Thickness)} x {units.Length(piece.Shape.Width)}),"
                + $" blank {units.Length(piece.BlankLength)} long",
            EndNote("Near end (left)", piece.Near),
            EndNote("Far end (right)", piece.Far),
            .. TaperNote(piece, units),
            $"Face up: {TurnWords.Faces(piece).Drawn}. Grain runs left to right.",
            .. TurnNote(piece),
            inches ? "Units: inches" : "Units: millimetres",
            Caution.Text,
            .. failingChecks.Count > 0 ? [$"Checks that do not hold: {string.Join(", ", failingChecks)}."] : (string[])[],
        ];
        return [.. notes.SelectMany(note => Wrapped(note, Math.Max(characters, ShortestLine)))];
    }

    private static string EndNote(string end, EndCut cut) =>
        $"{end}: mitre {Numbers.DegreeText(cut.Mitre)}, bevel {Numbers.DegreeText(cut.Bevel)}, edge line {Numbers.DegreeText(cut.Edge)}, "
        + (cut.InReach ? "in reach of the saw"
            : cut.NeedsTemplate ? "out of reach: cut to a template"
            : $"out of reach: wedge {Numbers.DegreeText(cut.Wedge)}");

    /// <summary>Places where near end and face lie otherwise than the notes before say.</summary>
    private static IEnumerable<string> TurnNote(Piece piece) => TurnWords.Groups(piece).Select(g =>
        $"Stands {TurnWords.Name(g.Places[0])} in {g.Places.Length} of {piece.Occurrences.Length} places, {g.Words}: {OccurrenceRanges.Of(g.Places.Select(o => o.Id))}");

    private static IEnumerable<string> TaperNote(Piece piece, PeopleUnits units)
    {
        if (Taper.Of(piece) is { } taper)
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
