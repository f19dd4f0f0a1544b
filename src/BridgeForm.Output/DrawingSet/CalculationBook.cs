using BridgeForm.Checks;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary><c>calculations.pdf</c>: every check with its figures and source, for the engineer who goes through them.</summary>
public static class CalculationBook
{
    /// <summary>The book, on the project's paper; worst first, as <c>check</c> prints them.</summary>
    public static SheetBook Draw(BridgeModel model)
    {
        var words = SheetWords.For(model, "Calculations");
        var frame = PageFrame.On(Paper.Named(model.Parameters.Shop.Paper), words);
        var flow = new TableFlow(frame.Body);
        flow.Add(CheckTables.Whole(model));
        return new SheetBook(words.Title, [.. flow.Pages.Select((p, i) => frame.Page(p.Entities, i + 1, flow.Pages.Count))]);
    }
}

/// <summary>Checks as rows of tables.</summary>
internal static class CheckTables
{
    /// <summary>All of every check.</summary>
    public static FlowTable Whole(BridgeModel model) => new(
        "Checks",
        "Ratio: what the bridge asks over what it may be; above 1 is too much. Allowable stress, unfactored loads. Values for preliminary "
            + "work; a licensed engineer decides what is marked so.",
        [new("Outcome"), new("Ratio", Figures: true), new("Check", 0.042), new("Figures", 0.080), new("Source", 0.060)],
        [
            .. CheckOrder.WorstFirst(model.Checks).Select(c => new FlowRow(
                [Outcome(c), RatioText.Of(c), Name(c), c.Detail, c.Source], c.Status == CheckStatus.Fail)),
        ]);

    /// <summary>How it came out, in a word.</summary>
    public static string Outcome(CheckResult check) => check.Status == CheckStatus.Fail ? "FAILS" : check.Status.Word();

    /// <summary>Title and id.</summary>
    public static string Name(CheckResult check) => $"{check.Title} ({check.Id})";
}
