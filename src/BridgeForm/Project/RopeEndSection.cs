using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;

namespace BridgeForm.Project;

/// <summary>The turnbuckles at the ropes' ends, all alike.</summary>
/// <param name="Pitch">Of the thread of each end fitting, metres; null: by the table, for the size that the pull asks for.</param>
/// <param name="TakeUp">What one takes in from open to closed, metres; null: the shortest on sale that reaches.</param>
/// <param name="Closed">From pin to pin, closed, metres; null: by the table.</param>
public sealed record TurnbuckleParameters(double? Pitch, double? TakeUp, double? Closed);

/// <summary>Keys under <c>ropes.ends</c>, and how they are read.</summary>
internal static class RopeEndSection
{
    public static KeySpec Keys => Define.Map(
        "ends",
        "What hangs between the ropes' eyes and their anchors, alike at all four ends",
        [
            Define.Map(
                "turnbuckle",
                "The turnbuckles",
                [
                    Define.Length("pitch", "From thread to thread of one end fitting", "1/64 in", "1 in") with
                    {
                        DefaultNote = "coarse thread (UNC) of the size that the pull asks for",
                        Example = "1/10 in",
                        MetricExample = "2.5 mm",
                    },
                    Define.Length("take_up", "What one turnbuckle takes in from open to closed", "1 in", "6 ft") with
                    {
                        DefaultNote = "6, 12, 18 or 24 in, the least that reaches",
                        Example = "12 in",
                        MetricExample = "300 mm",
                    },
                    Define.Length("closed", "From pin to pin of one turnbuckle, closed", "1 in", "10 ft") with
                    {
                        DefaultNote = "by the table, an estimate: measure yours",
                        Example = "17-1/8 in",
                        MetricExample = "435 mm",
                    },
                ]),
            Define.Map(
                "shackle",
                "The shackles between turnbuckles and anchors",
                [
                    Define.Length("length", "Inside length, from the bow to the pin", "1/4 in", "2 ft") with
                    {
                        DefaultNote = "by the table, for the size that the pull asks for",
                        Example = "2-13/16 in",
                        MetricExample = "71 mm",
                    },
                ]),
        ]);

    public static TurnbuckleParameters ReadTurnbuckle(FileValues v) =>
        new(
            v.NumberOrNull("ropes.ends.turnbuckle.pitch"), v.NumberOrNull("ropes.ends.turnbuckle.take_up"),
            v.NumberOrNull("ropes.ends.turnbuckle.closed"));
}
