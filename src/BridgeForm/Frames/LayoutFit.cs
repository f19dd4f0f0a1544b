using System.Collections.Immutable;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Whether every part of a layout is a part: long parts run from their first end to their second, posts reach from foot to
/// head, rails have room between deck and head, and each bay has its treads. Asked of the shape itself, never of an estimate.
/// </summary>
internal static class LayoutFit
{
    private const string Spacing = "frames.spacing";
    private const string PostLength = "frames.post.length";
    private const string Sag = "ropes.sag";
    private const string Rise = "site.rise";
    private const string EndDepth = "frames.channel.end_depth";

    /// <summary>What does not fit: of each kind the first from A; empty when everything does.</summary>
    /// <param name="layout">Where everything lies.</param>
    /// <param name="token">Asked before each kind.</param>
    public static ImmutableArray<Misfit> Check(BridgeLayout layout, CancellationToken token = default)
    {
        // Parts can be looked at only where the lines they lie on are sound.
        ImmutableArray<Misfit> lines = [.. Deck(layout), .. Caps(layout)];
        return lines.IsEmpty
            ? [.. Kinds.SelectMany(kind =>
            {
                token.ThrowIfCancellationRequested();
                return kind(layout);
            })]
            : lines;
    }

    private static Func<BridgeLayout, IEnumerable<Misfit>>[] Kinds =>
        new Func<BridgeLayout, IEnumerable<Misfit>>[] { Posts, Newels, Boards, Guards, RailFit.Check, TreadFit.Check };

    private static IEnumerable<Misfit> Deck(BridgeLayout layout)
    {
        if (layout.Deck.Unsound(layout.Poses) is { } bay)
        {
            yield return new Misfit(
                FaultCode.DeckTurnsOver.Id(), Spacing, [EndDepth, Sag, Rise],
                $"the deck cannot lie on the bases of {Ends(layout, bay)}: it turns over between them");
        }
    }

    private static IEnumerable<Misfit> Caps(BridgeLayout layout)
    {
        if (layout.Caps.Unsound(layout.Poses) is { } bay)
        {
            yield return new Misfit(
                FaultCode.PostsCross.Id(), PostLength, [Spacing, Sag, Rise], $"the posts of {Ends(layout, bay)} cross above the deck");
        }
    }

    private static IEnumerable<Misfit> Posts(BridgeLayout layout)
    {
        for (var frame = 0; frame <= layout.Bays; frame++)
        {
            if (IsTooShort(Uprights.Post(layout, frame, Side.Right)))
            {
                return [new Misfit(FaultCode.PostHeadRunsOut.Id(), PostLength, ["frames.post.section", Sag, Rise], $"the cut of the head "
                    + $"of {layout.Poses[frame].Name}'s posts runs out at their feet")];
            }
        }

        return [];
    }

    private static IEnumerable<Misfit> Newels(BridgeLayout layout)
    {
        foreach (var (frame, end) in ((int, string)[])[(0, "a"), (layout.Bays, "b")])
        {
            if (GuardNewels.Lay(layout, frame, Side.Right).Any(IsTooShort))
            {
                yield return new Misfit(
                    FaultCode.LandingAboveGuard.Id(), $"site.{end}.landing.level", ["guard.newels.height", PostLength],
                    $"the landing lies so high that newels level with the cap of {layout.Poses[frame].Name} have no length on it");
            }
        }
    }

    private static IEnumerable<Misfit> Boards(BridgeLayout layout)
    {
        var bay = First(layout, i => layout.Parameters.Deck.Stringer is { } stringer
            ? DeckBoards.Stringers(layout, i, stringer).Take(1)
            : DeckBoards.Boards(layout, i).Take(1));
        var part = layout.Parameters.Deck.Stringer is null ? "boards" : "stringers";
        return bay is { } at ? [new Misfit(FaultCode.DeckWithoutLength.Id(), Spacing, ["deck.butt_gap", Sag, Rise], $"the {part} between "
            + $"{Ends(layout, at)} have no length")] : [];
    }

    private static IEnumerable<Misfit> Guards(BridgeLayout layout)
    {
        if (First(layout, i => [GuardCaps.Lay(layout, i, Side.Right)]) is { } cap)
        {
            return [new Misfit(FaultCode.PostsCross.Id(), PostLength, [Spacing, Sag, Rise], $"the posts of {Ends(layout, cap)} cross above "
                + "the deck: the cap between them has no length")];
        }

        return First(layout, i =>
            [
                .. GuardRails.Lay(layout, i, Side.Right), .. GuardPickets.Lay(layout, i, Side.Right),
                .. GuardHandrails.Lay(layout, i, Side.Right),
            ]) is { } rail
            ? [new Misfit(FaultCode.PostsCross.Id(), PostLength, [Spacing, Sag, Rise], $"the posts of {Ends(layout, rail)} meet above the "
                + "deck: a rail between them has no length")]
            : [];
    }

    private static int? First(BridgeLayout layout, Func<int, IEnumerable<Member>> parts)
    {
        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            if (parts(bay).Any(IsTooShort))
            {
                return bay;
            }
        }

        return null;
    }

    private static string Ends(BridgeLayout layout, int bay) => $"{layout.Poses[bay - 1].Name} and {layout.Poses[bay].Name}";

    /// <summary>An edge along the stick is shorter than any part, or the ends have changed places.</summary>
    private static bool IsTooShort(Member member)
    {
        var (near, far) = (member.Shape.Near, member.Shape.Far);
        if (!(near.Normal.X < 0 && far.Normal.X > 0))
        {
            return true;
        }

        var (y, z) = (member.Shape.Width / 2, member.Shape.Thickness / 2);
        return !(Edge(-y, -z) > Tolerances.ShortestEdge && Edge(-y, z) > Tolerances.ShortestEdge && Edge(y, -z) > Tolerances.ShortestEdge
            && Edge(y, z) > Tolerances.ShortestEdge);

        double Edge(double aty, double atz) => far.XAt(aty, atz) - near.XAt(aty, atz);
    }
}

/// <summary>Something on the shape that was found which no parts can be cut for, with the keys of the project file it hangs on.</summary>
/// <param name="Code">Stable id of what is wrong, of <c>docs/faults.md</c>.</param>
/// <param name="Key">The key to change first, such as <c>frames.post.length</c>.</param>
/// <param name="Others">Other keys that would help, the likeliest first.</param>
/// <param name="What">What is wrong, as the rest of a sentence that begins with the value of <paramref name="Key"/>.</param>
public sealed record Misfit(string Code, string Key, ImmutableArray<string> Others, string What);
