using BridgeForm.Frames;

namespace BridgeForm.Checks.Timber;

/// <summary>Distances between posts that caps and rails span.</summary>
internal static class CapSpans
{
    /// <summary>Longest cap from head to head, metres, and its bay.</summary>
    public static (double Length, string Where) Longest(BridgeLayout layout)
    {
        var bay = Enumerable.Range(1, layout.Bays).MaxBy(i => Length(layout, i));
        return (Length(layout, bay), FramePoses.BayName(bay, layout.Bays));
    }

    private static double Length(BridgeLayout layout, int bay) => (layout.Caps.Points[bay] - layout.Caps.Points[bay - 1]).Length;
}
