using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Architecture;

/// <summary>Source reads without scrolling sideways: two files side by side, or one and its diff.</summary>
public sealed class LineLengthTests
{
    private const int Longest = 140;

    private static readonly string[] s_folders = ["src", "tests"];

    [Fact]
    public void No_line_of_source_is_longer_than_the_limit() =>
        Assert.Empty(s_folders.SelectMany(folder => Sources(Path.Combine(Sample.Root, folder))).SelectMany(TooLong));

    /// <summary>Texts that stand in raw strings as they are read elsewhere are as long as they are.</summary>
    [Theory]
    [InlineData(Longest, 0, false)]
    [InlineData(Longest + 1, 1, false)]
    [InlineData(Longest + 1, 0, true)]
    public void A_line_too_long_is_found_unless_it_stands_in_a_raw_string(int length, int found, bool raw)
    {
        var quotes = new string('"', 3);
        string[] lines = raw ? ["var text = " + quotes, new('x', length), quotes + ";"] : [new('x', length)];
        Assert.Equal(found, Numbers(lines).Count());
    }

    private static IEnumerable<string> Sources(string folder) =>
        Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj" or "node_modules" or "artifacts"))
            .Order(StringComparer.Ordinal);

    private static IEnumerable<string> TooLong(string path) =>
        Numbers(File.ReadAllLines(path)).Select(number => $"{Path.GetRelativePath(Sample.Root, path)}:{number}");

    private static IEnumerable<int> Numbers(string[] lines)
    {
        var inside = false;
        for (var i = 0; i < lines.Length; i++)
        {
            var began = inside;
            inside ^= (lines[i].Split(new string('"', 3)).Length - 1) % 2 == 1;
            if (lines[i].Length > Longest && !began)
            {
                yield return i + 1;
            }
        }
    }
}
