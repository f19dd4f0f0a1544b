using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

public sealed class SurveyTests
{
    private const double Foot = 0.3048;
    private const double Inch = 0.0254;

    // A textbook's example of differential levelling, as a public course page prints it: rod of 8.42 ft on a point at 820.00 ft,
    // line of sight at 828.42 ft, rod of 1.20 ft on the next, which lies at 827.22 ft.
    [Fact]
    public void A_worked_example_of_levelling()
    {
        var site = Site("out: [[0 ft, 8.42 ft], [30 ft, 1.20 ft]]");
        Assert.Equal((827.22 - 820.00) * Foot, site.Rise, 1e-4);
        Assert.Equal(30 * Foot, site.Span, 1e-4);
        Assert.Empty(site.Ground);
    }

    // Points of the ground lie as far below the rope's point at A as their rods read more.
    [Fact]
    public void Rods_on_the_ground_become_its_line()
    {
        var site = Site("out: [[2 ft, 5 ft], [7 ft, 9.5 ft], [20 ft, 12 ft], [32 ft, 4 ft]], back: [4.5 ft, 5.51 ft], tape: 30.02 ft");
        Assert.Equal(
            [(Near(5 * Foot), Near(-4.5 * Foot)), (Near(18 * Foot), Near(-7 * Foot))], site.Ground.Select(p => (Near(p.X), Near(p.Y))));
        Assert.Equal(1.005 * Foot, site.Rise, 1e-4);
        Assert.Equal(0.01 * Foot, site.Survey!.Misclosure!.Value, 1e-9);

        static double Near(double metres) => Math.Round(metres, 9);
    }

    // What was measured is told where it was used, with what the two ways differ by.
    [Fact]
    public void The_misclosure_is_told()
    {
        var read = Reading("out: [[0 ft, 5 ft], [30 ft, 4 ft]], back: [4.5 ft, 5.52 ft], tape: 30 ft 1/4 in");
        var rise = read.Parameters!.Chosen.Single(c => c.Path is "site.rise");
        Assert.Contains("misclosure 1/4 in", rise.Rule, StringComparison.Ordinal);
        Assert.Contains("by the tape", read.Parameters.Chosen.Single(c => c.Path is "site.span").Rule, StringComparison.Ordinal);
    }

    // Each broken on purpose, told with both values: the rise both ways, the span by tape and by distances, the file's own span.
    [Theory]
    [InlineData("out: [[0 ft, 5 ft], [30 ft, 4 ft]], back: [4.5 ft, 5.6 ft]", "1 ft 0 in", "1 ft 1-3/16 in")]
    [InlineData("out: [[0 ft, 5 ft], [30 ft, 4 ft]], tape: 31 ft", "30 ft 11-13/16 in", "30 ft 0 in")]
    [InlineData("out: [[0 ft, 5 ft], [30 ft, 4 ft]] }, span: 31 ft, rise: { ", "31 ft", "30 ft 0 in")]
    public void Readings_that_contradict_each_other_are_told_with_both_values(string survey, string one, string other)
    {
        var text = $"name: a\nsite: {{ survey: {{ {survey} }} }}\n".Replace(", rise: {  }", "", StringComparison.Ordinal);
        var fault = Assert.Single(ProjectReader.Read(text, "a.yaml", Bridges.Catalogue).Faults);
        Assert.Contains(one, fault.Message, StringComparison.Ordinal);
        Assert.Contains(other, fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("out: [[0 ft, 5 ft], [30 ft, 4 ft]], back: [4.5 ft, 5.53 ft]")]
    [InlineData("out: [[0 ft, 5 ft], [30 ft, 4 ft]], tape: 30.1 ft")]
    public void Small_differences_are_no_fault(string survey) => Assert.Empty(Reading(survey).Faults);

    // Neither span nor survey: the span is missing, as ever; a survey that cannot be read is one fault and not two.
    [Theory]
    [InlineData("name: a\nsite: { rise: 1 ft }\n", "site.span")]
    [InlineData("name: a\nsite: { survey: { out: [[0 ft, 5 ft]] } }\n", "entries")]
    [InlineData("name: a\nsite: { survey: { tape: 30 ft } }\n", "site.survey.out")]
    [InlineData("name: a\nsite: { survey: { out: [[0 ft, 5 ft], [2 ft, 5 ft]] } }\n", "survey: ")]
    public void What_is_missing_is_told_once(string text, string word)
    {
        var fault = Assert.Single(ProjectReader.Read(text, "a.yaml", Bridges.Catalogue).Faults);
        Assert.Contains(word, fault.Message, StringComparison.Ordinal);
    }

    // Span and rise by a survey make the bridge that the same numbers make.
    [Fact]
    public void A_surveyed_bridge_is_the_bridge_of_its_span_and_rise()
    {
        var one = Reading("out: [[0 ft, 6 ft], [30 ft, 5 ft]]").Parameters!;
        var other = ProjectReader.Read("name: a\nsite: { span: 30 ft, rise: 1 ft }\n", "a.yaml", Bridges.Catalogue).Parameters!;
        Assert.Equal(other.Site.Span, one.Site.Span, 1e-9);
        Assert.Equal(other.Ropes.Spacing, one.Ropes.Spacing, 1e-9);
        Assert.Equal(other.Ropes.Rope.Name, one.Ropes.Rope.Name);
        Assert.Equal(1.0 * 12 * Inch, one.Site.Rise, 1e-9);
    }

    private static SiteParameters Site(string survey)
    {
        var reading = Reading(survey);
        Assert.Empty(reading.Faults);
        return reading.Parameters!.Site;
    }

    private static ProjectReading Reading(string survey) =>
        ProjectReader.Read($"name: a\nsite: {{ survey: {{ {survey} }} }}\n", "a.yaml", Bridges.Catalogue);
}
