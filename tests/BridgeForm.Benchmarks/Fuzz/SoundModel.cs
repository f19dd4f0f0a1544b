using BridgeForm.Checks;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>What must hold of every model.</summary>
internal static class SoundModel
{
    /// <summary>Open solids, checks without finite numbers, and checks that hold without any.</summary>
    public static IEnumerable<string> Faults(BridgeModel model)
    {
        foreach (var piece in model.Pieces)
        {
            foreach (var fault in piece.Solid.Audit())
            {
                yield return $"solid of {piece.Mark} ({piece.Occurrences[0].Id}): {fault}";
            }
        }

        foreach (var check in model.Checks)
        {
            if (!double.IsFinite(check.Demand) || !double.IsFinite(check.Capacity ?? 0) || !double.IsFinite(check.Ratio ?? 0))
            {
                yield return $"check {check.Id}: {check.Demand:r} against {check.Capacity:r}, ratio {check.Ratio:r}";
            }

            if (check is { Status: CheckStatus.Pass, Ratio: > 1 + 1e-9 })
            {
                yield return $"check {check.Id} holds at {check.Ratio:r}";
            }
        }
    }
}
