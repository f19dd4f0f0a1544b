using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Codes;

/// <summary>What is asked of a landing's sill or ledger, which others make.</summary>
internal static class LandingBearers
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "landing-bearer",
        "Sill or ledger of a landing",
        "Only with site.a/b.landing.bearer: what the project asks of it where it is wood: a sill lies on the ground and must be treated "
            + "for contact with it; bolts and screws hot-dip galvanized or stainless; treated wood clear of galvanized rope. Only stated.",
        "IRC R317.1.2: wood in contact with the ground treated for it; IRC R317.3: fasteners in treated wood (both from memory); common "
            + "practice, no source: copper-based preservatives corrode zinc",
        [CheckStatus.Engineer]);

    /// <summary>None without one.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var site = context.Parameters.Site;
        if (site.A.LandingBearer is null && site.B.LandingBearer is null)
        {
            yield break;
        }

        var galvanized = context.Parameters.Ropes.Rope.Galvanized;
        yield return Outcome.ForEngineer(
            Declared, (site.A.LandingBearer is null ? 0 : 1) + (site.B.LandingBearer is null ? 0 : 1), "count", Declared.Source,
            string.Join("; ", new[] { ("A", site.A), ("B", site.B) }.Select(e => At(e.Item1, e.Item2)).OfType<string>())
                + "; by others, of no weight on the ropes"
                + (galvanized ? "; if it is treated with copper, keep the galvanized ropes clear of it: the slot that they pass is lined"
                    : ""))
            .On([
                .. site.A.LandingBearer is null ? [] : context.InFrame(0, Role.Base),
                .. site.B.LandingBearer is null ? [] : context.InFrame(context.Layout.Bays, Role.Base),
            ]);
    }

    private static string? At(string end, SupportParameters support) => support.LandingBearer switch
    {
        LandingBearer.Sill => $"at {end} a sill on the ground: masonry, or wood treated for contact with the ground",
        LandingBearer.Ledger => $"at {end} a ledger: what it is bolted to carries the landing; flash its upper edge, "
            + "galvanized or stainless bolts",
        _ => null,
    };
}
