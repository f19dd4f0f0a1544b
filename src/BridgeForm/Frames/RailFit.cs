using BridgeForm.Project;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Whether the rails have room between deck, lift included, and post's head, frame by frame.</summary>
internal static class RailFit
{
    private const string Count = "guard.rails.count";
    private const string Section = "guard.rails.section";
    private const string Heights = "guard.rails.heights";
    private const string PostLength = "frames.post.length";

    /// <summary>The frame with the least room, when it is too little; else the bay in which rails that rise lie on each other.</summary>
    public static IEnumerable<Misfit> Check(BridgeLayout layout)
    {
        Misfit[] atFrames = [.. AtFrames(layout)];
        return atFrames.Length > 0 ? atFrames : Between(layout);
    }

    private static IEnumerable<Misfit> AtFrames(BridgeLayout layout)
    {
        var guard = layout.Parameters.Guard;
        var frame = Enumerable.Range(0, layout.Bays + 1).MaxBy(i => layout.Deck.Lifts[i]);
        var deck = GuardRails.DeckAlongPost(layout, frame);
        var head = layout.Parameters.Frames.Post.Length;
        return guard.RailHeights.IsEmpty ? ByCount(layout, frame, head - deck) : ByHeight(layout, frame, deck);
    }

    // Equal gaps must be gaps: rails that touch or lie on each other are a wall that was not asked for.
    private static IEnumerable<Misfit> ByCount(BridgeLayout layout, int frame, double room)
    {
        var (guard, text) = (layout.Parameters.Guard, new QuantityText(layout.Parameters.Units));
        var needed = guard.RailCount * (guard.Rail.Width + (guard.Pickets?.Gap ?? guard.Net?.Bottom ?? 0));
        if (guard.RailCount > 0 && needed >= room - Tolerances.RoundOff)
        {
            yield return new Misfit(
                FaultCode.RailsOverlap.Id(),
                guard.Pickets is null && guard.Net is null ? Count : PostLength,
                [PostLength, Section],
                $"the rails of {text.Size(guard.Rail.Width)} "
                    + (guard.Net is not null ? "have no room over the gap under the net"
                        : guard.Pickets is null ? "overlap" : "have no room with the gaps of the pickets")
                    + $": between deck and head are {text.Size(Math.Max(0, room))} along the posts of {layout.Poses[frame].Name}, "
                    + $"where the deck lies {text.Size(layout.Deck.Lifts[frame])} above the base");
        }
    }

    // Rails that rise stand closer, square to themselves, than their heights do along the posts.
    private static IEnumerable<Misfit> Between(BridgeLayout layout)
    {
        var guard = layout.Parameters.Guard;
        var text = new QuantityText(layout.Parameters.Units);
        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            Member[] rails = [.. GuardRails.Lay(layout, bay, Side.Right)];
            var overlap = rails.Zip(rails.Skip(1), (below, above) => Overlap(layout, bay, below, above)).DefaultIfEmpty().Max();
            if (overlap > Tolerances.Seating)
            {
                var what = $"the rails overlap by {text.Size(overlap)} in {FramePoses.BayName(bay, layout.Bays)}: it rises, and square to "
                    + "the rails they stand closer than along the posts";
                return [
                    guard.RailHeights.IsEmpty && guard.Pickets is null
                        ? new Misfit(FaultCode.RailsOverlap.Id(), Count, [PostLength, Section, "ropes.sag", "site.rise"], what)
                        : new Misfit(FaultCode.RailsOverlap.Id(), Section, [Heights, "ropes.sag", "site.rise"], what),
                ];
            }
        }

        return [];
    }

    /// <summary>How far the upper rail lies on the lower one, across the lower one's face, at the frame where it is more; metres.</summary>
    private static double Overlap(BridgeLayout layout, int bay, Member below, Member above)
    {
        var least = double.MaxValue;
        foreach (var pose in (ReadOnlySpan<FramePose>)[layout.Poses[bay - 1], layout.Poses[bay]])
        {
            var at = Plane.Through(pose.Node, pose.Along);
            least = Math.Min(least, Math.Abs((On(above, at) - On(below, at)).Dot(below.Placement.Y)));
        }

        return ((below.Shape.Width + above.Shape.Width) / 2) - least;
    }

    private static Vector3d On(Member rail, Plane at) =>
        rail.Placement.Origin + (at.LineParameter(rail.Placement.Origin, rail.Placement.X) * rail.Placement.X);

    private static IEnumerable<Misfit> ByHeight(BridgeLayout layout, int frame, double deck)
    {
        var (guard, text) = (layout.Parameters.Guard, new QuantityText(layout.Parameters.Units));
        var edge = guard.RailHeights[0] - (guard.Rail.Width / 2);
        if (edge < deck - Tolerances.RoundOff)
        {
            yield return new Misfit(
                FaultCode.RailBelowDeck.Id(),
                "guard.rails.heights.0",
                [Heights, Section],
                $"the lowest rail's edge is below the deck's surface at {layout.Poses[frame].Name}, {text.Size(deck)} up along the post, "
                    + $"where the deck lies {text.Size(layout.Deck.Lifts[frame])} above the base");
        }
    }
}

/// <summary>Whether every bay of a deck of treads has a tread, and its treads their least gap, on this very shape.</summary>
internal static class TreadFit
{
    private const string Count = "deck.count";
    private const string Gap = "deck.gap";
    private const string Spacing = "frames.spacing";
    private const string Section = "deck.board.section";

    /// <summary>The first bay without a tread, or the one whose treads stand closest when that is too close.</summary>
    public static IEnumerable<Misfit> Check(BridgeLayout layout) => layout.Parameters.Deck.Stringer is { } stringer
        ? Bare(layout, stringer) ?? TooClose(layout, stringer) ?? []
        : [];

    private static Misfit[]? Bare(BridgeLayout layout, StringerParameters stringer)
    {
        var text = new QuantityText(layout.Parameters.Units);
        var deck = layout.Parameters.Deck;
        var bare = layout.Steps.Treads.Select((count, i) => (Count: count, Bay: i + 1)).Where(t => t.Count < 1).ToList();
        if (bare.Count == 0)
        {
            return null;
        }

        var bay = bare.MinBy(t => DeckTreads.Length(layout, t.Bay, stringer)).Bay;
        var name = FramePoses.BayName(bay, layout.Bays);
        return
        [
            new Misfit(
                FaultCode.NoTreadFits.Id(),
                Spacing,
                [Section, Gap],
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"no tread fits into {bare.Count} of {layout.Bays} bays: {name} has "
                        + $"{text.Size(DeckTreads.Length(layout, bay, stringer))} between its frames' mid-planes, and a tread of "
                        + $"{text.Size(deck.Board.Width)} with its gap takes {text.Size(deck.Board.Width + deck.Gap)}")),
        ];
    }

    private static Misfit[]? TooClose(BridgeLayout layout, StringerParameters stringer)
    {
        var (deck, text) = (layout.Parameters.Deck, new QuantityText(layout.Parameters.Units));
        if (deck.Count is not { } count)
        {
            return null;
        }

        var bay = Enumerable.Range(1, layout.Bays).MinBy(i => DeckTreads.Length(layout, i, stringer));
        return DeckTreads.Most(layout, bay, stringer) >= count
            ? null
            : [new Misfit(
                FaultCode.TreadsTooClose.Id(),
                Count,
                [Spacing, Section, Gap],
                $"treads leave gaps below {text.Size(deck.Gap)} in {FramePoses.BayName(bay, layout.Bays)}, "
                    + $"{text.Size(DeckTreads.Length(layout, bay, stringer))} between its frames' mid-planes")];
    }
}
