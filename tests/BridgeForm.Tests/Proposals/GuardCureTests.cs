using BridgeForm.Checks;
using BridgeForm.Proposals;
using BridgeForm.Tests.Frames;

namespace BridgeForm.Tests.Proposals;

/// <summary>Parts of the guard that fail alone: what is proposed is written out, read anew and passes.</summary>
public sealed class GuardCureTests
{
    private const string Cap = "cap: { section: 2x6 } }";

    public static TheoryData<string, string, string> Broken => new()
    {
        { "guard-at-landing", With("newels: { gap: 5 in }"), "guard.newels.gap" },
        { "guard-at-landing", With("newels: { gap: 3-3/4 in, lean: 0 deg }"), "guard.newels.lean" },
        { "newel-height", With("newels: { height: 30 in }"), "guard.newels.height" },
        { "newel-bending", With("newels: { section: 2x4 }"), "guard.newels.section" },
        { "guard-openings", Netted("opening: 4 in"), "guard.net.opening" },
        { "guard-openings", Netted("opening: 2 in, bottom: 5 in"), "guard.net.bottom" },
        { "guard-openings", Picketed, "guard.pickets.gap" },
        { "parts-bear", LandingPartsTests.Bent, "guard.shims" },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_guard_that_fails_is_cured_by_its_own_key(string check, string text, string key)
    {
        Assert.Contains(SearchTests.Model(text).Checks, c => c.Status == CheckStatus.Fail && c.Id == check);
        var way = SearchTests.Propose(text, new SearchAsk { Free = [key] }).Proposals[0];
        Assert.All(way.Changes, c => Assert.Equal(key, c.Path));
        Assert.Empty(
            SearchTests.Model(ProposalFile.Written(text, way)).Checks.Where(c => c.Status == CheckStatus.Fail).Select(c => c.Id));
    }

    private const string Rails = "rails: { section: 5/4x6, count: 4, stock: treated }";

    private static string Picketed => SearchTests.Sound.Replace(
        Rails, "rails: { section: 2x4 }, pickets: { gap: 5 in }", StringComparison.Ordinal);

    private static string Netted(string net) => SearchTests.Sound.Replace(
        Rails, $"rails: {{ section: 2x4 }}, net: {{ {net}, mass: 0.1 lb/ft2 }}", StringComparison.Ordinal);

    private static string With(string part) =>
        SearchTests.Sound.Replace(Cap, $"cap: {{ section: 2x6 }}, {part} }}", StringComparison.Ordinal);
}
