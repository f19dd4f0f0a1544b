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
        "Lowest vertical frequency, empty and loaded, against 4.6 Hz, the upper end of the critical range 1.25 to 4.6 Hz of EUR 23984 EN, "
            + "and beside it 3 Hz (AASHTO); the string and Irvine formulas. Peak acceleration under one walker, a = P·ψ / (2·ξ·M) with P "
            + "280 N, ξ 0.7 % and ψ for how likely people step so fast, of every mode that moves the deck or its edge up and down, swaying "
            + "and rolling ones included, where its modal mass M is at least 20 × 75 kg; lighter ones are too light for this method. "
            + "To review, no promise.",
        "EUR 23984 EN (JRC and ECCS 2009, only its title pages seen): figures from memory; AASHTO Guide Specifications for Pedestrian "
            + "Bridges 2009 (from memory)",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]);

    private static readonly double s_limit = Footfall.VerticalRange.To;

    /// <summary>A warning below the range's upper end; for public use an engineer decides.</summary>
    public static CheckResult Check(CheckContext context) => MotionCheck.Check(
        context,
        Declared,
        s_limit,
        MotionCheck.Report + " and AASHTO Guide Specifications for Pedestrian Bridges 2009 §6, at least 3.0 Hz, which does not speak of "
            + "cable bridges: figures from memory",
        m => m.Vertical,
        m => $"halves against each other {Text(m.VerticalAntisymmetric)} (string 2/2L·√(H/m) {CheckWords.Frequency(m.StringSecond)}), "
            + $"together {Text(m.VerticalSymmetric)} (Irvine, λ² {CheckWords.Plain(m.LambdaSquared)}: "
            + $"{CheckWords.Frequency(m.IrvineSymmetric)})",
        "steps of walking people come 1.6 to 2.4 times a second: from 1.25 to 4.6 Hz their rhythm or its double can set the deck going, "
            + "below 3 Hz most of all, and it answers to jumping",
        WalkedWay.Vertical);

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
            + "ropes; with one half wave and two. Beside it the ropes with all mass at their own height, and the string formula; the "
            + "critical range 0.5 to 1.2 Hz of EUR 23984 EN, and the peak acceleration under one walker as for bounce-vertical, with P "
            + "35 N. To review, no promise.",
        "EUR 23984 EN (JRC and ECCS 2009, only its title pages seen): figures from memory; AASHTO Guide Specifications for Pedestrian "
            + "Bridges 2009 (from memory)",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]);

    private const double Limit = 1.3;

    /// <summary>A warning below 1.3 Hz; for public use an engineer decides.</summary>
    public static CheckResult Check(CheckContext context) => MotionCheck.Check(
        context,
        Declared,
        Limit,
        MotionCheck.Report + ": figures from memory; AASHTO Guide Specifications for Pedestrian Bridges 2009 §6: at least 1.3 Hz (at "
            + "second hand; it does not speak of cable bridges)",
        m => m.Lateral,
        Words,
        "people sway from foot to foot about once a second: below 1.3 Hz they can set the bridge swinging, and wind does too; side "
            + "guys cure it",
        WalkedWay.Lateral);

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
    /// <summary>Where the ranges and the acceleration come from.</summary>
    public const string Report = "EUR 23984 EN, Design of Lightweight Footbridges for Human Induced Vibrations, JRC and ECCS 2009 "
        + "(only its title pages seen)";

    /// <summary>The slower of the empty and the loaded bridge against a limit in hertz.</summary>
    public static CheckResult Check(
        CheckContext context,
        DeclaredCheck check,
        double limit,
        string source,
        Func<RopeModes, double> slowest,
        Func<RopeModes, string> words,
        string meaning,
        WalkedWay way)
    {
        var modes = context.Ropework.Modes;
        if (modes.IsEmpty)
        {
            return new CheckResult(
                check.Id, check.Title, CheckStatus.Engineer, 0, limit, "Hz", null, source, "no modes: no frame hangs between the supports");
        }

        var people = context.Words();
        var text = string.Join("; ", modes.Select(m =>
            $"{Name(m)} (H {people.Force(m.Horizontal)}, m {people.MassPerLength(m.MassPerLength)}): {words(m)}"));
        var over = context.Ropework.Toppled.Select(c => c.Id).ToList();
        var walker = string.Join("; ", modes.Select(
            m => $"{Name(m)}: {(over.Contains(m.Case) ? "it rolls over, and no comfort is told of it" : way.Words(m))}"));
        return Outcome.AtLeast(
            check, modes.Min(slowest), limit, "Hz", source,
            $"{text}. {Sentence(modes.Min(slowest), limit, meaning)} Critical range {way.Range}. One walker, {walker}. To review, no "
                + $"promise.",
            context.Parameters.Use == BridgeUse.Public ? CheckStatus.Engineer : CheckStatus.Warn);
    }

    private static string Name(RopeModes modes) => modes.Case is "dead" ? "empty" : "loaded";

    private static string Sentence(double hertz, double limit, string meaning) => hertz >= limit
        ? "Faster than what this looks at."
        : $"The bridge will move: {meaning}.";
}

/// <summary>One walker, up and down or to the side.</summary>
/// <param name="Of">Modal mass of that way.</param>
/// <param name="Share">ψ.</param>
/// <param name="Force">P, newtons.</param>
/// <param name="Ends">Of the critical range, Hz.</param>
/// <param name="Classes">Upper ends of the report's comfort classes, m/s².</param>
internal sealed record WalkedWay(
    Func<WalkedMode, double> Of, Func<double, double> Share, double Force, (double From, double To) Ends,
    (double First, double Second, double Third) Classes)
{
    /// <summary>Up and down.</summary>
    public static WalkedWay Vertical { get; } = new(
        m => m.VerticalMass, Footfall.VerticalShare, Footfall.VerticalForce, Footfall.VerticalRange, (0.5, 1.0, 2.5));

    /// <summary>To the side.</summary>
    public static WalkedWay Lateral { get; } = new(
        m => m.LateralMass, Footfall.LateralShare, Footfall.LateralForce, Footfall.LateralRange, (0.1, 0.3, 0.8));

    /// <summary>The range in words.</summary>
    public string Range => $"{CheckWords.Plain(Ends.From)} to {CheckWords.Plain(Ends.To)} Hz";

    /// <summary>The mode that answers most, and what is too light to say.</summary>
    public string Words(RopeModes modes)
    {
        var excited = modes.Walked.Where(m => double.IsFinite(Of(m)) && Share(m.Hertz) > 0).ToList();
        if (excited.Count == 0)
        {
            return "no mode of those found answers";
        }

        var worst = excited.Where(m => Of(m) >= Footfall.LeastMass).MaxBy(m => Share(m.Hertz) / Of(m));
        var light = excited.Where(m => Of(m) < Footfall.LeastMass).MinBy(Of);
        var tooLight = light is null
            ? ""
            : $"{Kind(light)} of {CheckWords.Frequency(light.Hertz)}, modal mass {Mass(light)}: too light for this method (under 20 × "
                + "75 kg)";
        return worst is null
            ? tooLight
            : Figure(worst) + (light is null ? "" : ", and " + tooLight);
    }

    private string Figure(WalkedMode mode)
    {
        var peak = Footfall.Acceleration(Force, Share(mode.Hertz), Of(mode))!.Value;
        return $"{Kind(mode)} of {CheckWords.Frequency(mode.Hertz)}: {CheckWords.Plain(Force)} N × "
            + $"{CheckWords.Plain(Share(mode.Hertz))} / (2 × "
            + $"{CheckWords.Share(Footfall.Damping)} × {Mass(mode)}) = {CheckWords.Plain(peak)} m/s² at most ({Comfort(peak)})";
    }

    private string Comfort(double peak) => peak <= Classes.First ? "the report's class of most comfort"
        : peak <= Classes.Second ? "medium comfort"
        : peak <= Classes.Third ? "least comfort"
        : "beyond the report's comfort classes";

    private static string Kind(WalkedMode mode) => mode.IsCoupled ? "swaying and rolling" : "up and down";

    private string Mass(WalkedMode mode) => $"{Quantities.NumberText.Fixed(Of(mode), 0)} kg";
}
