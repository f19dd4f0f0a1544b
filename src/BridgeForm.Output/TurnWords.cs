using System.Collections.Immutable;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output;

/// <summary>
/// How a piece lies in a place where it stands turned, in words: where its near end is and where the face that its drawing
/// shows looks, each only where it is not as the role has it (docs/bridge.md, angles of a cut).
/// </summary>
internal static class TurnWords
{
    /// <summary>Words for one place; empty where the piece lies as its role says.</summary>
    public static string Of(Piece piece, Occurrence place)
    {
        var near = place.Turn.EndForEnd ? "near end " + FarEnd(piece.Role) : "";
        var face = place.Turn.Face == FaceTurn.Same ? "" : "drawn face " + Looks(piece, place);
        return near.Length > 0 && face.Length > 0 ? near + ", " + face : near + face;
    }

    /// <summary>Every turned place of a piece, alike ones together: <c>near end at B: B11/board-1</c>; empty when none is.</summary>
    public static string Turned(Piece piece) => Places(piece, o => o.Turned);

    /// <summary>Every place where a piece is rolled over and not turned, alike ones together; empty when none is.</summary>
    public static string Rolled(Piece piece) => Places(piece, o => o.Turn.IsRolled);

    private static string Places(Piece piece, Func<Occurrence, bool> which) => string.Join(" | ", Groups(piece)
        .Where(g => which(g.Places[0]))
        .Select(g => g.Words + ": " + OccurrenceRanges.Of(g.Places.Select(o => o.Id))));

    /// <summary>Places where a piece is turned or rolled over, by their words, in order of first appearance.</summary>
    public static ImmutableArray<(string Words, ImmutableArray<Occurrence> Places)> Groups(Piece piece) =>
    [
        .. piece.Occurrences.Where(o => o.Turned || o.Turn.IsRolled).GroupBy(o => Of(piece, o), StringComparer.Ordinal).Select(g => (g.Key, g.ToImmutableArray())),
    ];

    /// <summary>What it is called: turned, or rolled over.</summary>
    public static string Name(Occurrence place) => place.Turned ? "turned" : "rolled over";

    /// <summary>Words by id, of all parts of a bridge that are turned, or rolled over.</summary>
    public static Dictionary<string, string> ById(BridgeModel model, Func<Occurrence, bool> which) => model.Pieces
        .SelectMany(p => p.Occurrences.Where(which).Select(o => (o.Id, Words: Of(p, o))))
        .ToDictionary(o => o.Id, o => o.Words, StringComparer.Ordinal);

    /// <summary>Where the far end of a role lies.</summary>
    private static string FarEnd(Role role) => role switch
    {
        Role.Post or Role.Brace => "at the top",
        Role.Base or Role.Tread or Role.Packer => "at the right",
        _ => "at B",
    };

    private static string Looks(Piece piece, Occurrence place) => place.Turn.Face switch
    {
        FaceTurn.Opposite => Opposite(piece),
        FaceTurn.PlusY => AlongY(piece, place.Side),
        FaceTurn.MinusY => Other(AlongY(piece, place.Side)),
        _ => throw new ArgumentOutOfRangeException(nameof(place), place.Turn, "Not turned."),
    };

    /// <summary>Against the role's Z.</summary>
    private static string Opposite(Piece piece) => piece.Role switch
    {
        Role.Base => LiesFlat(piece) ? "down" : "towards B",
        Role.Post or Role.Brace => "towards A",
        Role.Rail => "outward",
        Role.Stringer => "to the left",
        _ => "down",
    };

    /// <summary>Along the role's Y = Z × X.</summary>
    private static string AlongY(Piece piece, Side side) => piece.Role switch
    {
        Role.Base => LiesFlat(piece) ? "towards B" : "up",
        Role.Post or Role.Brace => "to the right",
        Role.Rail => side == Side.Left ? "up" : "down",
        Role.Stringer => "up",
        Role.Tread or Role.Packer => "towards B",
        _ => "to the left",
    };

    private static string Other(string way) => way switch
    {
        "up" => "down",
        "down" => "up",
        "towards B" => "towards A",
        "to the right" => "to the left",
        "to the left" => "to the right",
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "No such way."),
    };

    private static bool LiesFlat(Piece piece) => piece.Shape.Channels.Any(c => c.Face == StockFace.MinusZ);
}
