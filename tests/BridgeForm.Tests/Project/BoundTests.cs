using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Project;

/// <summary>Every bound that a message or the reference page tells can be written into a file of those units.</summary>
public sealed class BoundTests
{
    public static TheoryData<string> Systems => ["Imperial", "Metric"];

    [Theory]
    [MemberData(nameof(Systems))]
    public void Bounds_told_are_accepted(string name)
    {
        var units = Enum.Parse<UnitSystem>(name);
        var asked = 0;
        foreach (var spec in Below(ProjectKeys.Root).Where(s => s.Type == ValueForm.Quantity && s.Least is not null))
        {
            var words = AllowedRange.InWords(spec, units);
            foreach (var bound in words.Split(" to "))
            {
                var result = ValueReader.Read(spec, bound, units);
                Assert.True(result.Problem is null, $"{spec.Name}: {words}: {result.Problem}");
                asked++;
            }
        }

        Assert.True(asked > 100, $"{asked} bounds");
    }

    // In the units of the file: no millimetres where people write inches, no feet where they write metres.
    [Theory]
    [MemberData(nameof(Systems))]
    public void Bounds_are_told_in_the_units_of_the_file(string name)
    {
        var units = Enum.Parse<UnitSystem>(name);
        string[] other =
            units == UnitSystem.Imperial ? ["mm", "m", "kN", "kPa", "kg", "C"] : ["in", "ft", "lbf", "psf", "psi", "ksi", "lb", "F"];
        Assert.All(
            Below(ProjectKeys.Root).Where(s => s.Type == ValueForm.Quantity && s.Least is not null),
            s => Assert.All(AllowedRange.InWords(s, units).Split(" to "), b => Assert.DoesNotContain(b.Split(' ')[^1], other)));
    }

    [Theory]
    [InlineData("channel: { depth: 1.588 mm }", null)]
    [InlineData("channel: { depth: 1.587 mm }", "allowed is 1.59 mm to 609 mm")]
    [InlineData("post: { length: 3.658 m }", "allowed is 153 mm to 3.65 m")]
    public void A_metric_file_is_told_what_it_may_write(string frames, string? says)
    {
        var reading = ProjectReader.Read(
            $"name: Bounds (invented)\nunits: metric\nsite: {{ span: 6 m }}\nframes: {{ {frames} }}\n", "test.yaml", Bridges.Catalogue);
        var ranges = reading.Faults.Where(f => f.Message.Contains("out of range", StringComparison.Ordinal)).ToList();
        if (says is null)
        {
            Assert.Empty(ranges);
        }
        else
        {
            Assert.Contains(says, Assert.Single(ranges).Message, StringComparison.Ordinal);
        }
    }

    // 30 ft: a third is exactly 10 ft, 30 % are 9 ft. 10 m: 3333.33 mm.
    [Theory]
    [InlineData("site: { span: 30 ft, rise: 11 ft }", "at most 10 ft 0 in up or down")]
    [InlineData("units: metric\nsite: { span: 10 m, rise: 4 m }", "at most 3333.3 mm up or down")]
    [InlineData("site: { span: 31 ft, rise: -11 ft }", "at most 10 ft 4 in up or down")]
    [InlineData("site: { span: 30 ft }\nropes: { sag: 10 ft }", "30 % of the span, here 3/16 in to 9 ft 0 in")]
    public void Computed_bounds_are_rounded_inward(string file, string says)
    {
        var reading = ProjectReader.Read("name: Bounds (invented)\n" + file + "\n", "test.yaml", Bridges.Catalogue);
        Assert.Contains(reading.Faults, f => f.Message.Contains(says, StringComparison.Ordinal));
    }

    private static IEnumerable<KeySpec> Below(KeySpec spec) =>
        spec.Keys.SelectMany(Below).Concat(spec.Item is { } item ? Below(item) : []).Prepend(spec);
}
