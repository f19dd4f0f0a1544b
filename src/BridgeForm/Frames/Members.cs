using System.Collections.Immutable;
using BridgeForm.Roles;

namespace BridgeForm.Frames;

/// <summary>Every wooden part of the bridge where it lies.</summary>
public static class Members
{
    /// <summary>Frames from A to B, then bays from A to B, each made when it is asked for.</summary>
    public static IEnumerable<MemberGroup> Lay(BridgeLayout layout)
    {
        for (var i = 0; i <= layout.Bays; i++)
        {
            yield return Frame(layout, i);
        }

        for (var i = 1; i <= layout.Bays; i++)
        {
            yield return Bay(layout, i);
        }
    }

    /// <summary>Members of frame <paramref name="index"/> (0 … bays): base, posts, braces, packer, shims, newels.</summary>
    public static MemberGroup Frame(BridgeLayout layout, int index) =>
        new(layout.Poses[index].Name, [.. InFrame(layout, index, Sides.Both)]);

    /// <summary>Members of bay <paramref name="index"/> (1 … bays): deck, cleats, rails, pickets, caps, handrails.</summary>
    public static MemberGroup Bay(BridgeLayout layout, int index) =>
        new(FramePoses.BayName(index, layout.Bays), [.. InBay(layout, index, Sides.Both)]);

    /// <summary>Members of a frame, of those that stand on both sides only the ones on some sides; alike ones together.</summary>
    internal static List<Member> InFrame(BridgeLayout layout, int index, ImmutableArray<Side> sides)
    {
        List<Member> members = [BaseMember.Cut(layout, index)];
        foreach (var side in sides)
        {
            members.Add(Uprights.Post(layout, index, side));
        }

        foreach (var side in sides)
        {
            members.Add(Uprights.Brace(layout, index, side));
        }

        if (Packers.Lay(layout, index) is { } packer)
        {
            members.Add(packer);
        }

        foreach (var side in sides)
        {
            members.AddRange(Shims.Lay(layout, index, side));
        }

        foreach (var side in sides)
        {
            members.AddRange(GuardNewels.Lay(layout, index, side));
        }

        return members;
    }

    /// <summary>Members of a bay, of those that stand on both sides only the ones on some sides; alike ones together.</summary>
    internal static List<Member> InBay(BridgeLayout layout, int index, ImmutableArray<Side> sides)
    {
        var members = new List<Member>();
        if (layout.Parameters.Deck.Stringer is { } stringer)
        {
            members.AddRange(DeckBoards.Stringers(layout, index, stringer));
            members.AddRange(DeckTreads.Lay(layout, index, stringer));
        }
        else
        {
            members.AddRange(DeckBoards.Boards(layout, index));
        }

        members.AddRange(DeckCleats.Lay(layout, index));

        foreach (var side in sides)
        {
            members.AddRange(GuardRails.Lay(layout, index, side));
        }

        foreach (var side in sides)
        {
            members.AddRange(GuardPickets.Lay(layout, index, side));
        }

        foreach (var side in sides)
        {
            members.Add(GuardCaps.Lay(layout, index, side));
        }

        foreach (var side in sides)
        {
            members.AddRange(GuardHandrails.Lay(layout, index, side));
        }

        return members;
    }
}
