using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Project.Definition;

namespace BridgeForm.Tests.Project;

/// <summary>Under every key stands, in turn, everything that does not belong there.</summary>
public sealed class WrongKindTests
{
    private static readonly ImmutableArray<(string What, string Text, KeyShape? Fits)> Nodes =
    [
        ("nothing", "", null),
        ("null", "~", KeyShape.Value),
        ("a number", "2", KeyShape.Value),
        ("a text", "\"x y\"", KeyShape.Value),
        ("an empty text", "\"\"", KeyShape.Value),
        ("a list", "[1, 2]", KeyShape.List),
        ("an empty list", "[]", KeyShape.List),
        ("a list of lists", "[[1, [2]], { a: 1 }]", KeyShape.List),
        ("a mapping", "{ a: 1 }", KeyShape.Map),
        ("an empty mapping", "{}", KeyShape.Map),
        ("a mapping of mappings", "{ a: { b: [1] }, c: ~ }", KeyShape.Map),
        ("an anchor", "&a 2", null),
        ("an anchored mapping", "&a { b: 1 }", null),
        ("an alias", "*a", null),
        ("a tag", "!!int 2", null),
        ("a tagged list", "!x [1]", null),
        ("a tagged mapping", "!!map { a: 1 }", null),
    ];

    /// <summary>Every key by its way from the root; entries of lists and names of mappings stand in it as well.</summary>
    public static TheoryData<string> Ways => [.. All(ProjectKeys.Root, []).Select(k => string.Join('/', k.Way))];

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_node_of_the_wrong_kind_is_a_fault_with_its_place(string way)
    {
        var (steps, spec) = All(ProjectKeys.Root, []).Single(k => string.Join('/', k.Way) == way);
        foreach (var (what, text, fits) in Nodes)
        {
            var (file, line) = FileWith(steps, text);
            var reading = Examples.Read(file);
            Assert.True((reading.Parameters is null) == (reading.Faults.Length > 0), $"{way}: {what}");
            Assert.All(reading.Faults, f => Assert.True(f.Line >= 1 && f.Column >= 1 && f.Message.Length > 0));
            if (!Takes(spec, fits))
            {
                Assert.True(
                    reading.Faults.Any(f => f.Line == line),
                    $"{way}: {what}: no fault in line {line} of\n{file}\n{string.Join('\n', reading.Lines)}");
            }
        }
    }

    [Fact]
    public void Every_key_is_looked_at() => Assert.InRange(Ways.Count, 150, 1000);

    [Theory]
    [InlineData("post_foot", "did you mean post-foot?")]
    [InlineData("keepers", "did you mean keeper?")]
    [InlineData("spire", "known are keeper, post-foot, ")]
    public void An_unknown_joint_is_a_fault_with_the_nearest_name(string joint, string says)
    {
        var fault = Assert.Single(Examples.Read($"name: a\nsite: {{ span: 30 ft }}\nfasteners: {{ cap: 1, {joint}: 4 }}\n").Faults);
        Assert.Equal((3, 22), (fault.Line, fault.Column));
        Assert.StartsWith($"'{joint}' is not a name under fasteners; {says}", fault.Message, StringComparison.Ordinal);
    }

    private static bool Takes(KeySpec spec, KeyShape? node) => node is { } shape
        && (spec.Shape == shape || (shape == KeyShape.Map && (spec.Shape == KeyShape.Named || spec.Type == ValueForm.Rope)));

    private static IEnumerable<(ImmutableArray<string> Way, KeySpec Spec)> All(KeySpec spec, ImmutableArray<string> way)
    {
        IEnumerable<(string Step, KeySpec Spec)> under = spec.Shape switch
        {
            KeyShape.Named => [(spec.Choices.FirstOrDefault("own"), spec.Item!)],
            KeyShape.List => [("-", spec.Item!)],
            _ => spec.Keys.Select(k => (k.Name, k)),
        };
        foreach (var (step, below) in under)
        {
            yield return (way.Add(step), below);
            foreach (var deeper in All(below, way.Add(step)))
            {
                yield return deeper;
            }
        }
    }

    /// <summary>A file that is otherwise right, a line for each step, and the line on which the node stands.</summary>
    private static (string Text, int Line) FileWith(ImmutableArray<string> steps, string node)
    {
        List<string> lines = [
            .. steps is ["name"] ? Array.Empty<string>() : ["name: a"],
            .. steps[0] is "site" ? Array.Empty<string>() : ["site: { span: 30 ft }"],
        ];
        for (var i = 0; i < steps.Length; i++)
        {
            var step = steps[i] is "-" ? "-" : steps[i] + ":";
            lines.Add(new string(' ', 2 * i) + step + (i == steps.Length - 1 ? " " + node : ""));
        }

        return (string.Join('\n', lines) + "\n", lines.Count);
    }
}
