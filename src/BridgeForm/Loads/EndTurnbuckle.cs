using BridgeForm.Project;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Loads;

/// <summary>The turnbuckle at each end of each rope.</summary>
/// <param name="Size">Size in inches, as people write it; null where none of the set carries the pull.</param>
/// <param name="Thread">Of its end fittings; null where neither the file nor the table gives one.</param>
/// <param name="TakeUp">From open to closed, metres; null where none on sale reaches and the file names none.</param>
public sealed record EndTurnbuckle(RatedFitting? Size, TurnbuckleThread? Thread, double? TakeUp)
{
    /// <summary>The file's, else the smallest that carries the largest pull with the shortest take-up that reaches.</summary>
    public static EndTurnbuckle Of(BridgeParameters parameters, RopeWork work)
    {
        var own = parameters.Ropes.Turnbuckle;
        var size = FittingSet.Turnbuckles.Smallest(work.LargestPull);
        return new EndTurnbuckle(
            size,
            own.Pitch is { } pitch ? new TurnbuckleThread(pitch, "the project file")
                : size is null ? null
                : TurnbuckleThread.CoarseOf(size.Size),
            own.TakeUp ?? (work.Cut?.TakeUp is { } needed ? FittingSet.TakeUpOfEach(needed) : null));
    }
}
