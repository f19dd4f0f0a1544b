using BridgeForm.Loads;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Ropes;

/// <summary>People who push on one guard: what the bridge does, not what its guard holds.</summary>
internal static class GuardLeans
{
    private const string Source = "IBC 1607.8.1: 730 N/m (50 plf) on a public guard, taken on all of it at once; IRC Table R301.5 and "
        + "ASCE 7 4.5.1: 890 N (200 lbf) at the top; 75 kg: EUR 23984 EN; statics of both ropes in space, frames rigid and free to yaw";

    /// <summary>What it states.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-line-load",
        "People who push on one guard",
        "200 lbf outward on one post, at the cap's top, where it rolls the bridge furthest (looked for from the middle and from the "
            + "softest frame); the same with the rope grown by the high end of its stretch, hottest, nothing taken up and the wood dry, "
            + "and there also with the weight of the one who pushes, 75 kg, 150 mm inside the clear width; and on a public bridge 50 plf "
            + "outward along the whole of one guard: how far the ropes move to the side and the frames roll, and where it turns over. "
            + "It fails where the push on one post alone turns it over or rolls it by more than 30° (own figure: nobody keeps his feet): "
            + "one person who stumbles does that. All else is only stated, with that person's weight too: side stays hold a bridge "
            + "against it, none is modeled, and a licensed engineer decides. Nobody else is on it; people beside the one who pushes "
            + "tilt it further; cross-slope is looked at without a push.",
        Source,
        [CheckStatus.Engineer, CheckStatus.Fail]);

    /// <summary>For an engineer, unless one person's push turns the bridge over.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        if (context.Wind.Pushed is not { } pushed)
        {
            return Outcome.ForEngineer(Declared, 0, "N", Source, "no frame hangs between the supports");
        }

        var grown = context.Wind.PushedGrown ?? pushed;
        var onPost = $"{words.Force(GuardLean.Point)} outward on one post of {pushed.Frame}: {Words(pushed, words)}; {PushWords.InHeat}, "
            + $"on one of {grown.Frame}: {Words(grown, words)}"
            + (context.Wind.PushedByWeight is { } by ? $"; there, with the weight of the one who pushes: {Words(by, words)}" : "");
        var all = context.Wind.Leaning is not { } along
            ? onPost
            : $"{PushWords.Line(words, GuardLean.Line)} along all of one guard between the end frames: {words.Force(along.Force)} to the "
                + $"side; {Words(along, PushWords.Falls(along, words), words)}. {onPost}";
        var detail = $"{all}. Nobody else is on it. Side stays hold a bridge against it; none is modeled. A licensed engineer decides.";
        var stands = Math.Min(StandsTo(pushed), StandsTo(grown));
        var result = stands < GuardLean.Point
            ? Outcome.AtMost(
                Declared, GuardLean.Point, stands, "N", Source,
                $"{detail} One person's push does it: set the ropes further apart, or sag less, or have side stays designed.")
            : Outcome.ForEngineer(Declared, context.Wind.Leaning?.Force ?? GuardLean.Point, "N", Source, detail);
        return result.On(context.In(StandsTo(grown) < StandsTo(pushed) ? grown.Frame : pushed.Frame, Role.Post));
    }

    private static double StandsTo(PushOnPost pushed) => pushed.State.Stands ? GuardLean.Point : pushed.State.StandsTo ?? 0;

    private static string Words(PushOnPost pushed, CheckWords words) => Words(pushed.State, PushWords.Falls(pushed, words), words);

    private static string Words(WindState state, string falls, CheckWords words) => falls.Length > 0
        ? falls
        : $"{PushWords.Stands(state, words)}, {words.Force(state.Lift)} to hold down at a keeper";
}
