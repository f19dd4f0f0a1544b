namespace BridgeForm.Tests.Trials;

/// <summary>Trial bases that would be no bridge.</summary>
public sealed class BaseTrialTests
{
    // Nine rails of 5x8 between deck and head fit this base, and no longer fit a trial base on which the deck lies otherwise.
    [Fact]
    public void A_trial_base_on_which_nothing_fits_is_passed_over()
    {
        var parameters = Bridges.Read("""
            name: Trial bases (invented)
            units: metric
            site: { span: 342.291 cm, rise: 94.724 cm, reference_temperature: 34.925 C }
            ropes: { spacing: 164.028 cm, sag: 4.628 %, stretch: [0.37794 %, 2.194 %] }
            frames:
              spacing: 443.638 mm
              base: { length: 307.559 cm }
              channel: { width: 0.85215 in, liner: 0.00001 m }
              post: { length: 102.412 in, lean: 0.1307 rad, foot: 99.032 cm }
              brace: { foot: 3.934 ft }
              hardware: 0.70698 kg
            guard: { rails: { section: 5x8, count: 9 } }
            loads: { point: { force: 167.668 lbf, patch: 132.415 cm, edge: 12.544 cm } }
            """);
        Assert.True(Bridge.TryBuild(parameters, out var model, out var fault), fault?.Message);
        Assert.Contains(model.Remedies, r => r.Text.Contains("base", StringComparison.Ordinal));
    }
}
