using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Codes;

/// <summary>Which wood counts as in use where fasteners are looked at.</summary>
public sealed class TreatedWoodTests
{
    // Everything of untreated wood but the packers of the end frames, which are cut from the file's treated stock.
    private const string OnlyPackers = """
        name: Packers alone are treated (invented)
        site: { span: 30 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 46 in, sag: 6 % }
        frames:
          base: { section: 3x6, length: 58 in, stock: cedar }
          post: { section: 3x4, length: 40 in, lean: 8 deg, foot: 18-1/4 in, stock: cedar }
          brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in, stock: cedar }
        deck: { board: { section: 2x6, stock: cedar } }
        """;

    [Fact]
    public void Packers_count_as_wood_in_use()
    {
        var context = Contexts.Of(OnlyPackers);
        Assert.Contains(true, context.Layout.Steps.Packers);
        var check = Contexts.Check(context, "fasteners-in-treated-wood");
        Assert.Equal(CheckStatus.Warn, check.Status);
        Assert.Contains("in treated", check.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_packers_or_treated_parts_there_is_none()
    {
        var text = OnlyPackers + "\nstock:\n  cedar: { species: western-red-cedar, grade: no2, lengths: [8 ft, 10 ft] }\n";
        var check = Contexts.Check(text, "fasteners-in-treated-wood");
        Assert.Equal(CheckStatus.Pass, check.Status);
    }
}
