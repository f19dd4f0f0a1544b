using BridgeForm.Benchmarks.Fuzz;

namespace BridgeForm.Tests.Fuzz;

/// <summary>A few of the random bridges that the benchmarks build by the thousand (docs/fuzz.md), always the same ones.</summary>
public sealed class ModelFuzzTests
{
    private const int MostBays = 4;

    private static int Written => Minutes.Cases(15, 100);

    [Fact]
    public void Random_bridges_have_closed_solids_and_finite_numbers_in_every_file()
    {
        var cases = Enumerable.Range(1, Written).AsParallel().AsOrdered()
            .Select(seed => (Seed: seed, Case: ModelCase.Of(RandomProject.Of(seed, MostBays), written: true)))
            .ToList();
        Assert.Empty(cases.SelectMany(c => c.Case.Findings.Select(f => $"seed {c.Seed}: {f}")));

        // Most of them are bridges, and a bridge that cannot be built is told with the keys it hangs on.
        Assert.True(cases.Count(c => c.Case.Fault is null) > Written / 2);
        Assert.All(cases.Where(c => c.Case.Fault is { Kind: BridgeFaultKind.DoesNotFit }), c => Assert.NotEmpty(c.Case.Fault!.Misfits));
    }

    [Fact]
    public void A_seed_stands_for_one_file() => Assert.Equal(RandomProject.Of(7, MostBays), RandomProject.Of(7, MostBays));
}
