using BridgeForm.Frames;
using BridgeForm.Loads;

namespace BridgeForm.Output.Tables;

/// <summary><c>rope-marks.csv</c>: one row a frame; where it stands, and where it sits on the rope laid out straight.</summary>
public static class RopeMarkTable
{
    private static readonly string[] Head =
    [
        "Frame", "X", "X (mm)", "Y", "Y (mm)", "Slope (deg)",
        "Mark, unstressed", "Mark, unstressed (mm)", "Mark, at marking tension", "Mark, at marking tension (mm)",
    ];

    /// <summary>
    /// The table as text; all lengths from support A's point, each rounded by itself. Where new rope stretches for good, two
    /// columns for each end of the range give marks that come right once it has; below the frames stand the lengths to cut.
    /// </summary>
    public static string Csv(BridgeModel model, PeopleUnits units)
    {
        var work = model.Ropework;
        return CsvText.Of(
            [.. Head, .. work.Stretch.SelectMany(StretchHead)],
            [.. model.Frames.Select((f, i) => Row(f, i, model, units)), .. Cut(work.Cut, units)]);
    }

    private static IReadOnlyList<string> Row(FramePose frame, int i, BridgeModel model, PeopleUnits units) =>
    [
        frame.Name,
        .. Both(frame.Node.X, units),
        .. Both(frame.Node.Y, units),
        Numbers.Fixed(Numbers.Degrees(frame.Slope), 2),
        .. Mark(model.Marks[i].Unstressed, model, units),
        .. Mark(model.Marks[i].AtMarkingTension, model, units),
        .. model.Ropework.Stretch.SelectMany(s => Mark(s.Marks[i].Unstressed, model, units)),
    ];

    private static string[] StretchHead(StretchEnd end)
    {
        var share = Numbers.Fixed(end.Share * 100, 2);
        return [$"Mark on new rope that will stretch {share} %", $"Mark on new rope that will stretch {share} % (mm)"];
    }

    private static IReadOnlyList<string> Mark(double metres, BridgeModel model, PeopleUnits units) =>
        [units.Length(MarkRounding.Rounded(metres, model.Parameters.Units)), Numbers.Fixed(metres * 1000, 1)];

    private static IEnumerable<IReadOnlyList<string>> Cut(RopeCut? cut, PeopleUnits units)
    {
        if (cut is null)
            yield break;
        yield return Line("Unstressed from support to support", cut.BetweenSupports);
        yield return Line("Unstressed backstay at A", cut.BackstayA);
        yield return Line("Unstressed backstay at B", cut.BackstayB);
        yield return cut.Termination is { } end
            ? Line($"Each end beyond its anchor point ({cut.TerminationSource})", end)
            : [$"Each end beyond its anchor point: {cut.TerminationSource}"];
        yield return cut.Length is { } length ? Line("Cut length of one rope", length) : ["Cut length of one rope: not known"];
        yield return cut.TakeUp is { } takeUp
            ? Line("Adjustment at the ends of one rope, largest stretch and temperature", takeUp)
            : ["Adjustment at the ends of one rope: its stretch is not known"];

        string[] Line(string text, double metres) => [text, "", "", "", "", "", .. Both(metres, units)];
    }

    private static IReadOnlyList<string> Both(double metres, PeopleUnits units) =>
        [units.Length(metres), Numbers.Fixed(metres * 1000, 1)];
}
