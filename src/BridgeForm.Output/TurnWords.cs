using System.Collections.Immutable;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output;

/// <summary>
/// How a piece lies in its places, in words: where the arrow of its way mark points and where the face that its drawing shows looks
/// (docs/bridge.md, which way round).
/// </summary>
internal static class TurnWords
{
    /// <summary>Where the arrow points in a place; in most places where no one is named.</summary>
    public static string Arrow(Piece piece, Occurrence? place = null) => place is { Turn.EndForEnd: true }
        ? RoleTable.Of(piece.Role).Ends.ArrowTurned
        : RoleTable.Of(piece.Role).Ends.Arrow;

    /// <summary>The way mark of a piece as it is drawn on the wood.</summary>
    public static string Mark(Piece piece) => $"Way mark: arrow {Arrow(piece)}, {Place(piece)}";

    /// <summary>Where the way mark lies on the wood.</summary>
    public static string Place(Piece piece) => piece.Shape.IsRound
        ? $"on the line struck along {Faces(piece).Drawn}"
        : $"over the arris of {Faces(piece).Drawn} and edge 1";

    /// <summary>How a round stick is marked and laid on the saw. Common practice, no source.</summary>
    public const string Round = "A round stick has no arris: strike a line along it, and another opposite (lay it in the corner of two "
        + "straight boards), and set the arrowhead on the first. \"Line up\": that line is uppermost, half the stick's thickness from the "
        + "fence at both ends; \"line down\": the one opposite is. So both ends are cut by one line.";

    /// <summary>Words for one place, each only where it is not as the role has it; empty where the piece lies as its role says.</summary>
    public static string Write(Piece piece, Occurrence place)
    {
        var near = place.Turn.EndForEnd ? "arrow " + Arrow(piece, place) : "";
        var face = place.Turn.Face == FaceTurn.Same ? "" : "drawn face " + Looks(Faces(piece), place);
        return near.Length > 0 && face.Length > 0 ? near + ", " + face : near + face;
    }

    /// <summary>Every turned place of a piece, alike ones together: <c>arrow towards A: B11/board-1</c>; empty when none is.</summary>
    public static string Turned(Piece piece) => Places(piece, o => o.Turned);

    /// <summary>Every place where a piece is rolled over and not turned, alike ones together; empty when none is.</summary>
    public static string Rolled(Piece piece) => Places(piece, o => o.Turn.IsRolled);

    private static string Places(Piece piece, Func<Occurrence, bool> which) => string.Join(" | ", Groups(piece)
        .Where(g => which(g.Places[0]))
        .Select(g => g.Words + ": " + OccurrenceRanges.Write(g.Places.Select(o => o.Id))));

    /// <summary>Places where a piece is turned or rolled over, by their words, in order of first appearance.</summary>
    public static ImmutableArray<(string Words, ImmutableArray<Occurrence> Places)> Groups(Piece piece) =>
    [
        .. piece.Occurrences.Where(o => o.Turned || o.Turn.IsRolled).GroupBy(o => Write(piece, o), StringComparer.Ordinal).Select(
            g => (g.Key, g.ToImmutableArray())),
    ];

    /// <summary>What it is called: turned, or rolled over.</summary>
    public static string Name(Occurrence place) => place.Turned ? "turned" : "rolled over";

    /// <summary>Words by id, of all parts of a bridge that are turned, or rolled over.</summary>
    public static Dictionary<string, string> ById(BridgeModel model, Func<Occurrence, bool> which) => model.Pieces
        .SelectMany(p => p.Occurrences.Where(which).Select(o => (o.Id, Words: Write(p, o))))
        .ToDictionary(o => o.Id, o => o.Words, StringComparer.Ordinal);

    /// <summary>Words for the faces of a piece as it lies: only a base's channels tell whether it lies flat.</summary>
    public static FaceWords Faces(Piece piece)
    {
        var facts = RoleTable.Of(piece.Role);
        return facts.FlatFaces is { } flat && piece.Shape.Channels.Any(c => c.Face == StockFace.MinusZ) ? flat : facts.Faces;
    }

    private static string Looks(FaceWords faces, Occurrence place) => place.Turn.Face switch
    {
        FaceTurn.Opposite => faces.Opposite,
        FaceTurn.PlusY => faces.Plus(place.Side),
        FaceTurn.MinusY => faces.Minus(place.Side),
        _ => throw new ArgumentOutOfRangeException(nameof(place), place.Turn, "Not turned."),
    };
}
