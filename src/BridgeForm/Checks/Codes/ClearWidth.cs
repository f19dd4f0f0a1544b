using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Project;
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
        "Narrowest width between the rails' inner faces, or the posts' at the deck, against 36 in. A public bridge that is narrower fails; a private one is only told.",
        Limits.ClearWidth.Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>Against the width of an accessible route; a warning on a private bridge.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var width = Least(context.Layout);
        var (needed, source) = Limits.ClearWidth;
        var words = context.People();
        return Outcome.AtLeast(
            Declared, width, needed, "m", source,
            $"{words.Length(width)} at the narrowest, {words.Length(needed)} to compare with",
            context.Parameters.Use == BridgeUse.Public ? CheckStatus.Fail : CheckStatus.Warn);
    }

    /// <summary>Metres.</summary>
    public static double Least(BridgeLayout layout)
    {
        var least = DeckWidth.BetweenPosts(layout.Parameters);
        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            var lowest = GuardRails.Of(layout, bay, Side.Right).FirstOrDefault();
            if (lowest is null)
            {
                break;
            }

            foreach (var frame in (int[])[bay - 1, bay])
            {
                var across = Plane.Through(layout.Poses[frame].Node, layout.Deck.Direction(bay));
                least = Math.Min(least, 2 * CrossSections.Furthest(lowest, across, -Vector3d.UnitZ).Z);
            }
        }

        return least;
    }
}
