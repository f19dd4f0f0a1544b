using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>An end of a piece.</summary>
internal enum PieceEnd
{
    /// <summary>At low X.</summary>
    Near,

    /// <summary>At high X.</summary>
    Far,
}

/// <summary>One thing to draw a template of, and every piece that it serves; the drawing is made from the first.</summary>
/// <param name="Pieces">Pieces alike in this.</param>
internal sealed record CutUse(ImmutableArray<Piece> Pieces)
{
    /// <summary>The piece that is drawn.</summary>
    public Piece First => Pieces[0];

    /// <summary>All marks, shortened where they follow each other.</summary>
    public string Marks => string.Join(", ", Pieces.Select(p => p.Mark));

    /// <summary>An end by what it is of such a part: foot or head, left or right, towards A or B.</summary>
    public string EndName(PieceEnd end) => RoleTable.Of(First.Role).Ends.Shop(end == PieceEnd.Near);

    /// <summary>What it is, how many, of what, and how it lies.</summary>
    public ImmutableArray<string> Notes(DisplayUnits units) =>
    [
        string.Join(", ", Pieces.Select(p => FormattableString.Invariant($"{p.Mark} × {p.Occurrences.Length}")))
            + FormattableString.Invariant($" ({Pieces.Sum(p => p.Occurrences.Length)} in all)")
            + $" · {RoleTable.Of(First.Role).Printed}, {First.Section} {First.Stock}, {units.Length(First.Shape.Thickness)} × "
            + $"{units.Length(First.Shape.Width)} · {Hand(First.Mark)}",
        $"Face up: {TurnWords.Faces(First).Drawn}. {TurnWords.Mark(First)}.",
    ];

    /// <summary>Words for the hand that a mark names.</summary>
    public static string Hand(string mark) => mark[^1] switch
    {
        'L' => "left hand",
        'R' => "right hand",
        _ => "fits either side",
    };

    /// <summary>Pieces grouped by a key, in order of first appearance.</summary>
    public static IEnumerable<CutUse> Grouped(IEnumerable<Piece> pieces, Func<Piece, string?> key) =>
        pieces.Select(p => (Piece: p, Key: key(p)))
            .Where(p => p.Key is not null)
            .GroupBy(p => p.Key, p => p.Piece, StringComparer.Ordinal)
            .Select(g => new CutUse([.. g]));
}

/// <summary>What makes two cuts alike on paper.</summary>
internal static class CutKeys
{
    /// <summary>Cuts alike to 0.05° and sections alike to 0.05 mm share a template: well inside what a pencil line shows.</summary>
    private const int AngleDecimals = 1;

    /// <summary>The end cut of a piece.</summary>
    public static EndCut Cut(this Piece piece, PieceEnd end) => end == PieceEnd.Near ? piece.Near : piece.Far;

    /// <summary>The end plane of a piece, normal out of the wood.</summary>
    public static Plane Plane(this Piece piece, PieceEnd end) => end == PieceEnd.Near ? piece.Shape.Near : piece.Shape.Far;

    /// <summary>Both angles print as zero: a square cut, for which no template is needed.</summary>
    public static bool IsSquare(EndCut cut) => !HasMitre(cut) && !HasBevel(cut);

    /// <summary>The mitre does not print as zero.</summary>
    public static bool HasMitre(EndCut cut) => Tenths(cut.Mitre) is not "0.0";

    /// <summary>The bevel does not print as zero.</summary>
    public static bool HasBevel(EndCut cut) => Leans(cut.Bevel);

    /// <summary>A tilt of the blade that does not print as zero.</summary>
    public static bool Leans(double bevel) => Tenths(bevel) is not "0.0";

    /// <summary>Degrees to a tenth.</summary>
    public static string Tenths(double radians) => Numbers.Fixed(Numbers.Degrees(radians), AngleDecimals);

    /// <summary>Key of an end cut; null when it is square.</summary>
    public static string? Of(Piece piece, PieceEnd end)
    {
        var cut = piece.Cut(end);
        return IsSquare(cut)
            ? null
            : $"{end}|{Section(piece)}|{Tenths(cut.Mitre)}|{Tenths(cut.Bevel)}|{piece.Role}|{CutUse.Hand(piece.Mark)}";
    }

    /// <summary>A cut within the saw's reach or a ripped section: templates that are printed only when asked for.</summary>
    public static bool HasMore(Piece piece) => OfRips(piece) is not null
        || ((PieceEnd[])[PieceEnd.Near, PieceEnd.Far]).Any(end => Of(piece, end) is not null && piece.Cut(end).InReach);

    /// <summary>Key of everything cut into long faces; null when there is nothing.</summary>
    public static string? OfFeatures(Piece piece)
    {
        var features = piece.Shape.Channels
            .Select(c => $"{c.Face}:{Millimetres(c.Center)}:{Millimetres(c.Width)}:{Millimetres(c.Depth)}:{Numbers.Fixed(c.FloorSlope, 3)}")
            .Concat(piece.Shape.Holes.Select(h =>
                $"{h.Face}:{Millimetres(h.X)}:{Millimetres(h.Across)}:{Millimetres(h.Diameter)}:"
                    + $"{(h.Depth is { } d ? Millimetres(d) : "through")}"))
            .ToList();
        return features.Count == 0 ? null : $"{Section(piece)}|{Millimetres(piece.BlankLength)}|{string.Join('|', features)}";
    }

    /// <summary>Key of the holes alone; null where there are none.</summary>
    public static string? OfHoles(Piece piece) => piece.Shape.Holes.IsEmpty
        ? null
        : $"{piece.Role}|{Section(piece)}|"
            + string.Join('|', piece.Shape.Holes.Select(h => $"{h.Face}:{Millimetres(h.X)}:{Millimetres(h.Across)}:"
                + $"{Millimetres(h.Diameter)}:{(h.Depth is { } d ? Millimetres(d) : "through")}"));

    /// <summary>Key of a ripped section; null when the section is whole, or bought round.</summary>
    public static string? OfRips(Piece piece) => piece.Shape.Rips.IsEmpty || piece.Shape.IsRound
        ? null
        : Section(piece) + string.Concat(piece.Shape.Rips.Select(r => string.Create(
            CultureInfo.InvariantCulture, $"|{Tenths(Elementary.Atan2(r.Normal.Z, r.Normal.Y))}:{Millimetres(r.Offset)}")));

    private static string Section(Piece piece) =>
        $"{Millimetres(piece.Shape.Width)}x{Millimetres(piece.Shape.Thickness)}";

    private static string Millimetres(double metres) => Numbers.Fixed(metres * 1000, 1);
}
