using BridgeForm.Checks.Timber;
using BridgeForm.Project;

namespace BridgeForm.Checks.Codes;

/// <summary>What a builder may choose, but not as low as this.</summary>
internal static class InputFloors
{
    private const double PoundPerSquareFoot =
        Quantities.Units.PoundForce / (Quantities.Units.MetresPerFoot * Quantities.Units.MetresPerFoot);
    /// <summary>Below this a safety factor fails.</summary>
    public const double LeastFactor = 3;
    private const double UsualFactor = 5;

    private const string FactorSource =
        "at most one fifth of the breaking strength: WAC 296-24-29401 (1); at least 3: trail bridge standards SSTB and LSTB (from memory)";

    private const double UsualPoint = 300 * Quantities.Units.PoundForce;
    private const double LeastPoint = 200 * Quantities.Units.PoundForce;

    private const string PointSource = "own floors: 300 lbf as on a stair tread (IRC Table R301.5, note c), 200 lbf one person";

    private const string LiveSource =
        "own floors: 40 psf private, 60 psf public (ASCE 7-16 Table 4.3-1: 60 psf on walkways other than exits), "
            + "20 psf whatever the reason";

    // Half of what a private bridge is built for: with less, a few who meet are more than it was judged for.
    private const double LeastLive = 20 * PoundPerSquareFoot;

    /// <summary>The ropes' safety factor.</summary>
    public static DeclaredCheck DeclaredFactor { get; } = new(
        "safety-factor",
        "Safety factor of the ropes",
        "ropes.safety_factor against 5; below 3 it fails.",
        FactorSource,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>The live load.</summary>
    public static DeclaredCheck DeclaredLive { get; } = new(
        "live-load",
        "Live load",
        "loads.live against 40 psf of a private bridge, 60 psf of a public one. Lower fails, unless loads.low_live_reason says why: then "
            + "it is to review, and the reason stands beside the verdict and wherever the check does. No reason does for less than 20 psf "
            + "(0.96 kPa).",
        LiveSource,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>The point load.</summary>
    public static DeclaredCheck DeclaredPoint { get; } = new(
        "point-load",
        "Point load",
        "loads.point.force against 300 lbf (1.33 kN), one heavy person who lands on one foot or two who meet; below it to review, below "
            + "200 lbf (0.89 kN), one person, it fails. Boards, bases, tilt and lift under one person are only as sure as this load.",
        PointSource,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>A look below 300 lbf, fails below 200.</summary>
    public static CheckResult Point(CheckContext context)
    {
        var (words, force) = (context.Words(), context.Parameters.Loads.PointForce);
        var text = $"loads.point.force {words.Force(force)}; usual {words.Force(UsualPoint)}, at least {words.Force(LeastPoint)}";
        return force < LeastPoint
            ? Outcome.AtLeast(DeclaredPoint, force, LeastPoint, "N", PointSource, text)
            : Outcome.AtLeast(DeclaredPoint, force, UsualPoint, "N", PointSource, text, CheckStatus.Warn);
    }

    /// <summary>Below 3 fails, below 5 a look.</summary>
    public static CheckResult Factor(CheckContext context)
    {
        var factor = context.Parameters.Ropes.SafetyFactor;
        var text = $"ropes.safety_factor {CheckWords.Plain(factor)}";
        return factor < LeastFactor
            ? Outcome.AtLeast(
                DeclaredFactor, factor, LeastFactor, "1", FactorSource,
                $"{text}; at least {CheckWords.Plain(LeastFactor)}, usual {CheckWords.Plain(UsualFactor)}")
            : Outcome.AtLeast(
                DeclaredFactor, factor, UsualFactor, "1", FactorSource, $"{text}; usual {CheckWords.Plain(UsualFactor)}", CheckStatus.Warn);
    }

    /// <summary>Fails; with a reason a look that carries it in its title.</summary>
    public static CheckResult Live(CheckContext context)
    {
        var (words, loads) = (context.Words(), context.Parameters.Loads);
        var (least, use) =
            (LoadParameters.LeastLive(context.Parameters.Use), context.Parameters.Use == BridgeUse.Public ? "public" : "private");
        var text = $"loads.live {words.Pressure(loads.Live)}; at least {words.Pressure(least)} on a {use} bridge";
        if (loads.LowLiveReason is { } given && loads.Live < LeastLive * (1 - Quantities.Tolerances.SameLimit))
        {
            return Outcome.AtLeast(
                DeclaredLive, loads.Live, LeastLive, "Pa", LiveSource,
                $"{text}; {words.Pressure(LeastLive)} whatever the reason; loads.low_live_reason: {given}");
        }

        if (loads.LowLiveReason is not { } reason)
        {
            return Outcome.AtLeast(
                DeclaredLive, loads.Live, least, "Pa", LiveSource,
                loads.Live < least ? $"{text}: raise it, or say why it is enough under loads.low_live_reason" : text);
        }

        var result = Outcome.AtLeast(
            DeclaredLive, loads.Live, least, "Pa", LiveSource, $"{text}; loads.low_live_reason: {reason}", CheckStatus.Warn);
        return result.Status == CheckStatus.Pass
            ? result
            : result with { Title = $"{DeclaredLive.Title} below {words.Pressure(least)}: {reason}" };
    }
}
