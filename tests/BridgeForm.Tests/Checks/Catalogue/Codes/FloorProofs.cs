using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>Safety factor and live load, by which everything else is measured.</summary>
internal static class FloorProofs
{
    // Pounds on a square foot.
    private const double Psf = BridgeForm.Quantities.Units.PoundForce / (0.3048 * 0.3048);

    // At most one fifth of the breaking strength (WAC 296-24-29401).
    [Proves("safety-factor", CheckStatus.Pass, Side.Within)]
    [Proves("safety-factor", CheckStatus.Warn, Side.Beyond)]
    public static Proof Usual(double share) => Factor(5 / share, 5);

    [Proves("safety-factor", CheckStatus.Warn)]
    public static Proof Least() => Factor(3.0015, 5);

    // Trail bridge standards (from memory).
    [Proves("safety-factor", CheckStatus.Fail, Side.Beyond)]
    public static Proof Low(double share) => Factor(3 / share, 3);

    [Proves("live-load", CheckStatus.Pass, Side.Within)]
    [Proves("live-load", CheckStatus.Fail, Side.Beyond)]
    public static Proof Private(double share) => Live(40 / share, 40, "private");

    [Proves("live-load", CheckStatus.Pass, Side.Within)]
    [Proves("live-load", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public(double share) => Live(60 / share, 60, "public");

    // A reason makes it a look, and stands in its headline.
    [Proves("live-load", CheckStatus.Warn, Side.Beyond)]
    public static Proof WithAReason(double share)
    {
        var proof = Live(40 / share, 40, "private", ", low_live_reason: one household of four");
        Assert.Equal("Live load below 40 psf: one household of four", proof.Check.Title);
        return proof.Saying("loads.low_live_reason: one household of four");
    }

    // Own floor: no reason does for less than 20 psf.
    [Proves("live-load", CheckStatus.Fail, Side.Beyond)]
    public static Proof WithAnyReason(double share) =>
        Live(20 / share, 20, "private", ", low_live_reason: nobody walks here").Saying("whatever the reason", "nobody walks here");

    [Proves("live-load", CheckStatus.Warn)]
    public static Proof WithAReasonAboveTheFloor() => Live(20.01, 40, "private", ", low_live_reason: nobody walks here");

    [Proves("live-load", CheckStatus.Pass)]
    public static Proof ReasonWithoutNeed()
    {
        var proof = Live(50, 40, "private", ", low_live_reason: one household of four");
        Assert.Equal("Live load", proof.Check.Title);
        return proof;
    }

    // A stair tread carries 300 lb on 2 by 2 in (IRC Table R301.5, note c); one person is 200.
    [Proves("point-load", CheckStatus.Pass, Side.Within)]
    [Proves("point-load", CheckStatus.Warn, Side.Beyond)]
    public static Proof Point(double share) => PointOf(300 / share, 300);

    [Proves("point-load", CheckStatus.Warn)]
    public static Proof OnePerson() => PointOf(200.01, 300);

    [Proves("point-load", CheckStatus.Fail, Side.Beyond)]
    public static Proof NotOnePerson(double share) => PointOf(200 / share, 200);

    [Proves("point-load", CheckStatus.Fail)]
    public static Proof Nobody() => PointOf(0, 200);

    // Each value just on its mild side: 6 in and 30 in (ASCE 7 4.4: 2-1/2 ft), 0.6 × 16 psf (ASCE 7-16 27.1.5),
    // 60 °F (own figure), 0.25 % of wire rope at a safety factor of 5 (docs/sources.md). All together, and none of
    // them just on the other side.
    [Proves("mild-inputs", CheckStatus.Warn)]
    public static Proof MildInputs() => new Proof(
        Inputs("6.01 in", "30.01 in", "9.59 psf", "[30.1 F, 90 F]", "0.2499 %", "").Check("mild-inputs"), 6, 0).Saying(
        "loads.point.edge 6.01 in", "loads.point.patch 30.01 in", "loads.wind.pressure 9.6 psf", "site.temperatures 59.9 °F apart",
        "ropes.stretch up to 0.25 %", "ropes.termination.efficiency 90 % without a source");

    [Proves("mild-inputs", CheckStatus.Pass)]
    public static Proof UsualInputs() => new(
        Inputs("6 in", "30 in", "9.61 psf", "[30 F, 90 F]", "0.2501 %", ", source: letter of the maker").Check("mild-inputs"), 0, 0);

    public static TwoBays Inputs(string edge, string patch, string wind, string temperatures, string stretch, string source) => new()
    {
        Site = $", temperatures: {temperatures}",
        Ropes = $", stretch: [0 %, {stretch}], termination: {{ kind: other, efficiency: 90 %{source} }}",
        More = $"loads: {{ point: {{ force: 300 lbf, patch: {patch}, edge: {edge} }}, wind: {{ pressure: {wind}, source: letter }} }}",
    };

    private static Proof PointOf(double pounds, double least)
    {
        const double Pound = BridgeForm.Quantities.Units.PoundForce;
        var bridge = new TwoBays { More = FormattableString.Invariant($"loads: {{ point: {{ force: {pounds:R} lbf }} }}") };
        return new(bridge.Check("point-load"), pounds * Pound, least * Pound);
    }

    private static Proof Factor(double factor, double limit) => new(
        new TwoBays { Ropes = FormattableString.Invariant($", safety_factor: {factor:R}") }.Check("safety-factor"), factor, limit);

    private static Proof Live(double psf, double least, string use, string more = "")
    {
        var bridge = new TwoBays { Use = use, More = FormattableString.Invariant($"loads: {{ live: {psf:R} psf{more} }}") };
        return new(bridge.Check("live-load"), psf * Psf, least * Psf);
    }
}
