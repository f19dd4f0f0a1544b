using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks;

/// <summary>How people's push on one guard is told: a load along it on a public bridge, one force on a post on any.</summary>
internal static class PushWords
{
    /// <summary>
    /// In a few words where a load along the guard turns the bridge over; empty where it stands, or nothing was looked at.
    /// </summary>
    public static string Falls(WindState? state, CheckWords words) => Falls(state, "turns over", push => Line(words, push));

    /// <summary>The same of a push on one post.</summary>
    public static string Falls(PushOnPost? push, CheckWords words) =>
        Falls(push?.State, $"turns over or rolls beyond {CheckWords.Angle(GuardLean.MostRoll)}", words.Force);

    /// <summary>Where it stands: how far to the side, and how far it rolls.</summary>
    public static string Stands(WindState state, CheckWords words) =>
        $"it stands, {new QuantityText(words.Units).Size(state.Sideways)} sideways, roll {CheckWords.Angle(state.Roll)} at "
            + state.RollFrame;

    /// <summary>A push on one post, by itself, or along the guard turns the bridge over.</summary>
    public static bool TurnsOver(WindWork wind) => wind.Pushed is { State.Stands: false }
        || wind.PushedGrown is { State.Stands: false } || wind.Leaning is { Stands: false };

    /// <summary>Newtons per metre.</summary>
    public static string Line(CheckWords words, double newtonsPerMetre) => words.Units == UnitSystem.Metric
        ? NumberText.Rounded(newtonsPerMetre / 1000, 2) + " kN/m"
        : NumberText.Rounded(newtonsPerMetre / (Units.PoundForce / Units.MetresPerFoot), 1) + " plf";

    /// <summary>
    /// What people's push does to the bridge, where it turns over or rolls further than people may tilt it; empty where it does
    /// neither.
    /// </summary>
    public static string Danger(WindWork wind, BridgeParameters parameters)
    {
        var (words, most) = (new CheckWords(parameters.Units), LimitParameters.TiltFails(parameters.Use));
        var marked = OnPost(wind.Pushed, words, most);

        // What turns over as marked needs no second state; else ropes that have stretched are the worse one.
        var falls = wind.Pushed is { State.Stands: false };
        var onPost = Joined(
        [
            !falls && OnPost(wind.PushedGrown, words, most) is { } grown ? $"{InHeat}, {grown}" : marked,
            falls ? null : WithWeight(wind.PushedByWeight?.State, words, most),
        ]);
        return Joined(
        [
            onPost.Length > 0 ? $"{words.Force(GuardLean.Point)} on one post: {onPost}" : null,
            Falls(wind.Leaning, words) is { Length: > 0 } along ? $"{Line(words, GuardLean.Line)} along one guard: {along}" : null,
        ]);
    }

    // In the same state and place as the push before.
    private static string? WithWeight(WindState? state, CheckWords words, double most) => state switch
    {
        null => null,
        { Stands: true } => state.Roll > most ? $"with the pusher's weight too it rolls by {CheckWords.Angle(state.Roll)}" : null,
        { StandsTo: { } from, FallsAt: { } to } => "with the pusher's weight too it turns over or rolls beyond "
            + $"{CheckWords.Angle(GuardLean.MostRoll)} between {words.Force(from)} and {words.Force(to)}",
        _ => "with the pusher's weight no equilibrium was found, not even without a push",
    };

    private static string Joined(ReadOnlySpan<string?> told) => string.Join("; ", told.ToArray().OfType<string>());

    /// <summary>The state of <see cref="WindWork.PushedGrown"/>.</summary>
    public const string InHeat = "once stretched, hottest and dry";

    private static string? OnPost(PushOnPost? pushed, CheckWords words, double most) => Falls(pushed, words) is { Length: > 0 } falls
        ? $"at {pushed!.Frame} {falls}"
        : pushed?.State.Roll > most
        ? $"at {pushed.Frame} it rolls by {CheckWords.Angle(pushed.State.Roll)}"
        : null;

    private static string Falls(WindState? state, string does, Func<double, string> push) => state switch
    {
        null or { Stands: true } => "",
        { StandsTo: { } least, FallsAt: { } most } => $"without side stays it {does} between {push(least)} and {push(most)}",
        _ => "no equilibrium was found, not even without a push",
    };
}
