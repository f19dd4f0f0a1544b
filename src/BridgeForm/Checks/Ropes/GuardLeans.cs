using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Ropes;

/// <summary>People who push along the whole of one guard of a public bridge: what the bridge does, not what its guard holds.</summary>
internal static class GuardLeans
{
    private const string Source =
        "IBC 1607.8.1: 50 plf on a public guard, taken on all of it at once; statics of both ropes in space, frames rigid in their plane";

    /// <summary>What it states.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-line-load",
        "A row of people who push on one guard",
        "50 plf outward along the whole of one guard of a public bridge with nobody's weight on it, at the cap's top, with all of its own "
            + "weight: how far the ropes move to the side and the frames roll, and where it turns over. Only stated: side stays hold a "
            + "bridge against it, none is modelled, and a licensed engineer decides. Of a private bridge nothing is computed: 200 lbf on "
            + "one post is looked at by guard-post and keeper-uplift-guard.",
        Source,
        [CheckStatus.Engineer]);

    /// <summary>Always for an engineer.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        if (context.Wind.Leaning is not { } state)
        {
            return Outcome.ForEngineer(
                Declared, 0, "N", Source,
                context.Parameters.Use == BridgeUse.Public
                    ? "no frame hangs between the supports"
                    : "a private bridge: a row of people who push on one guard is not looked at, 200 lbf on one post is");
        }

        return Outcome.ForEngineer(
            Declared, state.Force, "N", Source,
            $"{Line(words.Units, GuardLean.Line)} along all of one guard between the end frames: {words.Force(state.Force)} to the side; "
                + $"{Words(state, words, new QuantityText(context.Parameters.Units))}. Nobody's weight is on it. Side stays hold a bridge "
                + "against it; none is modelled. A licensed engineer decides.");
    }

    private static string Words(WindState state, CheckWords words, QuantityText text) => state switch
    {
        { Stands: true } => $"it stands, {text.Size(state.Sideways)} sideways, roll {CheckWords.Angle(state.Roll)} at {state.RollFrame}, "
            + $"{words.Force(state.Lift)} to hold down at a keeper",
        { StandsTo: { } least, FallsAt: { } most } =>
            $"without side stays it turns over between {Line(words.Units, least)} and {Line(words.Units, most)}",
        _ => "no equilibrium was found, not even in the calm",
    };

    private static string Line(UnitSystem units, double newtonsPerMetre) => units == UnitSystem.Metric
        ? NumberText.Rounded(newtonsPerMetre / 1000, 2) + " kN/m"
        : NumberText.Rounded(newtonsPerMetre / (Quantities.Units.PoundForce / Quantities.Units.MetresPerFoot), 1) + " plf";
}
