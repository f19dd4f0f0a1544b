using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.Tables;

/// <summary><c>rope-marks.csv</c>: one row a frame; where it stands, and where it sits on the rope laid out straight.</summary>
public static class RopeMarkTable
{
    private static readonly string[] Head =
    [
        "Frame", "X", "X (mm)", "Y", "Y (mm)", "Slope (deg)",
        "Mark, unstressed", "Mark, unstressed (mm)", "Mark, at marking tension", "Mark, at marking tension (mm)",
        "Tape from the first eye, at marking tension", "Tape from the first eye, at marking tension (mm)",
    ];

    /// <summary>
    /// The table as text, by the one set of marks that the file chose; marks from support A's point, readings from the eye at A, each
    /// rounded by itself. Below the frames stand the ends, the lengths to cut, and what whoever handles the ropes must know.
    /// </summary>
    public static string Csv(BridgeModel model, DisplayUnits units)
    {
        var (work, tape) = (model.Ropework, RopeTape.Of(model.Parameters, model.Ropework));
        return CsvText.Write(
            Head,
            [
                .. model.Frames.Select((f, i) => Row(f, i, model, tape, units)),
                .. Ends(model, tape, units),
                .. Cut(work.Cut, tape, units),
                [work.Chosen.Sentence],
                .. work.Cautions.Select(c => (IReadOnlyList<string>)[c]),
            ]);
    }

    private static IReadOnlyList<string> Row(FramePose frame, int i, BridgeModel model, RopeTape? tape, DisplayUnits units) =>
    [
        frame.Name,
        .. Both(frame.Node.X, units),
        .. Both(frame.Node.Y, units),
        Numbers.Fixed(Numbers.Degrees(frame.Slope), 2),
        .. Mark(model.Ropework.Chosen.Marks[i].Unstressed, model, units),
        .. Mark(model.Ropework.Chosen.Marks[i].AtMarkingTension, model, units),
        .. tape?.Readings.First(r => string.Equals(r.Name, frame.Name, StringComparison.Ordinal)) is { } reading
            ? Mark(reading.AtTension, model, units)
            : ["", ""],
    ];

    // Eyes and cut ends have no place in the world: they lie where they are held.
    private static IEnumerable<IReadOnlyList<string>> Ends(BridgeModel model, RopeTape? tape, DisplayUnits units) =>
        tape is null
            ? []
            : tape.Readings.Where(r => !model.Frames.Any(f => string.Equals(f.Name, r.Name, StringComparison.Ordinal)))
                .Select(r => (IReadOnlyList<string>)[r.Name, "", "", "", "", "", "", "", "", "", .. Mark(r.AtTension, model, units)]);

    private static IReadOnlyList<string> Mark(double metres, BridgeModel model, DisplayUnits units) =>
        [units.Length(Rounding.ToTape(metres, model.Parameters.Units)), Numbers.Fixed(metres * 1000, 1)];

    private static IEnumerable<IReadOnlyList<string>> Cut(RopeCut? cut, RopeTape? tape, DisplayUnits units)
    {
        if (cut is null)
        {
            yield break;
        }

        yield return Line("Unstressed from support to support", cut.BetweenSupports);
        yield return Line("Unstressed backstay at A", cut.BackstayA);
        yield return Line("Unstressed backstay at B", cut.BackstayB);
        yield return cut.Termination is { } end
            ? Line($"Each end beyond its anchor point ({cut.TerminationSource})", end)
            : [$"Each end beyond its anchor point: {cut.TerminationSource}"];
        if (tape?.Chain is { } chain)
        {
            yield return Line($"Shackle, inside ({chain.ShackleSource})", chain.Shackle);
            yield return Line($"Turnbuckle from pin to pin, closed ({chain.ClosedSource})", chain.Closed);
            yield return Line("Turnbuckle from pin to pin, as hung", chain.Hung);
            yield return Line("Turnbuckle from pin to pin, open", chain.Open);
            yield return Line("From anchor to eye, as hung", chain.Length);
        }

        yield return (tape is null ? cut.Length : tape.CutLength) is { } length
            ? Line("Cut length of one rope", length)
            : ["Cut length of one rope: not known"];
        yield return cut.TakeUp is { } takeUp
            ? Line("Adjustment at the ends of one rope, in and out", takeUp)
            : ["Adjustment at the ends of one rope: its stretch is not known"];

        string[] Line(string text, double metres) => [text, "", "", "", "", "", .. Both(metres, units)];
    }

    private static IReadOnlyList<string> Both(double metres, DisplayUnits units) =>
        [units.Length(metres), Numbers.Fixed(metres * 1000, 1)];
}

/// <summary>
/// <c>hoisting.csv</c>: what a crew sets the ropes by, for each stage and temperature: sag at mid-span, the mark for a line
/// of sight below the rope's point at each support, and the pull; by the one set of marks that the file chose.
/// </summary>
public static class HoistingSheet
{
    private static readonly string[] Head =
    [
        "Stage", "Rope", "Temperature", "Temperature (C)", "Sag at mid-span", "Sag at mid-span (mm)",
        "Sight line below the rope at A and at B", "Sight line below the rope at A and at B (mm)",
        "Sight line at A, height", "Sight line at A, height (mm)", "Sight line at B, height", "Sight line at B, height (mm)",
        "Horizontal tension of one rope", "Horizontal tension of one rope (kN)",
        "Largest tension of one rope", "Largest tension of one rope (kN)",
    ];

    /// <summary>The table as text; heights from support A's rope axis.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="units">Sizes in inches and sixteenths, or millimetres.</param>
    /// <param name="temperature">Text of a temperature in °C.</param>
    public static string Csv(BridgeModel model, DisplayUnits units, Func<double, string> temperature)
    {
        var rise = model.Rope.Nodes[^1].Y;
        var chosen = model.Ropework.Chosen;
        var rope = chosen.Share > 0
            ? $"new, set short by {Numbers.Fixed(chosen.Share * 100, 2)} % of stretch to come"
            : "set to the plain marks";
        return CsvText.Write(
            Head,
            [
                .. chosen.Hoisting.Rows.Select(r => Row(r, rope, rise, units, temperature)),
                [chosen.Sentence],
                [Hoisting.FramesAlone],
                .. model.Ropework.Cautions.Select(c => (IReadOnlyList<string>)[c]),
            ]);
    }

    private static IReadOnlyList<string> Row(
        HoistingRow row, string rope, double rise, DisplayUnits units, Func<double, string> temperature) =>
    [
        row.Stage,
        rope,
        temperature(row.Temperature),
        Numbers.Fixed(row.Temperature, 1),
        .. Both(row.Sag, units),
        .. Both(row.Sight, units),
        .. Both(-row.Sight, units),
        .. Both(rise - row.Sight, units),
        .. Pull(row.Horizontal, units),
        .. Pull(row.LargestTension, units),
    ];

    private static IReadOnlyList<string> Pull(double newtons, DisplayUnits units) =>
        [new QuantityText(units.System).Force(newtons), Numbers.Fixed(newtons / 1000, 3)];

    private static IReadOnlyList<string> Both(double metres, DisplayUnits units) =>
        [units.Length(metres), Numbers.Fixed(metres * 1000, 1)];
}

/// <summary>
/// <c>keepers.csv</c>: what every frame's keeper must hold along one rope, the more heavily loaded one, in every load case;
/// friction not counted. Beside it what any keeper must hold the base down with, by the checks that ask for it.
/// </summary>
public static class KeeperTable
{
    private static readonly string[] Head =
    [
        "Case", "Frame", "Slope (deg)", "Load of the frame", "Load of the frame (N)", "Load x sine of slope", "Load x sine of slope (N)",
        "Difference of tensions", "Difference of tensions (N)", "Keeper must hold", "Keeper must hold (N)", "Worst case of this frame",
        "Hold the base down besides", "Hold the base down besides (N)", "Asked by",
    ];

    private static readonly string[] s_down = ["keeper-uplift-load", "keeper-uplift-guard", "keeper-uplift-wind", "wind-keeper"];

    /// <summary>The table as text, case by case, frames from A to B. Tensions: B side less A side.</summary>
    public static string Csv(BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        ImmutableArray<string> names = [.. model.Frames.Select(f => f.Name)];
        var worst = model.Ropework.Keepers.ToDictionary(k => k.Frame, k => k.Case, StringComparer.Ordinal);
        var down = Ties.FirstLargest(model.Checks.Where(c => s_down.Contains(c.Id, StringComparer.Ordinal)), Down);
        IReadOnlyList<string> besides = down is null ? ["", "", ""]
            : double.IsFinite(Down(down)) ? [.. Both(Down(down), words), down.Id] : ["no end", "", down.Id];
        return CsvText.Write(
            Head,
            model.Cases
                .SelectMany(c => KeeperForce.In(c, names).Where(k => !LoadCaseIds.IsPoint(c.Id) || IsWorst(k, worst)))
                .Select(k => (IReadOnlyList<string>)[.. Row(k, worst, words), .. besides])
                .Concat(model.Ropework.Cautions.Select(c => (IReadOnlyList<string>)[c])));
    }

    // What fails here has no equilibrium: no keeper holds it.
    private static double Down(CheckResult check) => check.Status == CheckStatus.Fail ? double.PositiveInfinity : check.Demand;

    private static IReadOnlyList<string> Row(KeeperForce force, IReadOnlyDictionary<string, string> worst, QuantityText words) =>
    [
        CsvText.Users(force.Case),
        force.Frame,
        Numbers.Fixed(Numbers.Degrees(force.Slope), 2),
        .. Both(force.Load, words),
        .. Both(force.LoadAlong, words),
        .. Both(force.TensionDifference, words),
        .. Both(force.Needed, words),
        IsWorst(force, worst) ? "yes" : string.Empty,
    ];

    private static bool IsWorst(KeeperForce force, IReadOnlyDictionary<string, string> worst) =>
        string.Equals(worst[force.Frame], force.Case, StringComparison.Ordinal);

    private static IReadOnlyList<string> Both(double newtons, QuantityText words) =>
        [words.Force(newtons), Numbers.Fixed(newtons, 1)];
}
