using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Tables;

/// <summary>
/// <c>keepers.csv</c>: what every frame's keeper must hold along one rope, the more heavily loaded one, in every load case;
/// friction not counted.
/// </summary>
public static class KeeperTable
{
    private static readonly string[] Head =
    [
        "Case", "Frame", "Slope (deg)", "Load of the frame", "Load of the frame (N)", "Load x sine of slope", "Load x sine of slope (N)",
        "Difference of tensions", "Difference of tensions (N)", "Keeper must hold", "Keeper must hold (N)", "Worst case of this frame",
    ];

    /// <summary>The table as text, case by case, frames from A to B. Tensions: B side less A side.</summary>
    public static string Csv(BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        ImmutableArray<string> names = [.. model.Frames.Select(f => f.Name)];
        var worst = model.Ropework.Keepers.ToDictionary(k => k.Frame, k => k.Case, StringComparer.Ordinal);
        return CsvText.Of(Head, model.Cases.SelectMany(c => KeeperForce.In(c, names)).Select(k => Row(k, worst, words)));
    }

    private static IReadOnlyList<string> Row(KeeperForce force, IReadOnlyDictionary<string, string> worst, QuantityText words) =>
    [
        CsvText.Users(force.Case),
        force.Frame,
        Numbers.Fixed(Numbers.Degrees(force.Slope), 2),
        .. Both(force.Load, words),
        .. Both(force.LoadAlong, words),
        .. Both(force.TensionDifference, words),
        .. Both(force.Needed, words),
        string.Equals(worst[force.Frame], force.Case, StringComparison.Ordinal) ? "yes" : string.Empty,
    ];

    private static IReadOnlyList<string> Both(double newtons, QuantityText words) =>
        [words.Force(newtons), Numbers.Fixed(newtons, 1)];
}
