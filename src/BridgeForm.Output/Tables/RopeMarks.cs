using BridgeForm.Frames;
using BridgeForm.Ropes;

namespace BridgeForm.Output.Tables;

/// <summary><c>rope-marks.csv</c>: one row a frame; where it stands, and where it sits on the rope laid out straight.</summary>
public static class RopeMarks
{
    private static readonly string[] Head =
    [
        "Frame", "X", "X (mm)", "Y", "Y (mm)", "Slope (deg)",
        "Mark, unstressed", "Mark, unstressed (mm)", "Mark, at marking tension", "Mark, at marking tension (mm)",
    ];

    /// <summary>The table as text; all lengths from support A's point.</summary>
    public static string Csv(BridgeModel model, PeopleUnits units)
    {
        var marks = model.Marks.ToDictionary(m => m.Frame, StringComparer.Ordinal);
        return CsvText.Of(Head, model.Frames.Select(f => Row(f, marks[f.Name], units)));
    }

    private static IReadOnlyList<string> Row(FramePose frame, RopeMark mark, PeopleUnits units) =>
    [
        frame.Name,
        .. Both(frame.Node.X, units),
        .. Both(frame.Node.Y, units),
        Numbers.Fixed(Numbers.Degrees(frame.Slope), 2),
        .. Both(mark.Unstressed, units),
        .. Both(mark.AtMarkingTension, units),
    ];

    private static IReadOnlyList<string> Both(double metres, PeopleUnits units) =>
        [units.Length(metres), Numbers.Fixed(metres * 1000, 1)];
}
