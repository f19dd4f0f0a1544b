using BridgeForm.Checks.Codes;
using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Ropes;

/// <summary>How much the deck tilts when one rope hangs a little longer than the other.</summary>
internal static class SettingOfRopes
{
    private const string Source = "statics of both ropes together; the difference is an own figure";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-setting",
        "Ropes that are not quite alike",
        "Tilt of the case that tilts most with either rope 1/4 in (6.35 mm) longer than the other between the supports, against what "
            + "cross-slope lets pass: to review above it. Fails where it rolls over then, and where ropes would have to be alike within "
            + "less "
            + "than 1/16 in (own figure: nobody sets them closer). Says how alike the ropes must be, and how far the "
            + "empty bridge tilts: cut, marked or drawn in otherwise, or an anchor that gives on one side, is the same. All other checks "
            + "take both ropes as alike.",
        Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    // No crew marks, cuts and draws in two ropes of a bridge's length closer than this; metres.
    private const double Closest = Quantities.Units.MetresPerInch / 16;

    /// <summary>A look where whoever sets the ropes can see to it.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        var longer = words.InInches(RopeSetting.Difference);
        if (context.Ropework.Setting is not { } setting)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Warn, 0, null, "1", null, Source,
                "no frame between the supports, or no case that stands: what ropes of two lengths do is not known");
        }

        var spacing = context.Parameters.Ropes.Spacing;
        var empty = setting.Empty is { } tilt
            ? $"one rope {longer} longer than the other tilts the empty bridge by {CheckWords.Angle(tilt)} (one rope "
                + $"{words.Length(Elementary.Tan(tilt) * spacing)} lower)"
            : $"one rope {longer} longer than the other: the empty bridge rolls over";
        var (_, most, source) = Limits.CrossSlope(context.Parameters.Use, context.Parameters.Limits);
        if (setting is not { Empty: not null, Worst: { } worst })
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, Elementary.Tan(setting.Alike), null, "1", null, Source,
                $"{empty}; case {setting.Case} tilts by {CheckWords.Angle(setting.Alike)} with ropes alike"
                    + (setting.Worst is null ? ", and rolls over then" : ""));
        }

        return Outcome.AtMost(
            Declared, Elementary.Tan(worst), Elementary.Tan(most), "1", $"{Source}; {source}",
            $"{empty}, and case {setting.Case} from {CheckWords.Angle(setting.Alike)} to {CheckWords.Angle(worst)}; at most "
                + $"{CheckWords.Angle(most)}: {Needed(setting, worst, most, words)}",
            Within(setting, worst, most) < Closest ? CheckStatus.Fail : CheckStatus.Warn);
    }

    // Tilt grows with the difference nearly in a line.
    private static double Within(RopeSetting setting, double worst, double most) => most > setting.Alike && worst > setting.Alike
        ? (most - setting.Alike) / (worst - setting.Alike) * RopeSetting.Difference
        : double.PositiveInfinity;

    private static string Needed(RopeSetting setting, double worst, double most, CheckWords words) =>
        Within(setting, worst, most) is var within && double.IsFinite(within)
            ? $"both ropes must be alike within about {words.Length(within)}, stretch and anchors of each side included"
                + (within < Closest ? ", closer than anybody sets them" : "")
            : "ropes that are alike tilt as much already (cross-slope)";
}
