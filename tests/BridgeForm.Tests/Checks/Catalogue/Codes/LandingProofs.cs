using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>What lies between bridge and landing.</summary>
internal static class LandingProofs
{
    // Always: the landings' guards are not in the project file. IRC 2018 R312.1.3: 4 in.
    [Proves("guard-at-landing", CheckStatus.Engineer)]
    public static Proof Guards() => new Proof(new TwoBays().Check("guard-at-landing"), 4 * TwoBays.Inch).Saying("F00", "F02", "4 in");
}
