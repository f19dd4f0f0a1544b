using BridgeForm.Ropes;

namespace BridgeForm.Tests.Ropes;

public sealed class CaseShootingTests
{
    /// <summary>
    /// Heavy, soft rope, so that what slides over the saddles weighs something: the rates by which Newton steps are those that
    /// differences of the places give.
    /// </summary>
    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void Rates_of_a_rope_that_slides_agree_with_differences(bool slidesAtA, bool slidesAtB)
    {
        var stay = new SlidingBackstay(10, 9.6);
        var request = new LoadCaseRequest
        {
            Span = 12,
            Rise = 0,
            UnstressedLengths = [4, 4, 4],
            Loads = [0, 300, 500, 0],
            WeightPerLength = 100,
            AxialStiffness = 2e4,
            BackstayA = slidesAtA ? stay : null,
            BackstayB = slidesAtB ? stay : null,
        };
        const double H = 1000, V = 900, Newton = 0.1;
        var at = CaseShooting.Shoot(request, H, V);
        Assert.False(at.Slid);
        var byH = Differences(CaseShooting.Shoot(request, H + Newton, V), CaseShooting.Shoot(request, H - Newton, V));
        var byV = Differences(CaseShooting.Shoot(request, H, V + Newton), CaseShooting.Shoot(request, H, V - Newton));
        RopeSamples.Close(byH.X, at.XRates.H, 1e-6);
        RopeSamples.Close(byV.X, at.XRates.V, 1e-6);
        RopeSamples.Close(byH.Drop, at.DropRates.H, 1e-6);
        RopeSamples.Close(byV.Drop, at.DropRates.V, 1e-6);

        static (double X, double Drop) Differences(CaseShooting after, CaseShooting before) =>
            ((after.X - before.X) / (2 * Newton), (after.Drop - before.Drop) / (2 * Newton));
    }
}
