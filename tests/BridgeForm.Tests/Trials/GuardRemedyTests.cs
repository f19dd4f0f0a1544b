using BridgeForm.Checks;
using BridgeForm.Tests.Checks;

namespace BridgeForm.Tests.Trials;

/// <summary>What is told of parts that a check asks for holds when it is written.</summary>
public sealed class GuardRemedyTests
{
    private const string Steep = "name: Steep (invented)\nsite: { span: 20 ft }\nropes: { sag: 7 % }\n";

    [Theory]
    [InlineData(Steep, "deck-grip", "deck.grip grit", "deck: { grip: grit }\n")]
    [InlineData(
        Steep + "deck: { grip: cleats, cleats: { spacing: 24 in } }\n", "deck-grip", "deck.cleats.spacing 16 in",
        "deck: { grip: cleats, cleats: { spacing: 16 in } }\n")]
    [InlineData(Steep + "guard: { rails: { count: 3 } }\n", "guard-openings", "guard.rails.count ", "guard: { rails: { count: # } }\n")]
    [InlineData(
        "use: public\n" + Steep + "guard: { rails: { heights: [6 in, 12 in, 18 in, 24 in] } }\n", "handrail-height",
        "guard.handrail.height 36 in",
        "guard: { rails: { heights: [6 in, 12 in, 18 in, 24 in] }, handrail: { height: 36 in, diameter: 1-1/2 in } }\n")]
    public void Told_and_written_it_holds(string text, string check, string told, string more)
    {
        var model = Bridges.Build(text);
        Assert.NotEqual(CheckStatus.Pass, model.Checks.Single(c => c.Id == check).Status);
        var remedy = model.Remedies.First(r => r.CheckId == check);
        Assert.StartsWith(told, remedy.Write, StringComparison.Ordinal);
        var head = text.Split("deck:")[0].Split("guard:")[0];
        var written = more.Replace("#", remedy.Write[told.Length..], StringComparison.Ordinal);
        Assert.Equal(CheckStatus.Pass, Contexts.Check(head + written, check).Status);
    }
}
