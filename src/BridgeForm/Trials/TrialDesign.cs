using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Ropes;

namespace BridgeForm.Trials;

/// <summary>A trial design as far as the checks of the ropes look at it.</summary>
/// <param name="Rope">Shape of one rope.</param>
/// <param name="Layout">Frames on it.</param>
/// <param name="Input">What the load cases are made from.</param>
internal sealed record TrialDesign(RopeShape Rope, BridgeLayout Layout, LoadCaseInput Input)
{
    /// <summary>
    /// Loads that agree to this share of their sum, and so few frames and bays weighed for the others, give a ratio that is
    /// wrong by far less than <see cref="NearLimit"/>.
    /// </summary>
    public const double RoughAccuracy = 1e-5;

    private const int Weighed = 24;

    /// <summary>Which frames and bays of a trial are weighed.</summary>
    public static Sampling Rough => new(Weighed);

    /// <summary>A ratio found roughly counts where it is away from 1 by more than this.</summary>
    public const double NearLimit = 5e-3;

    /// <summary>Null where it has no shape, or where the effort is spent.</summary>
    /// <param name="parameters">The design.</param>
    /// <param name="effort">What the search may cost; a trial of it has begun.</param>
    /// <param name="shape">Finds the shape.</param>
    /// <param name="roughly">From few of its frames and bays; otherwise to the last digit, as the bridge itself is.</param>
    public static TrialDesign? Make(BridgeParameters parameters, Effort effort, TrialShape shape, bool roughly)
    {
        if (shape(parameters, effort, roughly) is not { } rope)
        {
            return null;
        }

        var (layout, sampling, token) = (BridgeLayout.Lay(parameters, rope), roughly ? Rough : Sampling.All, effort.Token);
        var masses = BridgeMasses.Weigh(layout, sampling, token);
        return new TrialDesign(rope, layout, LoadCaseInput.Gather(layout, rope, masses, sampling, token));
    }
}
