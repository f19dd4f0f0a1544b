namespace BridgeForm.Tests.Project;

/// <summary>What is said about a hole that cannot be drilled is true, and what is advised works.</summary>
public sealed class HoleChecksTests
{
    /// <summary>The top face of a 2x4 brace is 1-1/2 in wide: a hole of 3/8 in leaves 3/4 - 3/16 = 9/16 in to either side.</summary>
    [Fact]
    public void A_hole_at_the_bound_is_refused_and_the_advice_excludes_the_bound()
    {
        var fault = Assert.Single(Faults("across: 9/16 in, diameter: 3/8 in"));
        Assert.EndsWith("1-1/2 in wide; write less than 9/16 in to either side of its middle", fault, StringComparison.Ordinal);
        Assert.Empty(Faults("across: 0.5624 in, diameter: 3/8 in"));
        Assert.Empty(Faults("across: -0.5624 in, diameter: 3/8 in"));
    }

    /// <summary>No place across the face helps a hole as wide as the face; "at most 0 in" would be refused again.</summary>
    [Theory]
    [InlineData("diameter: 1-1/2 in")]
    [InlineData("diameter: 2 in")]
    [InlineData("diameter: 2 in, across: 1 in")]
    public void A_hole_as_wide_as_its_face_is_told_by_its_diameter(string keys)
    {
        var fault = Assert.Single(Faults(keys));
        Assert.Contains("leaves no wood beside it in the brace, 1-1/2 in there", fault, StringComparison.Ordinal);
    }

    /// <summary>1.45 in leaves 0.025 in, less than can be measured.</summary>
    [Fact]
    public void A_hole_nearly_as_wide_as_its_face_stays_in_the_middle()
    {
        Assert.EndsWith(
            "leave across out, or drill less", Assert.Single(Faults("across: 1/4 in, diameter: 1.45 in")), StringComparison.Ordinal);
        Assert.Empty(Faults("diameter: 1.45 in"));
    }

    /// <summary>A brace that stands inside the post has no length, and no hole in it can be right.</summary>
    [Fact]
    public void A_brace_that_cannot_be_is_one_fault_and_its_holes_are_none()
    {
        var fault = Assert.Single(Faults("diameter: 1/4 in", braceFoot: "10 in"));
        Assert.DoesNotContain("hole", fault, StringComparison.Ordinal);
    }

    private static List<string> Faults(string hole, string braceFoot = "28-1/4 in") =>
        [.. Examples.Read($$"""
            name: Holes (invented)
            units: imperial
            site: { span: 30 ft }
            ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 46 in, sag: 6 % }
            frames:
              spacing: 3 ft
              base: { section: 3x6, length: 58 in }
              post: { section: 3x4, length: 40 in, lean: 8 deg, foot: 18-1/4 in }
              brace: { section: 2x4, lean: 12.5 deg, foot: {{braceFoot}} }
            deck: { board: { section: 2x6 }, count: auto }
            holes: { brace: [{ face: top, from_end: 5 in, {{hole}} }] }
            """).Faults.Select(f => f.Message)];
}
