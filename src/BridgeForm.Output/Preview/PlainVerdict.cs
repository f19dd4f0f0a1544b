using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Preview;

/// <summary>What checks come to in one sentence each, for people who read no formulas: the bridge as a whole, and every check.</summary>
internal static class PlainVerdict
{
    // From here on a share of the limit is easier to picture than the per cent above it.
    private const double Twice = 2;
    private const double Beyond = 100;

    /// <summary>The bridge in one sentence, which takes one line of a telephone.</summary>
    public static string Of(BridgeModel model)
    {
        var failing = model.Checks.Count(c => c.Status == CheckStatus.Fail);
        var missing = model.Checks.Count(c => c.NotChecked is not null);
        var waiting = model.Checks.Count(c => c.Status == CheckStatus.Engineer);
        var all = model.Checks.Length;
        return failing > 0
            ? Text($"Do not build it so: {failing} of {all} checks {(failing == 1 ? "fails" : "fail")}.")
            : missing > 0
            ? Text($"Nothing fails, but {missing} of {all} checks had no values for the wood.")
            : Text($"Nothing fails on paper; {waiting} for an engineer.");
    }

    /// <summary>A check in one sentence: what it looks at, and how it came out.</summary>
    public static string Of(CheckResult check) => $"{PlainSubject.Of(check)}: {Outcome(check)}.";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Outcome(CheckResult check) => check.Status switch
    {
        CheckStatus.Fail when check.HasNoCapacity => "does not hold, for there is nothing to carry it",
        CheckStatus.Fail => "does not hold" + Over(check.Ratio, "what is allowed"),
        CheckStatus.Warn => "to be reviewed" + Over(check.Ratio, "the usual"),
        CheckStatus.Engineer when check.NotChecked is { } wood => $"not made, for no table has values of {wood}",
        CheckStatus.Engineer => "a licensed engineer decides",
        _ => "holds" + Spare(check.Ratio),
    };

    // Rounded against the bridge: up above the limit, down below it.
    private static string Over(double? ratio, string limit) => ratio switch
    {
        > Beyond => ", by far",
        > Twice => $", {NumberText.Up(ratio.Value, 1)} times {limit}",
        > 1 => $", {NumberText.Up(Math.Max(1, (ratio.Value - 1) * 100), 0)} % beyond {limit}",
        _ => "",
    };

    private static string Spare(double? ratio) => ratio is >= 0 and <= 1
        ? string.Create(CultureInfo.InvariantCulture, $", with {Rounding.Down((1 - ratio.Value) * 100, 1):0} % to spare")
        : "";
}
