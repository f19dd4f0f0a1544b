using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Cleats across the deck, as long as it is wide. X from left to right, Z the upper face.</summary>
internal static class DeckCleats
{
    // Bays are as long as the straight line from A to B shares out, and a little longer where the ropes hang through.
    private const double Longer = 1.05;

    /// <summary>Cleats of one bay, from A on, as many in every bay; on treads each on the middle of one.</summary>
    public static IEnumerable<Member> Lay(BridgeLayout layout, int bay)
    {
        if (layout.Parameters.Deck.Cleats is not { } cleats)
        {
            yield break;
        }

        var along = layout.Deck.Direction(bay);
        var up = Vector3d.UnitZ.Cross(along);
        var half = Half(layout, bay, cleats);
        var height = layout.Parameters.Deck.Thickness + (cleats.Section.Thickness / 2);
        var places = Places(layout, bay, cleats);
        for (var i = 0; i < places.Length; i++)
        {
            yield return new Member(
                new PartId(FramePoses.BayName(bay, layout.Bays), Role.Cleat, Side.None, i + 1),
                layout.Parameters.StockOf(Role.Cleat),
                cleats.Section.Name,
                Placement.FromLengthAndThickness(
                    layout.Deck.Points[bay - 1] + (places[i] * along) + (height * up), Vector3d.UnitZ, up),
                new CutStock(
                    cleats.Section.Width, cleats.Section.Thickness, new Plane(-Vector3d.UnitX, half), new Plane(Vector3d.UnitX, half)));
        }
    }

    /// <summary>Half as long as the deck is wide; where the lowest rail lies hardly higher than they do, up to its inner face.</summary>
    private static double Half(BridgeLayout layout, int bay, CleatParameters cleats)
    {
        var (guard, post, deck) = (layout.Parameters.Guard, layout.Parameters.Frames.Post, layout.Parameters.Deck);
        var filled = DeckWidth.Filled(layout.Parameters) / 2;
        double Room(int frame) => GuardRails.Heights(layout, frame) is [var lowest, ..]
            ? lowest - (guard.Rail.Width / 2) - GuardRails.DeckAlongPost(layout, frame)
            : double.PositiveInfinity;

        // Where a bay rises its rails lie closer to its deck than along the posts.
        return Math.Min(Room(bay - 1), Room(bay)) > 2 * cleats.Section.Thickness
            ? filled
            : Math.Min(
                filled,
                post.Foot + (deck.Thickness * Elementary.Tan(post.Lean)) - (GuardPickets.Behind(guard) / Elementary.Cos(post.Lean))
                    - Clear);
    }

    // Beside a rail that posts push a little inward, and for a broom: common practice, no source.
    private const double Clear = 10 * Rounding.Millimetre;

    /// <summary>Widest distance of two cleats, middle to middle along the deck, over the frames too, metres.</summary>
    public static double Widest(BridgeLayout layout, CleatParameters cleats)
    {
        var (widest, behind) = (0.0, 0.0);
        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            var places = Places(layout, bay, cleats);
            var length = (layout.Deck.Points[bay] - layout.Deck.Points[bay - 1]).Length;
            for (var i = 0; i < places.Length; i++)
            {
                widest = Math.Max(widest, i > 0 ? places[i] - places[i - 1] : bay > 1 ? behind + places[0] : 0);
            }

            behind = length - places[^1];
        }

        return widest;
    }

    /// <summary>Middles of a bay's cleats, metres from its start along the deck.</summary>
    private static double[] Places(BridgeLayout layout, int bay, CleatParameters cleats)
    {
        var site = layout.Parameters.Site;
        var straight = Math.Sqrt((site.Span * site.Span) + (site.Rise * site.Rise)) / layout.Bays;
        var wanted = Math.Max(1, (int)Math.Ceiling(
            (Math.Min(layout.Parameters.Frames.Spacing, Longer * straight) / cleats.Spacing) - Tolerances.RoundOff));
        if (layout.Parameters.Deck.Stringer is { } stringer)
        {
            var treads = DeckTreads.Middles(layout, bay, stringer);
            var count = Math.Min(wanted, treads.Length);
            return [.. Enumerable.Range(0, count).Select(i => treads[(int)((i + 0.5) * treads.Length / count)])];
        }

        var length = (layout.Deck.Points[bay] - layout.Deck.Points[bay - 1]).Length;
        return [.. Enumerable.Range(0, wanted).Select(i => (i + 0.5) * length / wanted)];
    }
}
