using System.Globalization;
using BridgeForm.Pieces;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Pieces of a group of parts.</summary>
internal static class PartTable
{
    /// <summary>One row a piece, turned ones by themselves, in order of first appearance.</summary>
    public static FlowTable Of(DrawingContext context, string title, IEnumerable<string> ids, double width, string note = "")
    {
        var turns = TurnWords.ById(context.Model, o => o.Turned);
        var pieces = ids.Select(id => (Piece: context.Shapes.PieceAt(id), Turn: turns.GetValueOrDefault(id, "")))
            .Where(p => p.Piece is not null)
            .GroupBy(p => (p.Piece!.Mark, p.Turn))
            .ToList();
        var turned = pieces.Where(g => g.Key.Turn.Length > 0).Select(g => $" {g.Key.Mark} turned: {g.Key.Turn}.");
        return new FlowTable(
            title,
            "Cuts: mitre / bevel in degrees from square." + string.Concat(turned) + note,
            [
                new FlowColumn("Mark"), new FlowColumn("Here", Figures: true), new FlowColumn("Part"), new FlowColumn("Section", width / 4),
                new FlowColumn("Blank", Figures: true), new FlowColumn("Near, foot"), new FlowColumn("Far, head"),
            ],
            [.. pieces.Select(g => Row(context, g.First().Piece!, g.Key.Turn.Length > 0, g.Count()))]);
    }

    /// <summary>What a sheet that stands for its mirror image at B says of that one's marks.</summary>
    public static string OfMirrored(string names) =>
        $" {names}: the mirror image. Marks with L and R change sides there; the cut list names their places and what stands turned.";

    /// <summary>An end cut: mitre / bevel.</summary>
    public static string Cut(EndCut cut) =>
        $"{Numbers.Fixed(Numbers.Degrees(cut.Mitre), 1)} / {Numbers.Fixed(Numbers.Degrees(cut.Bevel), 1)}";

    private static FlowRow Row(DrawingContext context, Piece piece, bool turned, int count) => new(
    [
        turned ? piece.Mark + ", turned" : piece.Mark,
        count.ToString(CultureInfo.InvariantCulture),
        RoleTable.Of(piece.Role).Name,
        piece.Section,
        context.Text.Words.Size(piece.BlankLength),
        Cut(piece.Near),
        Cut(piece.Far),
    ]);
}
