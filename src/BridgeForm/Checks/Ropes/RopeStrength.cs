using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>Largest tension of all load cases against breaking strength · efficiency of the ends / safety factor.</summary>
internal static class RopeStrength
{
    /// <summary>Stable id.</summary>
    public const string Id = "rope-strength";

    private const string Title = "Strength of the more heavily loaded rope";

    /// <summary>Pass or fail; engineer when the ends' efficiency is not known.</summary>
    public static CheckResult Of(CheckContext context) =>
        Of(context.Parameters.Ropes, context.Cases, context.People());

    /// <summary>The same from its parts, for trial designs.</summary>
    public static CheckResult Of(RopeParameters ropes, ImmutableArray<LoadCaseResult> cases, CheckWords words)
    {
        var worst = cases.Where(c => c.Shape is not null).MaxBy(c => c.Shape!.MaxTension);
        if (worst?.Shape is not { } shape)
            return new CheckResult(Id, Title, CheckStatus.Fail, 0, null, "N", null, Source(ropes), "no load case has a solution");
        var vertical = Math.Sqrt(Math.Max(0, (shape.MaxTension * shape.MaxTension) - (shape.Horizontal * shape.Horizontal)));
        var demand = $"largest tension √(H² + V²) = √({words.Force(shape.Horizontal)}² + {words.Force(vertical)}²) = "
            + $"{words.Force(shape.MaxTension)} in case {worst.Id}";
        if (Terminations.Allowed(ropes) is not { } allowed)
            return new CheckResult(
                Id, Title, CheckStatus.Engineer, shape.MaxTension, null, "N", null, Source(ropes),
                $"{demand}; the efficiency of a {ropes.TerminationKind} end is not known: write ropes.termination.efficiency and its source");
        return Outcome.AtMost(
            Id, Title, shape.MaxTension, allowed, "N", Source(ropes),
            $"{demand}; allowed: breaking strength {words.Force(ropes.Rope.BreakingStrength)} × efficiency "
            + $"{CheckWords.Plain(ropes.TerminationEfficiency!.Value)} / safety factor {CheckWords.Plain(ropes.SafetyFactor)} = {words.Force(allowed)}");
    }

    private static string Source(RopeParameters ropes) =>
        $"strength: {ropes.Rope.Source}; ends: {ropes.TerminationSource ?? "efficiency of the project file (TM 5-3810-305-10 table 4: 80 % for clips)"}; safety factor {CheckWords.Plain(ropes.SafetyFactor)} "
        + "of the project file (Nepal trail bridges at least 3, from memory; 5 is common practice of rigging, no source)";
}
