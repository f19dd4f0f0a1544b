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

    private static string With(string part) => SearchTests.Sound.Replace(Cap, $"cap: {{ section: 2x6 }}, {part} }}", StringComparison.Ordinal);
}
