using BridgeForm.Quantities;

namespace BridgeForm.Checks.Ropes;

/// <summary>Every load case, hoisting row and moved support has a shape.</summary>
internal static class CasesSolved
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "cases-solved",
        "Every load case has a solution",
        "Load cases, hoisting rows, stretched, new and moved ropes without a shape, and load cases in which the section rolls over: none may be.",
        "common practice, no source",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>Fails with the reasons when one has none.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var work = context.Ropework;
        string[] failures =
        [
            .. work.Cases.Where(c => c.Shape is null).Select(c => $"{c.Id}: {c.Failure}"),
            .. work.Cases.Where(c => c.RollsOver).Select(c =>
                $"{c.Id}: it rolls over; its pulls, falls and rooms are those of ropes whose frames are held upright, and promise nothing."),
            .. work.Hoisting.Failures.Select(f => "hoisting, " + f.In(new QuantityText(context.Parameters.Units))),
            .. work.Stretch.Where(s => s.Failure is not null).Select(s => $"after {CheckWords.Share(s.Share)} stretch: {s.Failure}"),
            .. work.Stretch.Where(s => s.NewFailure is not null).Select(s => $"new rope set short for {CheckWords.Share(s.Share)} of stretch: {s.NewFailure}"),
            .. work.SupportMoveFailure is { } moved ? [$"support moved: {moved}"] : Array.Empty<string>(),
        ];
        return new CheckResult(
            Declared.Id, Declared.Title, failures.Length == 0 ? CheckStatus.Pass : CheckStatus.Fail, failures.Length, 0, "count", null,
            "common practice, no source",
            failures.Length == 0
                ? $"{work.Cases.Length} load cases and {work.Hoisting.Rows.Length} hoisting rows solved"
                : string.Join(" ", failures));
    }
}
