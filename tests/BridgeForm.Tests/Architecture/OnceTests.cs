using System.Text.RegularExpressions;
using BridgeForm.Tests.Output.Preview;

namespace BridgeForm.Tests.Architecture;

/// <summary>What stands in one file of the program and in no other, read from its source.</summary>
public sealed partial class OnceTests
{
    private static readonly Lazy<Dictionary<string, string>> s_files = new(() => Read());

    /// <summary>Inch, foot and pound (international agreement of 1959) are numbers in Units alone.</summary>
    [Fact]
    public void Inch_foot_and_pound_are_defined_once() =>
        Assert.Equal(["src/BridgeForm/Quantities/Units.cs"], Having(@"(?<![\w.])0\.(0254|3048|45359237)(?!\d)"));

    /// <summary>
    /// Beside the one rule only what nobody reads is rounded: keys of loads and glyphs, places on a grid of paper, shades of
    /// colour, trial settings.
    /// </summary>
    [Fact]
    public void Numbers_are_rounded_by_one_rule() => Assert.Equal(
        [
            "src/BridgeForm.Output/Drawing/View.cs", "src/BridgeForm.Output/Pdf/PdfDrawing.cs", "src/BridgeForm/Loads/NodeLoads.cs",
            "src/BridgeForm/Quantities/Rounding.cs", "src/BridgeForm/Trials/LeastSetting.cs",
        ],
        Having(@"Math\.Round\("));

    private static IEnumerable<string> Having(string pattern) =>
        s_files.Value.Where(f => Regex.IsMatch(f.Value, pattern, RegexOptions.None, TimeSpan.FromSeconds(10))).Select(f => f.Key).Order(
            StringComparer.Ordinal);

    /// <summary>Text of each source file without its comments, by its path in the repository.</summary>
    private static Dictionary<string, string> Read()
    {
        var source = Path.Combine(Tool.Repository, "src");
        return Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin" or "node_modules"))
            .ToDictionary(
                f => Path.GetRelativePath(Tool.Repository, f).Replace('\\', '/'), f => Comments().Replace(File.ReadAllText(f), ""),
                StringComparer.Ordinal);
    }

    [GeneratedRegex("//.*", RegexOptions.None, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Comments();
}
