using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>Largest tension of all load cases against breaking strength · efficiency of the ends / safety factor.</summary>
internal static class RopeStrength
{
    /// <summary>Stable id.</summary>
    public const string Id = "rope-strength";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        Id,
        "Strength of the more heavily loaded rope",
        "Largest tension of all load cases, the cold ones with wood at the high end of its density among them, against breaking strength × "
            + "efficiency of the ends / safety factor. For an engineer where the efficiency is not known, and for clips on strand, which "
            + "have none; but it fails there too where ends that keep all of the strength would not hold.",
        "the rope's own source and the ends' (named in the result); safety factor of the project file",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Pass or fail; engineer when the ends' efficiency is not known.</summary>
    public static CheckResult Check(CheckContext context) =>
        Check(context.Parameters, context.Cases, context.Words());

    /// <summary>The same from its parts, for trial designs.</summary>
    public static CheckResult Check(BridgeParameters parameters, ImmutableArray<LoadCaseResult> cases, CheckWords words)
    {
        var ropes = parameters.Ropes;
        var worst = Ties.FirstLargest(cases.Where(c => c.Shape is not null), c => c.Shape!.LargestTension);
        if (worst?.Shape is not { } shape)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, 0, null, "N", null, Source(ropes), "no load case has a solution");
        }

        var (tension, demand) = Between(shape, worst.Id, words);
        if (InBackstay(parameters.Site, cases, words) is { } stay && stay.Tension > tension)
        {
            (tension, demand) = stay;
        }

        if (Terminations.Allowed(ropes) is not { } allowed)
        {
            // No end keeps more than all of it.
            var most = ropes.Rope.BreakingStrength / ropes.SafetyFactor;
            if (tension > most)
            {
                return Outcome.AtMost(
                    Declared, tension, most, "N", Source(ropes),
                    $"{demand}; more than ends that keep all of the strength could hold: breaking strength "
                        + $"{words.Force(ropes.Rope.BreakingStrength)} / safety factor {CheckWords.Plain(ropes.SafetyFactor)} = "
                        + $"{words.Force(most)}; a stronger rope, and besides {Unknown(ropes)}");
            }

            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, tension, null, "N", null, Source(ropes),
                $"{demand}; {Unknown(ropes)}");
        }

        return Outcome.AtMost(
            Declared, tension, allowed, "N", Source(ropes),
            $"{demand}; allowed: breaking strength {words.Force(ropes.Rope.BreakingStrength)} × efficiency "
            + $"{CheckWords.Plain(Terminations.Efficiency(ropes)!.Value)} / safety factor {CheckWords.Plain(ropes.SafetyFactor)} = "
            + $"{words.Force(allowed)}");
    }

    private static string Unknown(RopeParameters ropes) => Terminations.IsClips(ropes)
        ? "clips do not hold a strand, so there is no efficiency to count on: set ropes.termination to an end made for the strand, with "
            + "its maker's efficiency and source"
        : $"the efficiency of a {ropes.TerminationKind} end is not known: write ropes.termination.efficiency and its source";

    private static (double Tension, string Text) Between(RopeShape shape, string id, CheckWords words)
    {
        var vertical = Math.Sqrt(Math.Max(0, (shape.LargestTension * shape.LargestTension) - (shape.Horizontal * shape.Horizontal)));
        return (shape.LargestTension, $"largest tension √(H² + V²) = √({words.Force(shape.Horizontal)}² + {words.Force(vertical)}²) = "
            + $"{words.Force(shape.LargestTension)} in case {id}");
    }

    /// <summary>A steep backstay behind a held saddle is pulled harder than the rope between the supports; null without one.</summary>
    private static (double Tension, string Text)? InBackstay(SiteParameters site, ImmutableArray<LoadCaseResult> cases, CheckWords words)
    {
        BackstayParameters[] held = [.. new[] { site.A.Backstay, site.B.Backstay }.OfType<BackstayParameters>().Where(b => !b.Sliding)];
        if (held.Length == 0)
        {
            return null;
        }

        var worst = Ties.FirstLargest(cases.Where(c => c.Shape is not null), c => c.Shape!.Horizontal)!;
        var (steepest, level) = (held.Max(b => Math.Abs(b.Angle)), worst.Shape!.Horizontal);
        var tension = HeldBackstay.Tension(steepest, level);
        return (tension, $"largest tension H / cos {CheckWords.Angle(steepest)} = {words.Force(level)} / "
            + $"{CheckWords.Plain(Elementary.Cos(steepest))} = "
            + $"{words.Force(tension)} in a backstay in case {worst.Id}");
    }

    private static string Source(RopeParameters ropes)
    {
        var ends = Terminations.Efficiency(ropes) is null
            ? "not known"
            : ropes.TerminationSource ?? "efficiency of the project file (TM 5-3810-305-10 table 4: 80 % for clips)";
        return $"strength: {ropes.Rope.Source}; ends: {ends}; safety factor {CheckWords.Plain(ropes.SafetyFactor)} "
            + "of the project file, looked at by safety-factor";
    }
}

/// <summary>Whether the ends suit the rope, and how clips are set.</summary>
internal static class RopeTermination
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-termination",
        "Ends of the ropes",
        "Whether the ends suit the rope: U-bolt clips on strand fail; on wire rope the result gives number (three at least, whatever the "
            + "table says), spacing, turn-back and torque; other ends go by their maker.",
        "tables named in the result; WAC 296-24-29401: three U-bolt clips; common practice of rigging, no source",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>
    /// Clips on strand fail; clips on wire rope list number, spacing, turn-back and torque; other ends go by their maker.
    /// </summary>
    public static CheckResult Check(CheckContext context)
    {
        var ropes = context.Parameters.Ropes;
        if (!Terminations.IsClips(ropes))
        {
            return Other(ropes);
        }

        if (ropes.Rope.Kind == RopeKind.Strand)
        {
            return Result(
                CheckStatus.Fail,
                "U-bolt clips are made for wire rope; on a strand's hard, smooth wires they slip: use grips or sockets made for the "
                    + "strand, with their maker's efficiency",
                "common practice of rigging, no source");
        }

        return Terminations.ClipsFor(ropes) is { } clip
            ? Clips(context.Words(), ropes, clip)
            : Result(
                CheckStatus.Engineer,
                $"no row for clips on rope of {context.Words().Length(ropes.Rope.Diameter)}; sizes between rows are not guessed",
                "Calif. 8 CCR §8497 table 1 and a maker's table for small sizes");
    }

    private static CheckResult Clips(CheckWords words, RopeParameters ropes, WireRopeClip clip)
    {
        var text = $"each end: {clip.Count} U-bolt clips for {clip.Size} in rope, spaced 6 × {words.Length(ropes.Rope.Diameter)} = "
            + $"{words.Length(clip.Spacing)}, turn-back {words.Length(clip.TurnBack)}, nuts {words.Torque(clip.Torque)}; saddle on "
            + "the live rope";
        return Terminations.ClipsHold(ropes.Rope.Kind)
            ? Result(CheckStatus.Pass, text, clip.Source + "; spacing 6 diameters NAVEDTRA 14026 fig. 1-8 and WAC 296-874-30020; saddle on "
                + "the live rope WAC 296-155-33915")
            : Result(CheckStatus.Engineer, text + "; whether this rope is one that clips hold, its maker says", clip.Source);
    }

    private static CheckResult Other(RopeParameters ropes) =>
        ropes.TerminationEfficiency is { } efficiency && ropes.TerminationSource is { } source
        ? Result(CheckStatus.Pass, $"{ropes.TerminationKind}, efficiency {CheckWords.Share(efficiency)}; fitted as its maker says", source)
        : Result(
            CheckStatus.Engineer,
            $"{ropes.TerminationKind}: its maker's efficiency and how it is fitted must be known: write "
                + "ropes.termination.efficiency and source",
            "no source given");

    private static CheckResult Result(CheckStatus status, string detail, string source) =>
        new(Declared.Id, Declared.Title, status, 0, null, "1", null, source, detail);
}

/// <summary>Strength of the ropes where they lie bent over their saddles.</summary>
internal static class SaddleBend
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "saddle-bend",
        "Strength of the ropes over their saddles",
        "The tension of rope-strength against breaking strength × what a bend of D/d = 2 × saddle.radius / rope diameter leaves of it / "
            + "safety factor. The table's next sharper bend counts; sharper than D/d 1 fails. Bend and ends lie apart, so the weaker of "
            + "the two counts, not both. For an engineer without saddle.radius, and for strand, cord and ropes of the file, for which the "
            + "table is not made.",
        BendLoss.Source,
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Pass or fail; engineer where the radius, or the rope's loss, is not known.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (words, ropes) = (context.Words(), context.Parameters.Ropes);
        var tension = RopeStrength.Check(context).Demand;
        if (context.Parameters.Saddle.Radius is not { } radius)
        {
            return Outcome.ForEngineer(
                Declared, tension, "N", Declared.Source,
                $"saddle.radius is not given: how much of their strength the ropes lose over their saddles, pulled by "
                    + $"{words.Force(tension)}, is not looked at");
        }

        var ratio = 2 * radius / ropes.Rope.Diameter;
        var bend = $"D/d = 2 × {words.Length(radius)} / {words.Length(ropes.Rope.Diameter)} = {CheckWords.Plain(ratio)}";
        if (ropes.Rope.Kind != RopeKind.WireRope && BendLoss.Share(ratio) is not null)
        {
            return Outcome.ForEngineer(
                Declared, tension, "N", Declared.Source,
                $"{bend}; the table is for wire rope: what this rope loses its maker says; it is pulled by {words.Force(tension)}");
        }

        if (BendLoss.Share(ratio) is not { } share)
        {
            return Outcome.AtMost(
                Declared, tension, 0, "N", Declared.Source, $"{bend}: sharper than any bend of the table; take a larger saddle.radius");
        }

        var allowed = ropes.Rope.BreakingStrength * share / ropes.SafetyFactor;
        return Outcome.AtMost(
            Declared, tension, allowed, "N", $"{Declared.Source}; strength: {ropes.Rope.Source}",
            $"{bend}: {CheckWords.Share(share)} left; {words.Force(tension)} as in rope-strength; allowed "
                + $"{words.Force(ropes.Rope.BreakingStrength)} × "
            + $"{CheckWords.Plain(share)} / {CheckWords.Plain(ropes.SafetyFactor)} = {words.Force(allowed)}");
    }
}
