using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Checks;

/// <summary>How people's push on one guard is told: a load along it on a public bridge, one force on a private one.</summary>
internal static class PushWords
{
    /// <summary>In a few words where the bridge turns over; empty where it stands, or nothing was looked at.</summary>
    public static string Falls(WindState? state, CheckWords words, bool isPublic) => state switch
    {
        null or { Stands: true } => "",
        { StandsTo: { } least, FallsAt: { } most } => $"without side stays it turns over between {Push(words, isPublic, least)} and "
            + Push(words, isPublic, most),
        _ => "no equilibrium was found, not even without a push",
    };

    /// <summary>Newtons, or newtons per metre on a public bridge.</summary>
    public static string Push(CheckWords words, bool isPublic, double push) => isPublic ? Line(words.Units, push) : words.Force(push);

    private static string Line(UnitSystem units, double newtonsPerMetre) => units == UnitSystem.Metric
        ? NumberText.Rounded(newtonsPerMetre / 1000, 2) + " kN/m"
        : NumberText.Rounded(newtonsPerMetre / (Units.PoundForce / Units.MetresPerFoot), 1) + " plf";
}
