using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>What the sweep over all near pairs of parts, ropes included, found. Metres.</summary>
/// <param name="Pairs">Number of pairs compared.</param>
/// <param name="Overlaps">
/// Pairs of wooden parts that press into each other by more than the seating tolerance, worst first, at most a hundred.
/// </param>
/// <param name="Gaps">Parts that should bear on another and stand clear of it by more than the seating tolerance, worst first.</param>
/// <param name="RopeContacts">
/// Wood that a rope touches outside a channel, or enters by more than the seating tolerance, worst first.
/// </param>
/// <param name="OverlapCount">How many such pairs there are, the ones not kept included.</param>
/// <param name="GapCount">How many such gaps there are, the ones not kept included.</param>
/// <param name="RopeContactCount">How many such contacts there are, the ones not kept included.</param>
/// <param name="DeepestOverlap">Largest overlap of any pair of wooden parts; 0 when none overlap.</param>
/// <param name="WidestGap">
/// Largest gap between parts that should bear; 0 when all touch; of parts nowhere near each other the least it can be.
/// </param>
/// <param name="DeepestRope">Largest depth of a rope in the wood of a base; negative when it touches none.</param>
public sealed record ContactFindings(
    long Pairs,
    ImmutableArray<ContactFault> Overlaps,
    ImmutableArray<ContactFault> Gaps,
    ImmutableArray<ContactFault> RopeContacts,
    int OverlapCount,
    int GapCount,
    int RopeContactCount,
    double DeepestOverlap,
    double WidestGap,
    double DeepestRope)
{
    /// <summary>The wooden parts of the largest overlap, within the tolerance or not; null where none overlap.</summary>
    public ContactFault? Pressed { get; init; }

    /// <summary>A part and what carries it where the gap is largest, within the tolerance or not; null where all touch.</summary>
    public ContactFault? Clear { get; init; }

    /// <summary>Rope and base where the rope lies deepest in the wood, within the tolerance or not; null where it touches none.</summary>
    public ContactFault? RopeIn { get; init; }
}

/// <summary>Two parts that meet wrongly.</summary>
/// <param name="First">Id of a part or a rope.</param>
/// <param name="Second">Id of the other part or rope.</param>
/// <param name="Amount">Depth or gap, metres; infinite where they are nowhere near each other.</param>
public sealed record ContactFault(string First, string Second, double Amount);

/// <summary>
/// Compares every pair of parts that come near each other, ropes included, on the parts as cut: each piece's solid where it is
/// drawn. Sweeps the bridge from A to B and keeps only what reaches as far as it has come, so that its cost is all but linear.
/// </summary>
public static class ContactSweep
{
    /// <summary>Sweeps a whole bridge.</summary>
    /// <param name="layout">Frames, and what was asked for.</param>
    /// <param name="pieces">Every wooden part, as cut.</param>
    /// <param name="ropes">The ropes.</param>
    /// <param name="token">Asked before each part.</param>
    public static ContactFindings Sweep(
        BridgeLayout layout, ImmutableArray<Piece> pieces, ImmutableArray<RopeLine> ropes, CancellationToken token = default) =>
        Sweep(layout, SweptPart.Of(pieces), ropes, token);

    /// <summary>
    /// As <see cref="Sweep(BridgeLayout, ImmutableArray{Piece}, ImmutableArray{RopeLine}, CancellationToken)"/>, for parts
    /// given one by one.
    /// </summary>
    internal static ContactFindings Sweep(
        BridgeLayout layout, ImmutableArray<SweptPart> parts, ImmutableArray<RopeLine> ropes, CancellationToken token = default) =>
        Sweep(parts, Supports.Find(parts, layout.Poses), ropes, layout.Parameters.Frames.Channel.Liner, token);

    /// <summary>Members that rest on nothing, for tests and small sets.</summary>
    public static ContactFindings OfMembers(IReadOnlyList<Member> members, ImmutableArray<RopeLine> ropes)
    {
        ImmutableArray<SweptPart> parts = [.. members.Select(SweptPart.Of)];
        return Sweep(parts, Supports.None(parts), ropes, liner: 0, CancellationToken.None);
    }

    private static ContactFindings Sweep(
        ImmutableArray<SweptPart> parts, Supports supports, ImmutableArray<RopeLine> ropes, double liner, CancellationToken token)
    {
        var findings = new Findings();
        new Sweep(parts, supports, findings, new RopeContacts(findings, ropes)).Run(liner, token);
        return findings.Result();
    }
}

/// <summary>A part that the sweep looks at: a stick with its cuts, where it is drawn.</summary>
/// <param name="Id">Id of the part.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Side">Side of the bridge.</param>
/// <param name="Shape">Stock and cuts, in the stick's own axes.</param>
/// <param name="Placement">The stick's axes in the world.</param>
/// <param name="Cells">The stick as convex cells in its own axes, holes left out.</param>
internal sealed record SweptPart(
    string Id, Role Role, Side Side, CutStock Shape, Placement Placement, ImmutableArray<ConvexBody> Cells)
{
    /// <summary>Every occurrence of every piece, with the piece's own shape: what is cut and drawn.</summary>
    public static ImmutableArray<SweptPart> Of(ImmutableArray<Piece> pieces)
    {
        var parts = ImmutableArray.CreateBuilder<SweptPart>(pieces.Sum(p => p.Occurrences.Length));
        foreach (var piece in pieces)
        {
            var cells = piece.Shape.ConvexCells();
            foreach (var place in piece.Occurrences)
            {
                parts.Add(new SweptPart(place.Id, piece.Role, place.Side, piece.Shape, place.Placement, cells));
            }
        }

        return parts.MoveToImmutable();
    }

    /// <summary>A member as it is laid out.</summary>
    public static SweptPart Of(Member member) =>
        new(member.Id, member.Role, member.Side, member.Shape, member.Placement, member.Shape.ConvexCells());

    /// <summary>Box around its cells in the world.</summary>
    public Box3 Box()
    {
        var box = Box3.Around([]);
        foreach (var cell in Cells)
        {
            foreach (var vertex in cell.Vertices)
            {
                box = box.With(Placement.ToWorld(vertex));
            }
        }

        return box;
    }
}
