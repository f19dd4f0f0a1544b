using BridgeForm.Project;
using BridgeForm.Ropes.Modes;

namespace BridgeForm.Checks.Ropes;

/// <summary>Slowest vertical mode, empty and loaded.</summary>
internal static class BounceVertical
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "bounce-vertical",
        "Bounce: slowest vertical motion",
        "Lowest vertical frequency, empty and loaded, against 3 Hz; the string and Irvine formulas beside it.",
        "AASHTO Guide Specifications for Pedestrian Bridges 2009 (from memory)",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]);

    private const double Limit = 3.0;

    /// <summary>A warning below 3 Hz; for public use an engineer decides.</summary>
    public static CheckResult Check(CheckContext context) => MotionCheck.Check(
        context,
        Declared,
        Limit,
        "AASHTO Guide Specifications for Pedestrian Bridges 2009 §6: at least 3.0 Hz (from memory; it does not speak of cable bridges); "
            + "walking 1.6 to 2.4 Hz (from memory)",
        m => m.Vertical,
        m => $"halves against each other {Text(m.VerticalAntisymmetric)} (string 2/2L·√(H/m) {CheckWords.Frequency(m.StringSecond)}), "
            + $"together {Text(m.VerticalSymmetric)} (Irvine, λ² {CheckWords.Plain(m.LambdaSquared)}: "
            + $"{CheckWords.Frequency(m.IrvineSymmetric)})",
        "steps of walking people come 1.6 to 2.4 times a second: below 3 Hz their rhythm can set the deck going, and it "
            + "answers to jumping");

    private static string Text(double? hertz) => hertz is { } f ? CheckWords.Frequency(f) : "none";
}

/// <summary>Slowest lateral mode, empty and loaded.</summary>
internal static class SwayLateral
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "sway-lateral",
        "Sway: slowest motion to the side",
        "Lowest frequency to the side, empty and loaded, against 1.3 Hz: frames sway and roll at once, because their mass lies above the "
            + "ropes; with one half wave and two. Beside it the ropes with all mass at their own height, and the string formula.",
        "AASHTO Guide Specifications for Pedestrian Bridges 2009 (from memory)",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]);

    private const double Limit = 1.3;

    /// <summary>A warning below 1.3 Hz; for public use an engineer decides.</summary>
    public static CheckResult Check(CheckContext context) => MotionCheck.Check(
        context,
        Declared,
        Limit,
        "AASHTO Guide Specifications for Pedestrian Bridges 2009 §6: at least 1.3 Hz (at second hand; it does not speak of cable bridges)",
        m => m.Lateral,
        Words,
        "people sway from foot to foot about once a second: below 1.3 Hz they can set the bridge swinging, and wind does too; side "
            + "guys cure it");

    private static string Words(RopeModes modes)
    {
        var ropes = $"all mass at the ropes {CheckWords.Frequency(modes.LateralAtRopes)}, string 1/2L·√(H/m) "
            + $"{CheckWords.Frequency(modes.StringFirst)}; the deck's own stiffness in plan not counted";
        return modes.Lateral > 0
            ? $"{CheckWords.Frequency(modes.Lateral)} (all to one side {Text(modes.LateralOneHalfWave)}, halves against each other "
                + $"{Text(modes.LateralTwoHalfWaves)}; {ropes})"
            : $"it rolls over instead of swinging ({ropes})";
    }

    private static string Text(double? hertz) => hertz is { } f ? CheckWords.Frequency(f) : "none";
}

/// <summary>What both have in common.</summary>
internal static class MotionCheck
{
    /// <summary>The slower of the empty and the loaded bridge against a limit in hertz.</summary>
    public static CheckResult Check(
        CheckContext context,
        DeclaredCheck check,
        double limit,
        string source,
        Func<RopeModes, double> slowest,
        Func<RopeModes, string> words,
        string meaning)
    {
        var modes = context.Ropework.Modes;
        if (modes.IsEmpty)
        {
            return new CheckResult(
                check.Id, check.Title, CheckStatus.Engineer, 0, limit, "Hz", null, source, "no modes: no frame hangs between the supports");
        }

        var people = context.Words();
        var text = string.Join("; ", modes.Select(m =>
            $"{(m.Case is "dead" ? "empty" : "loaded")} (H {people.Force(m.Horizontal)}, m "
                + $"{people.MassPerLength(m.MassPerLength)}): {words(m)}"));
        return Outcome.AtLeast(
            check, modes.Min(slowest), limit, "Hz", source, $"{text}. {Sentence(modes.Min(slowest), limit, meaning)}",
            context.Parameters.Use == BridgeUse.Public ? CheckStatus.Engineer : CheckStatus.Warn);
    }

    private static string Sentence(double hertz, double limit, string meaning) => hertz >= limit
        ? "Fast enough not to answer to walking."
        : $"The bridge will move: {meaning}.";
}
