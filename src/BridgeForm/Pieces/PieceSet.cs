using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>From members to pieces.</summary>
public static class PieceSet
{
    /// <summary>Groups members that are alike within the shop tolerance and builds each piece's solid once.</summary>
    /// <param name="parameters">Stock, saw and tolerance.</param>
    /// <param name="groups">Members in order; taken one group at a time.</param>
    /// <param name="pieces">Pieces in order of their first part.</param>
    /// <param name="failure">Which member cannot be made and why; null on success.</param>
    /// <param name="token">Asked before each group and each solid.</param>
    public static bool TryOf(
        BridgeParameters parameters,
        IEnumerable<MemberGroup> groups,
        out ImmutableArray<Piece> pieces,
        out string? failure,
        CancellationToken token = default)
    {
        pieces = [];
        var catalogue = new PieceCatalogue(parameters.Shop.Tolerance);
        foreach (var group in groups)
        {
            token.ThrowIfCancellationRequested();
            foreach (var member in group.Members)
            {
                if (!TryCorners(member, out var wood, out failure))
                {
                    return false;
                }

                catalogue.Add(member, wood);
            }
        }

        return TryBuild(parameters, catalogue.Drafts, out pieces, out failure, token);
    }

    private static bool TryCorners(Member member, out IReadOnlyList<Vector3d>? wood, out string? failure)
    {
        wood = null;
        failure = null;
        if (member.Shape.IsPlainPrism())
        {
            return true;
        }

        var solid = StockSolid.Build(member.Shape with { Holes = [] });
        if (solid.OrNull is not { } built)
        {
            failure = $"{member.Id}: {solid.Fault!.Message}";
            return false;
        }

        wood = built.Vertices;
        return true;
    }

    private static bool TryBuild(
        BridgeParameters parameters,
        IReadOnlyList<PieceDraft> drafts,
        out ImmutableArray<Piece> pieces,
        out string? failure,
        CancellationToken token)
    {
        var stocks = parameters.Stock.ToDictionary(s => s.Name, StringComparer.Ordinal);
        var builder = ImmutableArray.CreateBuilder<Piece>(drafts.Count);
        RequireOwnMarks(drafts.Select(d => d.Name.Text));
        foreach (var draft in drafts)
        {
            token.ThrowIfCancellationRequested();
            var shape = draft.Shape;
            var result = StockSolid.Build(shape);
            if (result.OrNull is not { } solid)
            {
                pieces = [];
                failure = $"{draft.First.Id}: {result.Fault!.Message}";
                return false;
            }

            builder.Add(Describe(parameters.Shop, draft, shape, solid, stocks[draft.First.Stock]));
        }

        pieces = builder.MoveToImmutable();
        failure = null;
        return true;
    }

    /// <summary>Two pieces under one mark would be cut, labelled and put up as one: rather no files than such.</summary>
    internal static void RequireOwnMarks(IEnumerable<string> marks)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var mark in marks)
        {
            if (!seen.Add(mark))
            {
                throw new InvalidOperationException($"Two pieces have the mark {mark}.");
            }
        }
    }

    private static Piece Describe(
        ShopParameters shop, PieceDraft draft, CutStock shape, Solid solid, StockParameters stock)
    {
        // Nothing but its ends is cut off round stock.
        var share = shape.IsRound ? RoundStock.Share : 1;
        var (volume, cut) = (share * solid.Volume, share * (solid.Area - solid.AreaOf(FaceOrigin.Stock)));
        return new Piece
        {
            Mark = draft.Name.Text,
            Role = draft.First.Role,
            Stock = draft.First.Stock,
            Section = draft.First.Section,
            Shape = shape,
            Solid = solid,
            BlankLength = draft.Corners.Length,
            Volume = volume,
            Mass = volume * stock.Density.InService,
            CutArea = cut,
            ExposedCutArea = stock.Treated ? cut : 0,
            Near = SawReach.Measure(shape, near: true, shop),
            Far = SawReach.Measure(shape, near: false, shop),
            NotRoutable = Routing.Obstacles(shape, shop.Router),
            Occurrences = draft.Occurrences,
        };
    }
}

/// <summary>End cuts as a saw sees them.</summary>
public static class SawReach
{
    /// <summary>
    /// Angles of an end plane in radians, by the normal m turned so that m·X &gt; 0: parallel cuts at both ends have equal
    /// angles; and the cheapest way to make it. A mitre beyond the saw's limit takes a block of the angle that is missing, with
    /// the saw at its limit.
    /// </summary>
    /// <param name="stock">The stick.</param>
    /// <param name="near">Its near end; else its far one.</param>
    /// <param name="shop">Tools.</param>
    public static EndCut Measure(CutStock stock, bool near, ShopParameters shop)
    {
        var end = near ? stock.Near : stock.Far;
        var cut = Lying.Cut(end.Normal);
        var over = Math.Abs(cut.Mitre) - shop.MitreLimit;
        var beyond = over <= Tolerances.SawStop ? 0 : over;
        var (way, onEdge) = CutWays.Choose(stock, near, cut, beyond, shop);
        return cut with
        {
            InReach = way == CutWay.Saw,
            Wedge = way == CutWay.SawWithBlock ? beyond : 0,
            Way = way,
            OnEdge = onEdge,
        };
    }
}
