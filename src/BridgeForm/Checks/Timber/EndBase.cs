using System.Collections.Immutable;
using BridgeForm.Frames;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// The base of an end frame under a push on its guard: it lies on its landing, which presses it up at one end and holds it down
/// at the other, and between post and brace the push goes across the rope's channel.
/// </summary>
internal static class EndBase
{
    private const string Cases =
        "the pushes of guard-post, the brace's force in the middle of its head or at its lower edge, where it presses in the middle of "
            + "its foot or on either edge of it, and nothing else: what stands on the base and its own weight go straight into the "
            + "landing. Taken as a beam that the landing bears at one end and holds "
            + "down at the other, and sideways at the end that is nearer to the push, with the deepest channel of both end frames at its "
            + "deep mouth and all holes; held down elsewhere it bends otherwise.";

    /// <summary>Bending.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "end-base-bending",
        "Bending of an end frame's base by a push on its guard",
        $"fb = M / S beside the channels and at them, as base-bending and base-channel-bending do, against Fb', under {Cases}",
        $"NDS 3.3 (ASD); {GuardPush.Source}; NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Shear.</summary>
    public static DeclaredCheck DeclaredShear { get; } = new(
        "end-base-shear",
        "Shear in an end frame's base by a push on its guard",
        $"V beside the channels and at them, as base-shear and base-channel-shear do, with the notch formula where the bottom is in "
            + $"tension, under {Cases}",
        $"NDS 3.4.2 and 3.4.3.2 (ASD, from memory); {GuardPush.Source}; NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Both, each where the base is used most.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var cases = List(context.Layout);
        var section = BaseSection.Cut(context, [0, context.Layout.Bays]);
        ImmutableArray<BaseStretch> beside = [.. section.Beside(context.Parameters.Frames.Base.Length / 2)];
        yield return Worst(
            BaseBending.Check(context, Declared, section.Full, beside, cases),
            BaseBending.Check(context, Declared, section.Net, [.. section.Channels()], cases))
            .OnBase(context, section.Frame);
        yield return Worst(
            BaseShear.Full(context, DeclaredShear, section, cases), BaseShear.Net(context, DeclaredShear, section, cases))
            .OnBase(context, section.Frame);
    }

    /// <summary>All cases.</summary>
    public static ImmutableArray<BaseCase> List(BridgeLayout layout)
    {
        var parameters = layout.Parameters;
        var (half, made) = (parameters.Frames.Base.Depth / 2, parameters.Frames.Base);
        var bare = new BaseBeam(made.Length / 2, [], [], []);
        return
        [
            .. GuardPush.WithWind(layout, parameters).SelectMany(push => push.OnBase(parameters).Select(frame => new BaseCase(
                $"{push.Name}, the base held down at its end{frame.After}",
                HeldAtOneEnd(BaseCases.Pushed(bare, frame, half, half, push.Force), half * push.Force / 2),
                LoadDuration.Guard)
            {
                Push = push,
                After = frame.After,
            })),
        ];
    }

    // The level push goes into the landing at the end beyond the guard that is pushed: there it bends the base most.
    private static BaseBeam HeldAtOneEnd(BaseBeam beam, double couple) =>
        beam.Plus(couples: [new(beam.Support, -couple), new(-beam.Support, couple)]);

    private static CheckResult Worst(CheckResult beside, CheckResult channel)
    {
        var worst = (channel.Ratio ?? channel.Demand) > (beside.Ratio ?? beside.Demand) ? channel : beside;
        return worst with { Source = $"{worst.Source}; {GuardPush.Source}" };
    }
}
