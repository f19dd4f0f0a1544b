using System.Text.RegularExpressions;
using BridgeForm.Output.Kinds;
using BridgeForm.Tests.Output.Referees;

namespace BridgeForm.Tests.Output.ShopSheets;

/// <summary>What is printed for site, owner and customer, as an outside reader of PDF finds it, in both units.</summary>
public sealed partial class CrewSheetTests
{
    [Theory]
    [InlineData(Bridges.Garden, true)]
    [InlineData(Bridges.Inclined, false)]
    [Trait("Category", "Referee")]
    public void An_outside_reader_finds_every_sheet_with_its_caution(string project, bool isImperial)
    {
        var model = Bridges.Build(project);
        var files = new MemorySink();
        foreach (var kind in OutputKinds.Listing(() => []).Where(k => k.Word is "crew" or "quote"))
        {
            kind.Make(model, files);
        }

        foreach (var name in (string[])["survey.pdf", "erection.pdf", "upkeep.pdf", "quote.pdf"])
        {
            Referee.OnFile(files.Files[name], name, path =>
            {
                var text = Referee.Poppler("pdftotext", "-layout", path, "-");
                Assert.Contains(model.Parameters.Name, text, StringComparison.Ordinal);
                Assert.Contains("Geometry, quantities and check values", text, StringComparison.Ordinal);
                if (!isImperial)
                {
                    Assert.DoesNotMatch(Feet(), text);
                    if (name is "survey.pdf")
                    {
                        // Only the bar that shows whether the printer scaled is of 4 in.
                        Assert.DoesNotMatch(Inch(), text.Replace("4 in", "", StringComparison.Ordinal));
                    }
                }
                else if (name is "erection.pdf")
                {
                    Assert.Matches(Feet(), text);
                }
            });
        }
    }

    [GeneratedRegex(@"\d ft\b", RegexOptions.None, 5000)]
    private static partial Regex Feet();

    [GeneratedRegex(@"\d in\b", RegexOptions.None, 5000)]
    private static partial Regex Inch();
}
