using BridgeForm.Benchmarks.Fuzz;

namespace BridgeForm.Tests.Pipe;

/// <summary>What a rebuild keeps is what a fresh build would have made: same bytes after every change.</summary>
public sealed class ReuseTests
{
    private const int Changes = 200;

    [Fact]
    public void Random_changes_give_the_bytes_of_a_fresh_build()
    {
        var rebuild = new Rebuild();
        var (built, kept) = (0, 0);
        foreach (var (key, parameters) in RandomChanges.Of(seed: 1).Take(Changes))
        {
            var isBuilt = rebuild.TryWhole(parameters, CancellationToken.None, out var model, out var fault);
            kept += Enum.GetValues<Stage>().Length - rebuild.Anew.Length;
            Assert.Equal(Bridge.TryBuild(parameters, out var fresh, out var freshFault), isBuilt);
            Assert.Equal(freshFault?.Message, fault?.Message);
            if (isBuilt)
            {
                built++;
                Assert.True(
                    Files.Of(fresh!) == Files.Of(model!),
                    $"{key} changed, and {string.Join(", ", rebuild.Anew)} alone was worked out anew");
            }
        }

        Assert.True(built > Changes / 2, $"{built} bridges built: they prove little");
        Assert.True(kept > Changes, $"{kept} stages kept: they prove little");
    }
}
