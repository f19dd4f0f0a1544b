using System.Text;
using System.Text.RegularExpressions;
using BridgeForm.Cli.Text;
using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Kinds;
using BridgeForm.Output.Preview;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output;

/// <summary>
/// One word for one thing on paper, page and terminal: words that were given up do not come back in anything the demo prints.
/// Keys and ids keep theirs.
/// </summary>
public sealed partial class VocabularyTests
{
    private static readonly Lazy<BridgeModel> s_model = new(() => new Sample("alder-dell").Build());

    /// <summary>What is banned, and the word that took its place.</summary>
    public static TheoryData<string, string> Banned => new()
    {
        { @"\b[Pp]ackers?\b", "tapered shim" },
        { @"\b[Gg]alvanised\b", "galvanized" },
        { @"\b[Cc]entred?\b", "center" },
        { @"\b[Nn]eighbour", "neighbor" },
        { @"\b[Cc]olour", "color" },
        { @"\b[Mm]itres?\b", "miter" },
        { @"\b([Mm]illi|[Cc]enti)?[Mm]etres?\b|[Mm]illimetre", "meter" },
        { @"\b([Mm]ode|[Ll]eve|[Ll]abe)lled\b", "modeled, leveled, labeled" },
        { @"\b[Cc]atalogues?\b", "catalog" },
        { @"\b([Nn]ear|[Ff]ar) end of a (base|post|rail|cap|board)\b", "foot, head, left end, right end, A end, B end" },
        { @"\b[Rr]oom over (the )?(ground|highest water)", "clearance" },
        { @"\b[Tt]ilt of the deck", "cross slope" },
        { @"\bto look at\b|\blook at it again\b|\b[Aa] look\b", "review" },
        { @"\bover all \d", "overall" },
        { @"^Quantity$|^Number of p|^No\. off$", "Qty" },
        { "[Hh]orizontal pull|[Ll]argest pull", "horizontal tension, largest tension" },
    };

    [Theory]
    [MemberData(nameof(Banned))]
    public void Words_that_were_given_up_stay_away(string pattern, string instead)
    {
        var found = Texts.Where(t => Regex.IsMatch(t, pattern, RegexOptions.None, TimeSpan.FromSeconds(1)))
            .Distinct(StringComparer.Ordinal).ToList();
        Assert.True(found.Count == 0, $"{instead}: {string.Join(" | ", found.Take(5))}");
    }

    /// <summary>The words in their place are there: the search looks at something.</summary>
    [Theory]
    [InlineData("tapered shim")]
    [InlineData("galvanized")]
    [InlineData("review")]
    [InlineData("Qty")]
    [InlineData("overall ")]
    [InlineData("Largest tension")]
    [InlineData("miter")]
    [InlineData("Cross slope")]
    public void Words_in_their_place_are_found(string word) => Assert.Contains(Texts, t => t.Contains(word, StringComparison.Ordinal));

    private static List<string> Texts => s_texts.Value;

    private static readonly Lazy<List<string>> s_texts = new(() =>
    [
        .. Books().SelectMany(b => b.Pages).SelectMany(p => p.Content.Entities).OfType<SheetText>().Select(t => t.Text)
            .Concat(Tables()).Concat(Terminal()).Concat(s_model.Value.Checks.Select(PlainVerdict.Of)).Select(t => Ids().Replace(t, "")),
    ]);

    private static SheetBook[] Books()
    {
        var model = s_model.Value;
        var units = DisplayUnits.For(model.Parameters.Units);
        return
        [
            DrawingSheets.Draw(model), CalculationBook.Draw(model), SawSheet.Draw(model, units),
            LabelSheet.Draw(model, [.. model.Assembly().SelectMany(s => s.Parts)]), SurveySheet.Draw(model), ErectionSheet.Draw(model),
            UpkeepSheet.Draw(model), QuoteSheet.Draw(model),
        ];
    }

    /// <summary>Every field of every table but the headings, which programs read by name.</summary>
    private static IEnumerable<string> Tables()
    {
        var sink = new MemorySink();
        OutputKinds.Listing(() => []).Single(k => k.Word is "tables").Make(s_model.Value, sink);
        return sink.Files.Values.SelectMany(b => Encoding.UTF8.GetString(b).Split('\n').Skip(1)).SelectMany(l => l.Split(',', '"'))
            .Select(t => t.Trim());
    }

    private static string[] Terminal()
    {
        using var output = new StringWriter();
        CheckText.Write(output, s_model.Value, quiet: false);
        ShortText.Write(output, s_model.Value, "bridge.yaml");
        return output.ToString().ReplaceLineEndings("\n").Split('\n');
    }

    /// <summary>Ids of parts, keys of the project file, and joints named by their keys.</summary>
    [GeneratedRegex(@"[FB]\d+(-[FB]\d+)?/\S+|\bpacker: |Fasteners, \S+|\bpacker(;|$)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Ids();
}
