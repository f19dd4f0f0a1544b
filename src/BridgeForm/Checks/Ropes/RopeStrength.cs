using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Project;
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
        "Largest tension of all load cases against breaking strength × efficiency of the ends / safety factor. For an engineer where the efficiency is not known, and for clips on strand, which have none.",
        "the rope's own source and the ends' (named in the result); safety factor of the project file",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Pass or fail; engineer when the ends' efficiency is not known.</summary>
    public static CheckResult Of(CheckContext context) =>
        Of(context.Parameters, context.Cases, context.People());

    /// <summary>The same from its parts, for trial designs.</summary>
    public static CheckResult Of(BridgeParameters parameters, ImmutableArray<LoadCaseResult> cases, CheckWords words)
    {
        var ropes = parameters.Ropes;
        var worst = cases.Where(c => c.Shape is not null).MaxBy(c => c.Shape!.MaxTension);
        if (worst?.Shape is not { } shape)
            return new CheckResult(Declared.Id, Declared.Title, CheckStatus.Fail, 0, null, "N", null, Source(ropes), "no load case has a solution");
        var (tension, demand) = Between(shape, worst.Id, words);
        if (InBackstay(parameters.Site, cases, words) is { } stay && stay.Tension > tension)
            (tension, demand) = stay;
        if (Terminations.Allowed(ropes) is not { } allowed)
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, tension, null, "N", null, Source(ropes),
                $"{demand}; {Unknown(ropes)}");
        return Outcome.AtMost(
            Declared, tension, allowed, "N", Source(ropes),
            $"{demand}; allowed: breaking strength {words.Force(ropes.Rope.BreakingStrength)} × efficiency "
            + $"{CheckWords.Plain(Terminations.Efficiency(ropes)!.Value)} / safety factor {CheckWords.Plain(ropes.SafetyFactor)} = {words.Force(allowed)}");
    }

    private static string Unknown(RopeParameters ropes) => Terminations.IsClips(ropes)
        ? "clips do not hold a strand, so there is no efficiency to count on: set ropes.termination to an end made for the strand, with its maker's efficiency and source"
        : $"the efficiency of a {ropes.TerminationKind} end is not known: write ropes.termination.efficiency and its source";

    private static (double Tension, string Text) Between(RopeShape shape, string id, CheckWords words)
    {
        var vertical = Math.Sqrt(Math.Max(0, (shape.MaxTension * shape.MaxTension) - (shape.Horizontal * shape.Horizontal)));
        return (shape.MaxTension, $"largest tension √(H² + V²) = √({words.Force(shape.Horizontal)}² + {words.Force(vertical)}²) = "
            + $"{words.Force(shape.MaxTension)} in case {id}");
    }

    /// <summary>A steep backstay behind a held saddle is pulled harder than the rope between the supports; null without one.</summary>
    private static (double Tension, string Text)? InBackstay(SiteParameters site, ImmutableArray<LoadCaseResult> cases, CheckWords words)
    {
        BackstayParameters[] held = [.. new[] { site.A.Backstay, site.B.Backstay }.OfType<BackstayParameters>().Where(b => !b.Sliding)];
        if (held.Length == 0)
            return null;
        var worst = cases.Where(c => c.Shape is not null).MaxBy(c => c.Shape!.Horizontal)!;
        var (steepest, level) = (held.Max(b => Math.Abs(b.Angle)), worst.Shape!.Horizontal);
        var tension = HeldBackstay.Tension(steepest, level);
        return (tension, $"largest tension H / cos {CheckWords.Angle(steepest)} = {words.Force(level)} / {CheckWords.Plain(Math.Cos(steepest))} = "
            + $"{words.Force(tension)} in a backstay in case {worst.Id}");
    }

    private static string Source(RopeParameters ropes) =>
        $"strength: {ropes.Rope.Source}; ends: {(Terminations.Efficiency(ropes) is null ? "not known" : ropes.TerminationSource ?? "efficiency of the project file (TM 5-3810-305-10 table 4: 80 % for clips)")}; safety factor {CheckWords.Plain(ropes.SafetyFactor)} "
        + "of the project file (trail bridge standards SSTB and LSTB at least 3, from memory; 5 is common practice of rigging, no source)";
}
