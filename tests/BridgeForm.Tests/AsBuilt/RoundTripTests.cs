using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Tests.Checks;

namespace BridgeForm.Tests.AsBuilt;

/// <summary>
/// Random bridges built wrong by known amounts: what the ropes are let out by is found again from the sags that the solver's own
/// forward run gives, and taking it back brings the sag of the design. How many: BRIDGEFORM_ROUNDS, else 30.
/// </summary>
public sealed class RoundTripTests
{
    private const double Millimetre = 1e-3;
    private const double Colder = -12;

    // What ropes are longer or shorter by, as a share of them: three times what a crew measures wrong, and as much shorter.
    private const double Wrong = 0.004;

    // Empty and yet beyond what any bridge may tilt under load, radians.
    private const double Leans = 0.14;

    private static int Rounds => int.TryParse(
        Environment.GetEnvironmentVariable("BRIDGEFORM_ROUNDS"), CultureInfo.InvariantCulture, out var rounds) ? rounds : 30;

    [Theory]
    [InlineData(BuildStage.Bare)]
    [InlineData(BuildStage.Frames)]
    [InlineData(BuildStage.Complete)]
    public void What_was_built_wrong_is_found_from_its_sags(BuildStage stage)
    {
        var lot = new Random(11);
        var (all, done) = (0, 0);
        foreach (var parameters in RandomBridge.Some(seed: 16, Rounds))
        {
            var (left, right) = ((2 * lot.NextDouble()) - 1, (2 * lot.NextDouble()) - 1);
            all++;
            if (!Bridge.TryShape(parameters, out var rope, out _))
            {
                continue;
            }

            var layout = BridgeLayout.Lay(parameters, rope);
            var ropes = HungRopes.Of(LoadCaseInput.Gather(layout, rope, BridgeMasses.Weigh(layout)), stage) with { DegreesAbove = Colder };
            var fed = new RopePair(Wrong * left * ropes.Length, Wrong * right * ropes.Length);

            // Ropes so unlike may roll the frames over, or be too short for the span: then there is nothing to measure.
            if (!ropes.TryHang(default, out var drawn, out _) || !ropes.TryHang(fed, out var hung, out _))
            {
                continue;
            }

            if (!ropes.TryFit(hung!.Sags, out var found, out var failure))
            {
                // So near to rolling over that the way there leads over it: a bridge that nobody may step on, and correct says why.
                Assert.True(hung.Tilt > Leans && failure!.Contains("roll over", StringComparison.Ordinal), $"{hung.Tilt}: {failure}");
                continue;
            }

            Assert.True(ropes.TryHang(new RopePair(fed.Left - found.Left, fed.Right - found.Right), out var turned, out failure), failure);
            Assert.Equal(drawn!.Sags.Left, turned!.Sags.Left, Millimetre);
            Assert.Equal(drawn.Sags.Right, turned.Sags.Right, Millimetre);
            done++;
        }

        Assert.True(done > all / 2, $"{done} of {all} bridges hang so wrong: they prove little");
    }
}
