namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>guard</c>.</summary>
internal static class GuardReader
{
    public static GuardParameters Read(FileValues v) => new()
    {
        Rail = v.Section("guard.rails.section"),
        RailStock = v.Text("guard.rails.stock"),
        RailCount = v.NumberOrNull("guard.rails.count") is { } count ? (int)count : v.Names("guard.rails.heights").Count,
        RailHeights = [.. v.Items("guard.rails.heights").Select(v.Number)],
        Cap = v.Section("guard.cap.section"),
        CapStock = v.Text("guard.cap.stock"),
    };
}
