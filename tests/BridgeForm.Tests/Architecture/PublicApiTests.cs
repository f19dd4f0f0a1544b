using BridgeForm.Output.Drawing;
using BridgeForm.Tests.Output.Preview;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Architecture;

/// <summary>What is public changes only when somebody means it: the list is committed, and made anew with BRIDGEFORM_UPDATE=1.</summary>
public sealed class PublicApiTests
{
    [Fact]
    public void The_list_is_the_program()
    {
        var path = Path.Combine(Tool.Repository, "tests", "BridgeForm.Tests", "Architecture", "public-api.txt");
        var api = PublicApi.Of(typeof(Bridge).Assembly.Location, typeof(Sheet).Assembly.Location);
        if (Sample.Updating)
        {
            File.WriteAllText(path, api);
        }

        Assert.Equal(File.ReadAllText(path), api);
    }

    /// <summary>Types, properties, methods and their arguments are in it; what is internal is not.</summary>
    [Fact]
    public void The_list_has_what_others_call_and_nothing_else()
    {
        var api = PublicApi.Of(typeof(Bridge).Assembly.Location);
        Assert.Contains(
            "class BridgeForm.Bridge\n  Boolean TryBuild(BridgeParameters, BridgeModel&, BridgeFault&)\n", api, StringComparison.Ordinal);
        Assert.Contains("  ImmutableArray<Piece> Pieces { get; set; }\n", api, StringComparison.Ordinal);
        Assert.DoesNotContain("FormFinding", api, StringComparison.Ordinal);
        Assert.DoesNotContain("<Clone>$", api, StringComparison.Ordinal);
    }
}
