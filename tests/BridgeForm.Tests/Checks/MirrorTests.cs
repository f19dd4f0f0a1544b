using BridgeForm.Checks;
using BridgeForm.Checks.Register;

namespace BridgeForm.Tests.Checks;

/// <summary>
/// The same bridge seen from its other side is no other bridge: support A where B was, so the rise with the other sign, and ground,
/// landings, backstays and loads from the other end. Every check comes out as it did, those that name a support for the other one.
/// </summary>
public sealed class MirrorTests
{
    // Both twins are solved by themselves.
    private const double Alike = 1e-6;

    // Of lengths: rails of neighbouring bays end some hundredths of a millimetre apart at a frame, and the one towards A is read.
    private const double AtJoint = 5e-6;

    private const string From = """
        name: From either side (invented)
        units: imperial
        site: { span: 30 ft, reference_temperature: 60 F, temperatures: [20 F, 100 F], SITE }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 60 in, sag: 6 %, stretch: [0.1 %, 0.4 %] }
        frames:
          spacing: 3 ft
          base: { section: 4x6, length: 76 in }
          channel: { clearance: 1/8 in, depth: 5/8 in, end_depth: 1 in }
          post: { section: 2x4, length: 40 in, lean: 8 deg, foot: 18-1/4 in }
          brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in }

        """;

    private const string Plumb = "frames:\n  stance: plumb\n";
    private const string Plan = "frames:\n  step: plan\n";
    private const string Treads = "deck: { layout: across, stringer: { section: 2x6, count: 3 } }";
    private const string OneBankA = "backstay: { length: 20 ft, angle: 30 deg }, landing: { level: 7 in, gap: 1/4 in }";
    private const string OneBankB = "backstay: { length: 9 ft, angle: 45 deg, saddle: sliding }, landing: { level: 6 in, gap: 1/2 in }";
    private const string BanksUp = $"rise: 2 ft, a: {{ {OneBankA} }}, b: {{ {OneBankB} }}, "
        + "ground: [[0 ft, -1 ft], [6 ft, -6 ft], [22 ft, -5 ft], [30 ft, 1 ft]], water: -5 ft, freeboard: 6 in";

    // Seen from B: x from there, everything 2 ft lower.
    private const string BanksDown = $"rise: -2 ft, a: {{ {OneBankB} }}, b: {{ {OneBankA} }}, "
        + "ground: [[0 ft, -1 ft], [8 ft, -7 ft], [24 ft, -8 ft], [30 ft, -3 ft]], water: -7 ft, freeboard: 6 in";

    private const string CrowdUp = "loads: { snow: 30 psf, cases: [{ id: crowd, live: 70 psf, from: 0 ft, to: 11 ft }] }";
    private const string CrowdDown = "loads: { snow: 30 psf, cases: [{ id: crowd, live: 70 psf, from: 19 ft, to: 30 ft }] }";

    [Theory]
    [InlineData("rise: 4 ft", "rise: -4 ft", "", "")]
    [InlineData("rise: 3 ft", "rise: -3 ft", Plumb, Plumb)]
    [InlineData("rise: 4 ft", "rise: -4 ft", Plan, Plan)]
    [InlineData("rise: 5 ft", "rise: -5 ft", Treads, Treads)]
    [InlineData(BanksUp, BanksDown, CrowdUp, CrowdDown)]
    public void A_bridge_from_its_other_side(string site, string otherSite, string more, string otherMore)
    {
        var (one, other) = (Run(site, more), Run(otherSite, otherMore).ToDictionary(c => c.Id, StringComparer.Ordinal));
        Assert.Equal(one.Count, other.Count);
        var different = one.Select(c => (One: c, Other: other[Swapped(c.Id)])).Where(p => !AreAlike(p.One, p.Other)).Select(p =>
            $"{p.One.Id}: {p.One.Status} {p.One.Demand} / {p.One.Capacity}, {p.Other.Status} {p.Other.Demand} / {p.Other.Capacity}\n  "
                + $"{p.One.Detail}\n  {p.Other.Detail}");
        Assert.Equal("", string.Join('\n', different));
    }

    private static List<CheckResult> Run(string site, string more)
    {
        var text = From.Replace("SITE", site, StringComparison.Ordinal);
        return
        [
            .. AllChecks.Run(Contexts.Of(more.StartsWith("frames:\n", StringComparison.Ordinal)
                ? text.Replace("frames:\n", more, StringComparison.Ordinal)
                : text + more + "\n")),
        ];
    }

    private static string Swapped(string id) => id switch
    {
        _ when id.EndsWith("-a", StringComparison.Ordinal) => id[..^1] + "b",
        _ when id.EndsWith("-b", StringComparison.Ordinal) => id[..^1] + "a",
        _ => id,
    };

    private static bool AreAlike(CheckResult a, CheckResult b) => a.Status == b.Status && a.Id switch
    {
        // Parts are judged as cut: one piece for all that agree within the shop's tolerance, and the first from A founds it.
        "parts-bear" => Math.Abs(a.Demand - b.Demand) < 0.0005,
        _ => AreAlike(a.Demand, b.Demand, a.Unit) && AreAlike(a.Capacity ?? 0, b.Capacity ?? 0, a.Unit)
            && AreAlike(a.Ratio ?? 0, b.Ratio ?? 0, ""),
    };

    private static bool AreAlike(double a, double b, string unit) =>
        Math.Abs(a - b) <= Math.Max(unit is "m" ? AtJoint : 0, Alike * Math.Max(Math.Abs(a), Math.Abs(b)));
}
