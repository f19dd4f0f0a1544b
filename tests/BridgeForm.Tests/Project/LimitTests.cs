using BridgeForm.Project.Files;
using BridgeForm.Project.Reading;

namespace BridgeForm.Tests.Project;

/// <summary>Limits of the builder's own may only be stricter than the program's: roll factor 2, tilt 8° (public 5°), slope 1 : 2.</summary>
public sealed class LimitTests
{
    [Fact]
    public void Left_out_they_are_none()
    {
        var limits = Bridges.Read(Bridges.Garden).Limits;
        Assert.Equal((null, null, null), (limits.Roll, limits.CrossSlope, limits.Slope));
    }

    [Fact]
    public void Stricter_ones_are_read()
    {
        var limits = Bridges.Read(Bridges.Garden + "\nlimits: { roll: 2.5, cross_slope: 4 deg, slope: 25 % }\n").Limits;
        Assert.Equal(2.5, limits.Roll!.Value, 1e-12);
        Assert.Equal(4 * Math.PI / 180, limits.CrossSlope!.Value, 1e-12);
        Assert.Equal(0.25, limits.Slope!.Value, 1e-12);
    }

    [Theory]
    [InlineData("private", "roll: 2")]
    [InlineData("private", "cross_slope: 8 deg")]
    [InlineData("public", "cross_slope: 5 deg")]
    [InlineData("private", "slope: 50 %")]
    public void The_programs_own_may_be_written(string use, string limit) => Assert.Empty(Faults(use, limit));

    [Theory]
    [InlineData("private", "roll: 1.99")]
    [InlineData("private", "cross_slope: 8.1 deg")]
    [InlineData("public", "cross_slope: 5.1 deg")]
    [InlineData("private", "slope: 51 %")]
    public void Looser_ones_are_a_fault_with_its_place(string use, string limit)
    {
        var fault = Assert.Single(Faults(use, limit));
        Assert.Equal(12, fault.Line);
        Assert.Contains(limit.Split(':')[0], fault.Message, StringComparison.Ordinal);
    }

    private static ProjectFault[] Faults(string use, string limit) =>
    [
        .. ProjectReader.Read(
            Bridges.Garden.Replace("use: private", "use: " + use, StringComparison.Ordinal) + $"\nlimits: {{ {limit} }}\n",
            "test.yaml",
            Bridges.Catalogue).Faults,
    ];
}
