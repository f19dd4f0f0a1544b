using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Ropes;
using BridgeForm.Loads;
using BridgeForm.Project;

namespace BridgeForm.Trials;

/// <summary>Trial designs of one search, judged by the strength of their ropes.</summary>
/// <param name="quick">What may be spent on designs in which only the hardest case is solved.</param>
/// <param name="effort">What may be spent on those in which all are.</param>
/// <param name="shape">Finds the shape of a design.</param>
/// <param name="hardest">Id of the case that pulls hardest now.</param>
internal sealed class RopeTrials(Effort quick, Effort effort, TrialShape shape, string? hardest)
{
    /// <summary>The quick search came to no end.</summary>
    public bool IsQuickEnded => quick.IsSpent;

    /// <summary>Something smaller may pass, or something at all.</summary>
    public bool IsEnded => quick.IsSpent || effort.IsSpent;

    /// <summary>Designs that were tried.</summary>
    public int Count => quick.Trials + effort.Trials;

    /// <summary>
    /// In the case that pulls hardest now. Most designs pass or fail by far there: few rounds of shape and loads tell so.
    /// </summary>
    public Trial Try(BridgeParameters parameters) => quick.TryBegin()
        ? Trial.Of(Judge(parameters, quick, roughly: true, Hardest), () => Judge(parameters, quick, roughly: false, Hardest))
        : Trial.Nothing;

    /// <summary>In all load cases: before it is told.</summary>
    public Trial TryWhole(BridgeParameters parameters) => effort.TryBegin()
        ? Trial.Checked(
            Judge(parameters, effort, roughly: true, Hardest),
            () => Judge(parameters, effort, roughly: false, input => LoadCases.All(input, token: effort.Token)))
        : Trial.Nothing;

    // It need not be one that every bridge has.
    private ImmutableArray<LoadCaseResult> Hardest(LoadCaseInput input) =>
        LoadCases.Some(input, id => string.Equals(id, hardest, StringComparison.Ordinal), effort.Token) is { IsEmpty: false } one
            ? one
            : LoadCases.Some(input, _ => true, effort.Token);

    // Holds where ropes and every case have a shape, and the rope is strong enough.
    private Trial Judge(
        BridgeParameters parameters, Effort spent, bool roughly, Func<LoadCaseInput, ImmutableArray<LoadCaseResult>> solve)
    {
        if (TrialDesign.Make(parameters, spent, shape, roughly) is not { } design)
        {
            return Trial.Nothing;
        }

        var cases = solve(design.Input);
        var strength = RopeStrength.Check(parameters, cases, new CheckWords(parameters.Units));
        var solved = cases.All(c => c.Shape is not null);
        return new Trial(
            solved && strength.Status == CheckStatus.Pass,
            solved ? strength.Ratio ?? double.PositiveInfinity : double.PositiveInfinity,
            design.Rope.Steps);
    }
}
