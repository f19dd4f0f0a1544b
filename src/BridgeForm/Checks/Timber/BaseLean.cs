using BridgeForm.Checks.Ropes;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// The base of a frame that leans as the worst load case makes it: what stands on it pulls level along the base as well, from
/// its height, and the ropes hold that at their axes, half each. The loaded side is the lower one.
/// </summary>
internal static class BaseLean
{
    // A load that stands all over a width enters the base there; so many places stand for that.
    private const int Places = 8;

    /// <summary>An area load on the lower half, in the case that leans most with it; none where nothing leans.</summary>
    public static IEnumerable<BaseCase> Cases(
        CheckContext context, FrameWeights weights, BaseBeam dead, AreaLoad area, double total)
    {
        if (Worst(context, c => !LoadedCases.IsPoint(context.Parameters.Loads, c.Id)) is not { } lean)
        {
            yield break;
        }

        var foot = context.Parameters.Frames.Post.Foot;
        var loaded = Own(context, weights, dead, lean.Tilt).WithDeck(context.Parameters, 0, foot, total / 2);
        for (var i = 0; i < Places; i++)
        {
            loaded = Pulled(context, loaded, foot * (i + 0.5) / Places, PeopleHeight(context), total / 2 / Places * Math.Sin(lean.Tilt));
        }

        yield return new(
            $"{area.Name} load on the right half, the frame leaning {CheckWords.Angle(lean.Tilt)} as in case {lean.Case}", loaded,
            area.Duration);
    }

    /// <summary>The point load somewhere, in the case that leans most with one; none where nothing leans.</summary>
    public static IEnumerable<BaseCase> Case(CheckContext context, FrameWeights weights, BaseBeam dead, string name, double at)
    {
        if (!(at > 0) || Worst(context, c => LoadedCases.IsPoint(context.Parameters.Loads, c.Id)) is not { } lean)
        {
            yield break;
        }

        var force = context.Parameters.Loads.PointForce;
        var loaded = Own(context, weights, dead, lean.Tilt).Plus([new(at, force)]);
        yield return new(
            $"{name}, the frame leaning {CheckWords.Angle(lean.Tilt)} as in case {lean.Case}",
            Pulled(context, loaded, at, PeopleHeight(context), force * Math.Sin(lean.Tilt)), LoadDuration.Live);
    }

    // A case that rolls over has no tilt; the bridge fails for it elsewhere.
    private static (double Tilt, string Case)? Worst(CheckContext context, Func<LoadCaseResult, bool> which) =>
        Ties.FirstLargest(context.Cases.Where(c => LoadedCases.HasLoad(c.Id) && which(c)), c => c.CrossSlope ?? 0) is
            { CrossSlope: { } tilt and > Tolerances.LevelFloor } worst
            ? (tilt, worst.Id)
            : null;

    // Deck, guards and braces lean as well, each from about its own middle.
    private static BaseBeam Own(CheckContext context, FrameWeights weights, BaseBeam dead, double tilt)
    {
        var (frames, deck, top) = (context.Parameters.Frames, context.Parameters.Deck.Thickness, context.Layout.Levels[1].Top);
        var (sin, guard) = (Math.Sin(tilt), top + (frames.Post.Length / 2));
        var frame = GuardFrame.Build(context.Parameters);
        (double At, double Height, double Weight)[] all =
        [
            (0, top + (deck / 2), weights.Deck),
            (-frame.PostFoot, guard, weights.Guard),
            (frame.PostFoot, guard, weights.Guard),
            (-frame.BraceFoot, guard, weights.Brace),
            (frame.BraceFoot, guard, weights.Brace),
            (0, Middle(context), weights.Base),
        ];
        return all.Aggregate(dead, (beam, part) => Pulled(context, beam, part.At, part.Height, part.Weight * sin));
    }

    // A level force to the right at a height turns the base at its place, and the ropes below its axis turn it at theirs.
    private static BaseBeam Pulled(CheckContext context, BaseBeam beam, double at, double height, double force)
    {
        var middle = Middle(context);
        return beam.Plus(couples:
        [
            new(at, -(height - middle) * force),
            new(beam.Support, -middle * force / 2),
            new(-beam.Support, -middle * force / 2),
        ]);
    }

    private static double PeopleHeight(CheckContext context) =>
        context.Layout.Levels[1].Top + context.Parameters.Deck.Thickness + StandingWeights.PeopleOverDeck;

    private static double Middle(CheckContext context) => (context.Layout.Levels[1].Top + context.Layout.Levels[1].Bottom) / 2;
}
