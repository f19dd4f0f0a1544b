namespace BridgeForm.Tests.Output.Preview;

/// <summary>Alone on the machine, because times are measured.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class AloneGroup
{
    public const string Name = "Alone on the machine";
}

/// <summary>Chromium opens the page from a file and sees what a person would; axe-core looks for what shuts people out.</summary>
[Trait("Category", "Referee")]
[Collection(AloneGroup.Name)]
public sealed class PreviewPageTests(PreviewPage page) : IClassFixture<PreviewPage>
{
    private static readonly string[] Asked =
    [
        "size", "quiet", "speed", "speedLong", "figuresOnLoad", "notBlank", "picking", "sizesOfParts", "keyboard", "standing",
        "measured", "factsAreTheChecks", "takenApart", "takenApartWords", "loaded", "accessible", "printed", "anotherBridge", "withoutWebgl", "withoutScript",
    ];

    public static TheoryData<string> Checks => [.. Asked];

    [Theory]
    [MemberData(nameof(Checks))]
    public void In_a_browser(string check) => Assert.Equal(string.Empty, page.Fault(check));

    [Fact]
    public void Every_check_of_the_script_is_asked_for() =>
        Assert.Empty(page.Names.Except(Asked, StringComparer.Ordinal));

    /// <summary>Builds the bundle anew from its TypeScript and compares it, byte by byte, with the one that is embedded.</summary>
    [Fact]
    public void The_committed_bundle_is_what_its_source_builds()
    {
        var source = Path.Combine(Tool.Repository, "src", "BridgeForm.Preview");
        Assert.True(
            Directory.Exists(Path.Combine(source, "node_modules")),
            "The page's build is not installed: run `npm ci` in src/BridgeForm.Preview.");
        Tool.Run("node", source, [Path.Combine(source, "build.mjs"), "--check"]);
        Tool.Run("node", source, [Path.Combine(source, "node_modules", "typescript", "bin", "tsc"), "--noEmit"]);
    }
}
