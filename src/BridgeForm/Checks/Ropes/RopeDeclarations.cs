using System.Collections.Immutable;

namespace BridgeForm.Checks.Ropes;

/// <summary>What the checks of ropes, ends, supports and motion compare.</summary>
internal static class RopeDeclarations
{
    private const string Rigging = "common practice of rigging, no source";
    private const string Engineers = "statics of the worst load case; for a licensed engineer";

    /// <summary>In the order of <see cref="RopeChecks"/>.</summary>
    public static ImmutableArray<DeclaredCheck> All { get; } =
    [
        new("cases-solved", "Every load case has a solution",
            "Load cases, hoisting rows, stretched and moved ropes without a shape: none may be.",
            "common practice, no source", [CheckStatus.Pass, CheckStatus.Fail]),
        new("rope-strength", "Strength of the more heavily loaded rope",
            "Largest tension of all load cases against breaking strength × efficiency of the ends / safety factor. For an engineer where the efficiency is not known.",
            "the rope's own source and the ends' (named in the result); safety factor of the project file",
            [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]),
        new("rope-termination", "Ends of the ropes",
            "Whether the ends suit the rope: U-bolt clips on strand fail; on wire rope the result gives number, spacing, turn-back and torque; other ends go by their maker.",
            $"tables named in the result; {Rigging}", [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]),
        new("turnbuckle-size", "Turnbuckle for one rope",
            "Largest tension against the working load of the smallest turnbuckle of a named set that carries it.",
            "the set's source, named in the result", [CheckStatus.Pass, CheckStatus.Engineer]),
        new("shackle-size", "Shackle for one rope",
            "Largest tension against the working load of the smallest shackle of a named set that carries it.",
            "the set's source, named in the result", [CheckStatus.Pass, CheckStatus.Engineer]),
        new("rope-take-up", "Adjustment at the ends of one rope",
            "Constructional stretch at its high end plus the change by temperature against what two turnbuckles take up.",
            "sources of stretch and take-up, named in the result", [CheckStatus.Pass, CheckStatus.Engineer]),
        new("anchor-a", "Support A: anchor and post or tree", "Pull along the rope and the backstay, and what comes down on the support. Only stated.",
            Engineers, [CheckStatus.Engineer]),
        new("anchor-b", "Support B: anchor and post or tree", "As for support A.", Engineers, [CheckStatus.Engineer]),
        new("support-move", "Fall of mid-span when a support moves", "Fall of mid-span when one support moves 25 mm (1 in). Only stated.",
            Engineers, [CheckStatus.Engineer]),
        new("keeper-slip", "Keeper against sliding along the rope",
            "Load of a frame × sine of the rope's slope, or the difference of tension on its two sides, in the worst case; friction not counted. Only stated.",
            Engineers, [CheckStatus.Engineer]),
        new("loss-of-one-rope", "Loss of one rope", "No other load path is claimed.", Engineers, [CheckStatus.Engineer]),
        new("deck-slope-loaded", "Steepest slope of the deck under load", "Steepest bay of all load cases with a deck against the steepest ramp.",
            Limits.Ramp.Source, [CheckStatus.Pass, CheckStatus.Warn]),
        new("cross-slope", "Cross slope of the deck under load", "Slope between the two ropes in the worst case against 1 : 48.",
            "ADA 2010 405.3", [CheckStatus.Pass, CheckStatus.Warn]),
        new("ground-clearance", "Room over the ground", "Least room over site.ground in all load cases and after the rope's stretch; only where site.ground is given.",
            "geometry; how much is enough is for the site", [CheckStatus.Pass, CheckStatus.Fail]),
        new("water-clearance", "Room over the highest water", "Least room over site.water in all load cases and after the rope's stretch; only where site.water is given.",
            "geometry; freeboard is for the site and its code", [CheckStatus.Pass, CheckStatus.Fail]),
        new("bounce-vertical", "Bounce: slowest vertical motion", "Lowest vertical frequency, empty and loaded, against 3 Hz; the string and Irvine formulas beside it.",
            "AASHTO Guide Specifications for Pedestrian Bridges 2009 (from memory)", [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]),
        new("sway-lateral", "Sway: slowest motion to the side", "Lowest lateral frequency, empty and loaded, against 1.3 Hz; the string formula beside it.",
            "AASHTO Guide Specifications for Pedestrian Bridges 2009 (from memory)", [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]),
    ];
}
