using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Ropes;

namespace BridgeForm.Tests.Frames;

/// <summary>Treads and packers come by whole numbers: weights jump with them, and a shape is found all the same.</summary>
public sealed class DeckStepsTests
{
    // The rooms of a bay's treads move by this much at most when one tread more or less hangs on a bridge of these sizes.
    private const double OneTreadMoves = 1e-4;

    /// <summary>Input that once failed: a tread more in a bay left no room for it, a tread less left room for one more.</summary>
    [Theory]
    [InlineData("site: { span: 69.1 ft }", "sag: 14.9 %", "square")]
    [InlineData("site: { span: 82.1 ft, rise: 8.21 ft }", "sag: 14.9 %", "square")]
    [InlineData("site: { span: 41.8 ft, rise: 4.18 ft }", "sag: 11.5 %", "plumb")]
    [InlineData("site: { span: 105.5 ft, rise: 10.55 ft }", "sag: 14.9 %", "plumb")]
    public void Treads_and_packers_that_flip_are_held_and_everything_agrees(string site, string sag, string stance)
    {
        var parameters = Bridges.Read(Across(site, sag, stance));
        Assert.True(Bridge.TryShape(parameters, out var rope, out var fault), fault?.Message);
        var layout = BridgeLayout.Lay(parameters, rope);
        Assert.Equal(rope.Steps.ToArray(), layout.Steps.Counted.ToArray());
        Agree(layout, rope);
        // A test that could not fail would be one on bridges whose numbers do not flip.
        Assert.NotEqual(rope.Steps.ToArray(), BridgeLayout.Lay(parameters, rope.Nodes).Steps.Counted.ToArray());
    }

    [Fact]
    public void The_whole_model_is_made_with_the_numbers_of_its_ropes()
    {
        var model = Bridges.Build(Across("site: { span: 69.1 ft }", "sag: 14.9 %", "square"));
        Assert.Equal(
            model.Rope.Steps.Take(model.Frames.Length - 1),
            model.Groups.Skip(model.Frames.Length).Select(g => g.MemberIds.Count(id => id.Contains("/tread-", StringComparison.Ordinal))));
        Assert.Equal(
            model.Rope.Steps.Skip(model.Frames.Length - 1),
            model.Groups.Take(model.Frames.Length).Select(
                g => g.MemberIds.Any(id => id.EndsWith("/packer", StringComparison.Ordinal)) ? 0 : 1));
    }

    /// <summary>Files that were once refused with "no solution".</summary>
    [Theory]
    [InlineData("site: { span: 60 ft }", "sag: 8 %", "frames: { base: { section: 4x6 } }")]
    [InlineData(
        "site: { span: 42 ft, rise: 1 ft, temperatures: [0 F, 60 F, 110 F] }",
        "type: rope-6x19-iwrc-eips-galvanized-7/8, spacing: 46 in, sag: 6 ft",
        "frames: { base: { section: 4x6, length: 58 in }, post: { foot: 18-1/4 in }, brace: { foot: 28-1/4 in } }")]
    public void Files_that_were_refused_have_a_shape(string site, string ropes, string frames)
    {
        var parameters = Bridges.Read($"name: s\n{site}\nropes: {{ {ropes} }}\n{frames}\ndeck: {{ layout: across }}\n");
        Assert.True(Bridge.TryShape(parameters, out var rope, out var fault), fault?.Message);
        Agree(BridgeLayout.Lay(parameters, rope), rope);
    }

    [Fact]
    public void Every_span_and_sag_has_a_shape()
    {
        foreach (
            var (span, percent) in from span in Enumerable.Range(0, 25)
                                   from sag in Enumerable
                .Range(0, 5)
                                   select (8 + (5.7 * span), 3 + (2.9 * sag)))
        {
            foreach (var stance in (string[])["square", "plumb"])
            {
                var site = FormattableString.Invariant($"site: {{ span: {span:0.0} ft }}");
                var parameters = Bridges.Read(Across(site, FormattableString.Invariant($"sag: {percent:0.0} %"), stance));
                Assert.True(Bridge.TryShape(parameters, out var rope, out var fault), $"{site} {percent} {stance}: {fault?.Message}");
                Agree(BridgeLayout.Lay(parameters, rope), rope);
            }
        }
    }

    private static void Agree(BridgeLayout layout, RopeShape rope)
    {
        var loads = BridgeMasses.Weigh(layout).NodeLoads();
        Assert.All(loads.Zip(rope.Loads), p => Assert.InRange(Math.Abs(p.First - p.Second), 0, 1e-9 * rope.TotalLoad()));
        var (deck, own) = (layout.Parameters.Deck, BridgeLayout.Lay(layout.Parameters, rope.Nodes));
        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            Assert.InRange(DeckTreads.Gap(layout, bay, deck.Stringer!), deck.Gap - OneTreadMoves, double.MaxValue);
            Assert.InRange(own.Steps.Treads[bay - 1] - layout.Steps.Treads[bay - 1], 0, 1);
            // Where one tread fewer was laid, the one more would have had a hair's breadth to spare.
            if (own.Steps.Treads[bay - 1] > layout.Steps.Treads[bay - 1])
            {
                Assert.InRange(DeckTreads.Gap(own, bay, deck.Stringer!) - deck.Gap, 0, OneTreadMoves);
            }
        }
    }

    private static string Across(string site, string sag, string stance) => $$"""
        name: Treads across (invented)
        {{site}}
        ropes: { {{sag}} }
        frames: { stance: {{stance}}, base: { section: 4x6 }, channel: { depth: 1 in, end_depth: 1-1/2 in } }
        deck: { layout: across }
        """;
}
