using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Codes;

/// <summary>What only the builder can promise: grit on the deck, metal of fasteners. It holds where the file says it, not else.</summary>
public sealed class SaidByTheFileTests
{
    [Theory]
    [InlineData("", CheckStatus.Warn, "(deck.grip: grit)")]
    [InlineData("deck: { grip: none }", CheckStatus.Warn, "(deck.grip: grit)")]
    [InlineData("deck: { grip: grit }", CheckStatus.Pass, "renew it where it is worn")]
    public void Grit_holds_where_the_file_says_it(string key, CheckStatus status, string says)
    {
        var check = Check(key, "deck-grip");
        Assert.Equal((status, true), (check.Status, check.Detail.Contains(says, StringComparison.Ordinal)));
    }

    /// <summary>A deck that is not steep asks for no grit, whatever the file says: 2 % of sag slopes 1 : 13 at most.</summary>
    [Fact]
    public void A_level_deck_holds_without() => Assert.Contains(
        "not steeper than 1 : 8", Check("deck: { grip: grit }\nropes: { sag: 2 % }", "deck-grip").Detail, StringComparison.Ordinal);

    [Theory]
    [InlineData("", CheckStatus.Warn, "treatment.fasteners says which")]
    [InlineData("treatment: { coats: 2 }", CheckStatus.Warn, "treatment.fasteners says which")]
    [InlineData("treatment: { fasteners: hot-dip-galvanized }", CheckStatus.Pass, "hot-dip galvanized in treated, as the file says")]
    [InlineData("treatment: { fasteners: stainless }", CheckStatus.Pass, "stainless in treated, as the file says")]
    public void Fasteners_hold_where_the_file_says_their_metal(string key, CheckStatus status, string says)
    {
        var check = Check(key, "fasteners-in-treated-wood");
        Assert.Equal((status, true), (check.Status, check.Detail.Contains(says, StringComparison.Ordinal)));
    }

    /// <summary>Who says the metal of fasteners has said nothing of preservative.</summary>
    [Theory]
    [InlineData("treatment: { fasteners: stainless }", false)]
    [InlineData("treatment: { fasteners: stainless, coats: 3 }", true)]
    [InlineData("treatment: { coverage: 90 ft2/gal }", true)]
    public void Fasteners_alone_are_no_preservative(string key, bool given) => Assert.Equal(given, Read(key).Treatment is not null);

    private static BridgeForm.Project.BridgeParameters Read(string key) => Bridges.Read("name: Said\nsite: { span: 30 ft }\n" + key + "\n");

    private static CheckResult Check(string key, string id) => Bridges.Build(Read(key)).Checks.Single(c => c.Id == id);
}
