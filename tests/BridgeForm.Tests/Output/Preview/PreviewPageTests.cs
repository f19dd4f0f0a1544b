using BridgeForm.Tests.Samples;

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
        "speed", "speedLong", "picking", "keyboard", "standing", "measured", "takenApart", "accessible", "samplesIndex", "printed",
        "saved", "phone", "setting", "people", "joints",
        "headlines", "depths", "anotherBridge", "withoutWebgl",
    ];

    private static readonly string[] AskedOfEverySample =
    [
        "size", "quiet", "figuresOnLoad", "firstScreen", "notBlank", "sizesOfParts", "factsAreTheChecks", "takenApartWords", "loaded",
        "withoutScript",
    ];

    // The full scene takes software twenty seconds and more: one sample, or each where there are minutes (MINUTES=1).
    private static IEnumerable<string> FullScenes => Minutes.AreThere ? Sample.Names : ["wren-landing"];

    // A flat bridge, a metric one and a steep one, or each where there are minutes.
    private static IEnumerable<string> Looked => Minutes.AreThere ? Sample.Names : ["alder-dell", "fern-rise", "wren-landing"];

    public static TheoryData<string> Checks => [.. Asked];

    public static TheoryData<string, string> ChecksOfSamples
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var name in Looked)
            {
                Array.ForEach(AskedOfEverySample, check => data.Add(name, check));
            }

            foreach (var name in FullScenes)
            {
                data.Add(name, "fullScene");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void In_a_browser(string check) => Assert.Equal(string.Empty, page.Fault(check));

    [Theory]
    [MemberData(nameof(ChecksOfSamples))]
    public void Every_sample_in_a_browser(string name, string check) => Assert.Equal(string.Empty, page.Fault($"{name} {check}"));

    [Fact]
    public void Every_check_of_the_script_is_asked_for() =>
        Assert.Empty(
            page.Names.Except(
                [
                    .. Asked, .. Looked.SelectMany(n => AskedOfEverySample.Select(c => n + " " + c)),
                    .. FullScenes.Select(n => n + " fullScene"),
                ],
                StringComparer.Ordinal));

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
