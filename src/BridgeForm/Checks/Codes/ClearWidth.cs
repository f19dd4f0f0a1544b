using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Codes;

/// <summary>Width that people pass in: between the rails' inner faces, or the posts' where no rail is narrower, at its narrowest.</summary>
internal static class ClearWidth
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "clear-width",
        "Clear width between the guards",
        "Narrowest width between the rails' inner faces, pickets, handrails, or the posts at the deck, against 36 in. A public "
            + "bridge that is narrower fails; a private one is only told.",
        Limits.ClearWidth.Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>Against the width of an accessible route; a warning on a private bridge.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (width, frame) = Least(context.Layout);
        var (needed, source) = Limits.ClearWidth;
        var words = context.Words();
        return Outcome.AtLeast(
            Declared, width, needed, "m", source,
            $"{words.Length(width)} at the narrowest, {words.InInches(needed)} to compare with",
            context.Parameters.Use == BridgeUse.Public ? CheckStatus.Fail : CheckStatus.Warn).On(context.InFrame(frame, Role.Post));
    }

    /// <summary>Metres, and the frame where it is; the first where posts alone are nearest.</summary>
    private static (double Width, int Frame) Least(BridgeLayout layout)
    {
        var least = (Width: DeckWidth.BetweenPosts(layout.Parameters), Frame: 0);
        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            foreach (var part in PassableWidth.Inmost(layout, bay))
            {
                foreach (var frame in (int[])[bay - 1, bay])
                {
                    var width = PassableWidth.Inside(layout, part, bay, frame);
                    least = (Math.Min(least.Width, width), Ties.IsLarger(least.Width, width) ? frame : least.Frame);
                }
            }
        }

        return least;
    }
}

/// <summary>Width between the guards, square to the bridge. Metres.</summary>
public static class PassableWidth
{
    /// <summary>At a frame, the narrower of its two bays: between rails with their pickets, handrails, or the posts at the deck.</summary>
    public static double At(BridgeLayout layout, int frame)
    {
        var bays = Enumerable.Range(frame, 2).Where(bay => bay >= 1 && bay <= layout.Bays);
        return bays.SelectMany(bay => Inmost(layout, bay).Select(part => Inside(layout, part, bay, frame)))
            .Append(DeckWidth.BetweenPosts(layout.Parameters)).Min();
    }

    /// <summary>Between the inner faces of a part of the right side and its like on the left, at a frame of its bay.</summary>
    internal static double Inside(BridgeLayout layout, Member part, int bay, int frame)
    {
        var across = Plane.Through(layout.Poses[frame].Node, layout.Deck.Direction(bay));
        return 2 * CrossSections.Furthest(part, across, -Vector3d.UnitZ).Z;
    }

    /// <summary>What stands furthest in on the right side of a bay: the lowest rail with its pickets, and the handrail.</summary>
    internal static IEnumerable<Member> Inmost(BridgeLayout layout, int bay)
    {
        var onIt = 2 * (layout.Parameters.Guard.Pickets?.Section.Thickness ?? 0);
        return GuardRails.Lay(layout, bay, Side.Right).Take(1)
            .Select(rail => onIt > 0 ? rail with { Shape = rail.Shape with { Thickness = rail.Shape.Thickness + onIt } } : rail)
            .Concat(GuardHandrails.Lay(layout, bay, Side.Right));
    }
}

/// <summary>Gaps that heels, canes and wheels find.</summary>
internal static class DeckGaps
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "deck-gaps",
        "Gaps in the deck",
        "Widest gap between boards or treads, and between boards that meet end to end, against 1/2 in, a figure to compare with; a gap "
            + "that lets a ball of 35 mm (1.378 in) fall through fails. The side gap at the posts is not walked on.",
        $"{Limits.FloorOpening.Source}; {Limits.FloorBall.Source}",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>A warning; a fault where a foot goes through.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var parameters = context.Parameters;
        var deck = parameters.Deck;
        var bay = deck.Stringer is { } s ? Ties.FirstLargest(context.Bays, i => DeckTreads.Gap(context.Layout, i, s)) : 1;
        var between = deck.Stringer is { } stringer
            ? DeckTreads.Gap(context.Layout, bay, stringer)
            : DeckWidth.EqualGap(DeckWidth.Filled(parameters), deck.Board.Width, DeckWidth.BoardCount(parameters));
        var widest = deck.Stringer is null ? Math.Max(between, deck.ButtGap) : between;
        var words = context.Words();
        var (ball, floors) = Limits.FloorBall;
        if (GuardOpenings.Status(widest, ball) == CheckStatus.Fail)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, widest, ball, "m", GuardOpenings.Ratio(widest, ball), floors,
                $"{words.Length(widest)} between {(deck.Stringer is null ? "boards" : "treads")}; no ball of {words.Length(ball)} may "
                    + "fall through").On(context.Walked(bay));
        }

        var (limit, source) = Limits.FloorOpening;
        return Outcome.AtMost(
            Declared, widest, limit, "m", source,
            $"{(deck.Stringer is null ? "boards" : "treads")} {words.Length(between)} apart, ends {words.Length(deck.ButtGap)} apart; at "
                + $"most {words.InInches(limit)}",
            CheckStatus.Warn).On(context.Walked(bay));
    }
}
