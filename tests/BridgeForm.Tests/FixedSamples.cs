using CsCheck;

namespace BridgeForm.Tests;

/// <summary>
/// Samples of a generator that are the same in every run: for statements about a heuristic or a tolerance, which hold for
/// what was tried and are no theorem. Theorems keep free seeds.
/// </summary>
internal static class FixedSamples
{
    public static void OnFixed<T>(this Gen<T> gen, int count, Action<T> judge)
    {
        for (var i = 0; i < count; i++)
        {
            judge(gen.Generate(new PCG(1, (ulong)(20_261 + i)), null, out _));
        }
    }
}
