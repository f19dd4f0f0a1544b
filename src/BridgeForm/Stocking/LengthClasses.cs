using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>A piece that is to be cut: one occurrence.</summary>
/// <param name="Mark">Mark of the piece.</param>
/// <param name="Id">Which of its occurrences.</param>
/// <param name="Length">Length of its blank, metres; of a short piece with the wood that it is held by.</param>
internal sealed record Blank(string Mark, string Id, double Length)
{
    /// <summary>The other occurrence in the same blank, at its far end; null for none.</summary>
    public string? Second { get; init; }

    /// <summary>Length of the one piece, or of each of two, metres.</summary>
    public double Each { get; init; } = Length;

    /// <summary>Packers that are ripped in one length and then cut apart, with the saw cuts between them; empty for other blanks.</summary>
    public ImmutableArray<Blank> Strips { get; init; } = [];
}

/// <summary>Blanks that are planned as one length: the longest of them.</summary>
/// <param name="Longest">Length to plan with, metres.</param>
/// <param name="Shortest">Length of the shortest, metres.</param>
/// <param name="Blanks">Longest first; of equal length in the order of the pieces.</param>
internal sealed record LengthClass(double Longest, double Shortest, ImmutableArray<Blank> Blanks);

/// <summary>Sorts blanks into classes of one length.</summary>
internal static class LengthClasses
{
    /// <summary>With more lengths than this, neighbours are planned as the longer one: the plan stays safe, and the work bounded.</summary>
    public const int Most = 48;

    private const double Wider = 1.2;

    /// <summary>
    /// Every occurrence of the pieces. Pieces too short to hold on the saw come two in a blank with wood between them to clamp, an
    /// odd one with as much beyond it, where a board gives that; packers as many as are ripped in one length; else each by itself. What is
    /// cut on a block is cut to length first.
    /// </summary>
    public static ImmutableArray<Blank> Blanks(IReadOnlyCollection<Piece> pieces, Offer offer, ShopParameters shop) =>
    [
        .. pieces.Where(p => !IsStrip(p, shop)).SelectMany(p => Blanks(p, offer, shop)),
        .. RipGroups.Blanks(pieces.Where(p => IsStrip(p, shop)), offer, shop),
    ];

    private static bool IsStrip(Piece piece, ShopParameters shop) =>
        StripPlan.IsRipped(piece) && !Holding.IsShort(piece, shop.Hold);

    private static IEnumerable<Blank> Blanks(Piece piece, Offer offer, ShopParameters shop) =>
        Holding.Of(piece, shop) == HoldWay.Pair && offer.Gives(Holding.Pair(piece, shop.Hold))
            ? piece.Occurrences.Chunk(2).Select(two => new Blank(
                piece.Mark, two[0].Id,
                two.Length > 1 ? Holding.Pair(piece, shop.Hold) : piece.BlankLength + Holding.Between(piece, shop.Hold))
            {
                Second = two.Length > 1 ? two[1].Id : null,
                Each = piece.BlankLength,
            })
            : piece.Occurrences.Select(o => new Blank(piece.Mark, o.Id, piece.BlankLength));

    /// <summary>Classes, longest first: at most <see cref="Most"/>, and as narrow as that allows.</summary>
    public static ImmutableArray<LengthClass> Sort(ImmutableArray<Blank> blanks)
    {
        ImmutableArray<Blank> sorted = [.. blanks.OrderByDescending(b => b.Length)];
        var width = Tolerances.CutAlike;
        var classes = Sort(sorted, width);
        while (classes.Length > Most)
        {
            width *= Wider;
            classes = Sort(sorted, width);
        }

        return classes;
    }

    private static ImmutableArray<LengthClass> Sort(ImmutableArray<Blank> sorted, double width)
    {
        var classes = ImmutableArray.CreateBuilder<LengthClass>();
        for (var first = 0; first < sorted.Length;)
        {
            var next = first;
            while (next < sorted.Length && sorted[first].Length - sorted[next].Length <= width)
            {
                next++;
            }

            classes.Add(new LengthClass(sorted[first].Length, sorted[next - 1].Length, sorted[first..next]));
            first = next;
        }

        return classes.ToImmutable();
    }
}

/// <summary>Sections by their names.</summary>
internal static class Sections
{
    /// <summary>The section of a piece, with its nominal sizes where it has any.</summary>
    public static Section Of(Piece piece) =>
        SectionReader.Read(piece.Section).Section ?? new Section(piece.Section, piece.Shape.Width, piece.Shape.Thickness);
}
