using System.Globalization;
using System.Text.RegularExpressions;

namespace BridgeForm.Tests.Samples;

/// <summary>A preview page taken apart: the model in it, its numbers with a decimal point, and all the rest.</summary>
internal sealed partial class PageText
{
    private const string ModelStart = "id=\"model\">";

    public PageText(string page)
    {
        var from = page.IndexOf(ModelStart, StringComparison.Ordinal) + ModelStart.Length;
        var to = page.IndexOf('<', from);
        Model = page[from..to];
        var view = page[..from];
        Numbers = [.. Decimal().Matches(view).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
        Words = Decimal().Replace(view, "#") + page[to..];
    }

    public string Model { get; }

    public double[] Numbers { get; }

    public string Words { get; }

    [GeneratedRegex(@"-?[0-9]+\.[0-9]+(?:[eE][-+]?[0-9]+)?", RegexOptions.CultureInvariant, 2000)]
    private static partial Regex Decimal();
}
