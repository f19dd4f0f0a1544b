using System.Collections.Immutable;

namespace BridgeForm.Frames;

/// <summary>Every wooden part of the bridge where it lies.</summary>
public static class Members
{
    /// <summary>Frames from A to B, then bays from A to B, each made when it is asked for.</summary>
    public static IEnumerable<MemberGroup> Of(BridgeLayout layout)
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

    /// <summary>Members of frame <paramref name="index"/> (0 … bays): base, posts, braces, packer.</summary>
    public static MemberGroup Frame(BridgeLayout layout, int index)
    {
        var members = ImmutableArray.CreateBuilder<Member>(6);
        members.Add(BaseMember.Of(layout, index));
        foreach (var side in Sides.Both)
        {
            members.Add(Uprights.Post(layout, index, side));
        }

        foreach (var side in Sides.Both)
        {
            members.Add(Uprights.Brace(layout, index, side));
        }

        if (Packers.Of(layout, index) is { } packer)
        {
            members.Add(packer);
        }

        return new MemberGroup(layout.Poses[index].Name, members.ToImmutable());
    }

    /// <summary>Members of bay <paramref name="index"/> (1 … bays): deck, rails, caps.</summary>
    public static MemberGroup Bay(BridgeLayout layout, int index)
    {
        var members = ImmutableArray.CreateBuilder<Member>(32);
        members.AddRange(Deck(layout, index));
        foreach (var side in Sides.Both)
        {
            members.AddRange(GuardRails.Of(layout, index, side));
        }

        foreach (var side in Sides.Both)
        {
            members.Add(GuardCaps.Of(layout, index, side));
        }

        return new MemberGroup(FramePoses.BayName(index, layout.Bays), members.ToImmutable());
    }

    /// <summary>Boards, or stringers and treads, of bay <paramref name="index"/> (1 … bays).</summary>
    internal static IEnumerable<Member> Deck(BridgeLayout layout, int index) => layout.Parameters.Deck.Stringer is { } stringer
        ? DeckBoards.Stringers(layout, index, stringer).Concat(DeckTreads.Of(layout, index, stringer))
        : DeckBoards.Boards(layout, index);
}
