using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Ropes;

/// <summary>People who push on one guard: what the bridge does, not what its guard holds.</summary>
internal static class GuardLeans
{
    private const string Source = "IBC 1607.8.1: 50 plf on a public guard, taken on all of it at once; IRC Table R301.5 and ASCE 7 4.5.1: "
        + "200 lbf at the top; statics of both ropes in space, frames rigid in their plane";

    /// <summary>What it states.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-line-load",
        "People who push on one guard",
        "On a public bridge 50 plf outward along the whole of one guard, on a private one 200 lbf outward on the post of the middle frame, "
            + "at the cap's top, nobody's weight on the bridge, with all of its own: how far the ropes move to the side and the frames "
            + "roll, and where it turns over. Only stated: side stays hold a bridge against it, none is modelled, and a licensed engineer "
            + "decides. People who stand beside the one who pushes tilt it further; cross-slope is looked at without a push.",
        Source,
        [CheckStatus.Engineer]);

    /// <summary>Always for an engineer.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (words, isPublic) = (context.Words(), context.Parameters.Use == BridgeUse.Public);
        if (context.Wind.Leaning is not { } state)
        {
            return Outcome.ForEngineer(Declared, 0, "N", Source, "no frame hangs between the supports");
        }

        var push = isPublic
            ? $"{PushWords.Push(words, isPublic, GuardLean.Line)} along all of one guard between the end frames: "
                + $"{words.Force(state.Force)} to the side"
            : $"{PushWords.Push(words, isPublic, GuardLean.Point)} outward on one post of {Middle(context)}";
        return Outcome.ForEngineer(
            Declared, state.Force, "N", Source,
            $"{push}; {Words(state, words, isPublic, new QuantityText(words.Units))}. Nobody's weight is on it. Side stays hold a bridge "
                + "against it; none is modelled. A licensed engineer decides.");
    }

    private static string Words(WindState state, CheckWords words, bool isPublic, QuantityText text) => state.Stands
        ? $"it stands, {text.Size(state.Sideways)} sideways, roll {CheckWords.Angle(state.Roll)} at {state.RollFrame}, "
            + $"{words.Force(state.Lift)} to hold down at a keeper"
        : PushWords.Falls(state, words, isPublic);

    private static string Middle(CheckContext context) => context.Frames[context.Layout.Bays / 2].Name;
}
