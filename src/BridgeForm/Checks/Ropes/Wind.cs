using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Ropes;

/// <summary>A wind across the bridge with nobody on it: only stated, whatever the pressure and wherever it is from.</summary>
internal static class Wind
{
    private const string Source = "statics of both ropes in space, frames rigid and free to yaw; 0.6 D + W and D + W (ASCE 7 2.4.1), "
        + "W with 0.6 in it already";

    private const string Stays = "Side stays hold a bridge against wind; none is modeled. A licensed engineer decides.";

    /// <summary>Side force at the supports.</summary>
    public static DeclaredCheck DeclaredSide { get; } = Declared(
        "wind-side",
        "Wind: side force at the supports",
        "Pull of both ropes across the bridge at either support under loads.wind on the solid outline, with the ropes' and the "
            + "bridge's own "
            + "weight and nobody on it. Both guards count, neither shelters the other; so do the deck's edge, bases and ropes.");

    /// <summary>Keepers.</summary>
    public static DeclaredCheck DeclaredKeeper { get; } = Declared(
        "wind-keeper",
        "Wind: bases lifted off the ropes",
        "Largest pull of a rope down on a base, square to it, under 0.6 D + W (light densities), finished and at each stage of erection: "
            + "what the keeper there must hold. Beside it moments about the leeward rope with the frame still upright.");

    /// <summary>End frames.</summary>
    public static DeclaredCheck DeclaredEnd { get; } = Declared(
        "wind-end-frame",
        "Wind: end frames held down on their landings",
        "loads.wind on the end frame and half of its bay turns it about the leeward end of its base: force × height over the landing, less "
            + "0.6 of its weight (light densities) × half the base, over the base's length.");

    /// <summary>Swing.</summary>
    public static DeclaredCheck DeclaredSwing { get; } = Declared(
        "wind-swing",
        "Wind: swing to the side",
        "How far the ropes move to the side and the frames roll under loads.wind, finished and at each stage of erection (bare ropes, "
            + "frames hung to mid-span, all frames hung), with D + W and 0.6 D + W at the reference temperature. Solved in space: "
            + "frames move "
            + "sideways and roll, with weight and wind at their heights. Where no equilibrium is found in which every frame leans by less "
            + "than 45°, that is said in words.");

    /// <summary>All four.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var (wind, words) = (context.Wind, context.Words());
        var (text, source) = (new QuantityText(context.Parameters.Units), $"{Pressure(context)}; {Source}");
        yield return Side(wind, words, text, source);
        if (context.Layout.Bays > 1)
        {
            yield return Keeper(context, words, text, source);
        }

        yield return End(context, words, source);
        yield return Swing(wind, words, text, source);
    }

    /// <summary>What became of a state, in words: it stands, or it loses its footing.</summary>
    public static string Words(WindState state, double pressure, QuantityText text)
    {
        var rest = state.Ends is null
            ? "no equilibrium"
            : $"{text.Size(state.Sideways)} sideways" + (state.RollFrame.Length > 0 ? $", roll {CheckWords.Angle(state.Roll)}" : "");
        return state.Stands
            ? rest
            : state is { StandsTo: { } least, FallsAt: { } most }
                ? $"turns over between {text.Pressure(least)} and {text.Pressure(most)}; at {text.Pressure(pressure)} "
                    + (state.Ends is null ? "no equilibrium was found in which all frames lean by less than 45°" : "it may come to "
                    + $"rest at {rest}")
                : "no equilibrium, not even in the calm";
    }

    private static DeclaredCheck Declared(string id, string title, string compares) => new(
        id, title, compares + " Only stated, with a site's value too. " + Stays,
        "loads.wind; left out, 0.96 kPa (20 psf) from memory, not a site's wind; " + Source, [CheckStatus.Engineer]);

    private static string Pressure(CheckContext context) =>
        $"{new QuantityText(context.Parameters.Units).Pressure(context.Wind.Pressure)}: {context.Parameters.Loads.WindSource}";

    private static CheckResult Side(WindWork wind, CheckWords words, QuantityText text, string source)
    {
        var done = wind.States.Where(s => s.Stage is WindWork.Finished or Hoisting.Bare).TakeLast(2).ToList();
        var force = done[0].Force;
        var outline = $"{text.Pressure(wind.Pressure)} on {text.Area(wind.Area)} with its middle {words.Length(wind.Height)} over the "
            + "ropes, "
            + $"and on the ropes: {words.Force(force)} between the supports";
        var worst = Ties.FirstLargest(done.Where(s => s.Ends is not null), s => Math.Max(s.Ends!.A, s.Ends.B));
        var pulls = worst?.Ends is { } ends
            ? $"in {worst.Combination} at A {words.Force(ends.LeftA)} + {words.Force(ends.RightA)} = {words.Force(ends.A)}, at B "
                + $"{words.Force(ends.LeftB)} + {words.Force(ends.RightB)} = {words.Force(ends.B)} (rope against the wind + the other); "
                + $"largest tension of a rope {words.Force(done.Max(s => s.LargestTension))}"
                + (worst.Stands ? "" : "; so where it comes to rest after it has turned over (wind-swing)")
            : "how it parts between the ropes is not known, for there is no equilibrium (wind-swing); half of it comes to either support, "
                + "more to one where the bridge is not alike from both ends";
        var landings = string.Join(", ", wind.Ends.Select(e => $"{words.Force(e.Side)} at {e.Frame}"));
        return Outcome.ForEngineer(
            DeclaredSide, worst?.Ends is { } w ? Math.Max(w.A, w.B) : force / 2, "N", source,
            $"{outline}; {pulls}. The landings besides: {landings}. {Stays}");
    }

    private static CheckResult Keeper(CheckContext context, CheckWords words, QuantityText text, string source)
    {
        var wind = context.Wind;
        var sure = wind.States.Where(s => s.Combination is WindWork.Sure).ToList();
        var worst = Ties.FirstLargest(sure, s => s.Lift)!;
        var fallen = sure.Where(s => !s.Stands).ToList();
        var solved = worst.Lift > 0
            ? $"{words.Force(worst.Lift)} at frame {worst.LiftFrame} to hold down "
                + $"({WindState.Name(worst.Stage)}{(worst.Stands ? "" : ", once turned over")})"
            : fallen.Count < sure.Count ? "no base is lifted where it stands" : "it stands at no stage";
        var over = fallen.Count > 0 ? $"; it turns over: {string.Join(", ", fallen.Select(s => WindState.Name(s.Stage)))} "
            + "(wind-swing)" : "";
        var upright = wind.Upright is { } u
            ? $". With the frame still upright, moments about the leeward rope at {u.Frame}: ({words.Force(u.Wind)} × "
                + $"{words.Length(u.Height)} "
                + $"− {words.Force(u.Weight)} × {words.Length(u.Spacing)} / 2) / {words.Length(u.Spacing)} = {words.Force(u.Lift)}, "
                + "0.6 of the "
                + $"weight in it; nothing left from {text.Pressure(wind.LiftsAt!.Value)} on"
            : "";
        return Outcome.ForEngineer(
            DeclaredKeeper, Math.Max(worst.Lift, fallen.Count > 0 ? wind.Upright?.Lift ?? 0 : 0), "N", source,
            $"{solved}{over}{upright}. {Stays}").OnBase(context, worst.Lift > 0 ? worst.LiftFrame : wind.Upright?.Frame ?? "");
    }

    private static CheckResult End(CheckContext context, CheckWords words, string source)
    {
        var worst = Ties.FirstLargest(context.Wind.Ends, e => e.Down)!;
        return Outcome.ForEngineer(
            DeclaredEnd, worst.Down, "N", source,
            $"{worst.Frame}: ({words.Force(worst.Side)} × {words.Length(worst.Height)} − 0.6 × {words.Force(worst.Weight)} × "
                + $"{words.Length(worst.Base)} / 2) / {words.Length(worst.Base)} = {words.Force(worst.Down)} to hold down at the end "
                + "of its "
                + $"base against the wind; {words.Force(worst.Side)} to hold sideways. {Stays}").OnBase(context, worst.Frame);
    }

    private static CheckResult Swing(WindWork wind, CheckWords words, QuantityText text, string source)
    {
        var states = wind.States.Select(s => $"{WindState.Name(s.Stage)}, {s.Combination}: {Words(s, wind.Pressure, text)}");
        return Outcome.ForEngineer(
            DeclaredSwing, wind.States.Max(s => s.Sideways), "m", source, $"{string.Join("; ", states)}. {Stays}");
    }
}
