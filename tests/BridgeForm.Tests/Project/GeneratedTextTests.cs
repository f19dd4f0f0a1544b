using System.Text.Json;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Project;

/// <summary>What is made from the definition of the keys: starter file, schema, reference page.</summary>
public sealed class GeneratedTextTests
{
    private const string Update = "BRIDGEFORM_UPDATE";

    [Theory]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    public void The_starter_file_says_the_defaults_and_what_it_says_beyond_them(UnitSystem units)
    {
        var starter = Read(Starter.Text(units));
        var metric = units == UnitSystem.Metric;
        var brace = metric ? "{ section: 95 x 95 mm, lean: 22 deg, foot: 875 mm }" : "{ section: 4x4, foot: 33-1/2 in }";
        var landing = metric ? "{ level: 226 mm, gap: 6 mm }" : "{ level: 7-3/8 in, gap: 1/4 in }";
        var bare = Read(FormattableString.Invariant($$"""
            name: {{starter.Name}}
            units: {{units.ToString().ToLowerInvariant()}}
            site: { span: {{(metric ? "9 m" : "30 ft")}}, a: { landing: {{landing}} }, b: { landing: {{landing}} } }
            deck: { grip: grit }
            treatment: { fasteners: hot-dip-galvanized }
            frames: { brace: {{brace}} }

            """) + "joints:" + Starter.Text(units).Split("\njoints:")[1].Split("\ntreatment:")[0] + "\n");
        Assert.Equal(3, bare.Frames.Joints.Length);
        Assert.Equal(JsonSerializer.Serialize(bare), JsonSerializer.Serialize(starter));
        Assert.NotEmpty(starter.Chosen);
    }

    [Theory]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    public void Every_line_that_the_starter_file_leaves_out_can_be_put_in(UnitSystem units)
    {
        var lines = Starter.Text(units).Split('\n');
        foreach (
            var i in Enumerable.Range(0, lines.Length).Where(
                i => System.Text.RegularExpressions.Regex.IsMatch(
                    lines[i], "^ *# [a-z_]+: ", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1))))
        {
            var text = (string[])lines.Clone();
            text[i] = text[i].Replace("# ", "", StringComparison.Ordinal) is var l && l.IndexOf(
                "  ", l.Length - l.TrimStart().Length, StringComparison.Ordinal) is var end and > 0 ? l[..end] : l;
            var faults = ProjectReader.Read(string.Join('\n', text), "starter.yaml", Bridges.Catalogue).Faults;
            Assert.True(
                faults.All(f => f.Message.Contains("exclude each other", StringComparison.Ordinal)),
                text[i] + " → " + string.Join('\n', faults));
        }
    }

    // Every key of the example, live or left out, with a comment.
    [Fact]
    public void The_starter_file_shows_every_key_of_the_contracts_example()
    {
        var starter = Starter.Text(UnitSystem.Imperial);
        var example = string.Join('\n', Examples.Contract.Split('\n').Select(line => line.Split('#')[0]));
        var keys = System.Text.RegularExpressions.Regex.Matches(
            example, "(?<key>[a-z_]+):", System.Text.RegularExpressions.RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1))
            .Select(m => m.Groups["key"].Value);
        Assert.All(keys, key => Assert.Contains(key + ":", starter, StringComparison.Ordinal));
        Assert.StartsWith("# yaml-language-server: $schema=project-file.schema.json\n", starter, StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_is_json_and_closed()
    {
        using var schema = JsonDocument.Parse(ProjectSchema.Json());
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.RootElement.GetProperty("$schema").GetString());
        Assert.False(schema.RootElement.GetProperty("additionalProperties").GetBoolean());
        var post = schema.RootElement.GetProperty("properties").GetProperty("frames").GetProperty("properties").GetProperty("post");
        Assert.Equal("#/$defs/angle", post.GetProperty("properties").GetProperty("lean").GetProperty("$ref").GetString());
    }

    [Fact]
    public void The_committed_schema_is_what_the_program_writes() =>
        Committed("project-file.schema.json", ProjectSchema.Json());

    [Fact]
    public void The_committed_reference_page_is_what_the_program_writes() =>
        Committed("project-file.md", ProjectReference.Markdown());

    private static BridgeParameters Read(string text)
    {
        var reading = ProjectReader.Read(text, "starter.yaml", Bridges.Catalogue);
        Assert.Empty(reading.Lines);
        return reading.Parameters!;
    }

    // With BRIDGEFORM_UPDATE=1 in the environment the file is written anew instead.
    private static void Committed(string name, string text)
    {
        var path = Path.Combine(Root(), "docs", name);
        if (string.Equals(Environment.GetEnvironmentVariable(Update), "1", StringComparison.Ordinal))
        {
            File.WriteAllText(path, text);
        }

        Assert.True(File.Exists(path), $"{path} is missing; run the tests once with {Update}=1");
        Assert.Equal(text, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "BridgeForm.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests must run inside the repository.");
    }
}
