using System.Text;
using System.Text.RegularExpressions;

namespace BridgeForm.Tests.Output.StepSolids;

/// <summary>A text of ISO 10303-21 taken apart as far as tests need it: lines of the data section by number.</summary>
internal sealed partial class Part21Reader
{
    public Part21Reader(byte[] bytes)
    {
        Text = Encoding.Latin1.GetString(bytes);
        Entities = Line().Matches(Text).ToDictionary(m => int.Parse(m.Groups["number"].Value), m => m.Groups["text"].Value);
    }

    public string Text { get; }

    /// <summary>What stands behind the equals sign, by number.</summary>
    public Dictionary<int, string> Entities { get; }

    /// <summary>Entities of one type.</summary>
    public List<string> Of(string type) => [.. Entities.Values.Where(e => e.StartsWith(type + "(", StringComparison.Ordinal))];

    /// <summary>Numbers that an entity refers to.</summary>
    public static IEnumerable<int> Uses(string entity) =>
        Reference().Matches(Quoted().Replace(entity, "")).Select(m => int.Parse(m.Groups["number"].Value));

    /// <summary>Texts of an entity, as they stand between their quotes.</summary>
    public static List<string> Texts(string entity) => [.. Quoted().Matches(entity).Select(m => m.Value[1..^1])];

    [GeneratedRegex("^#(?<number>[0-9]+)=(?<text>.*);$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Line();

    [GeneratedRegex("#(?<number>[0-9]+)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Reference();

    [GeneratedRegex("'(?:[^']|'')*'", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Quoted();
}
