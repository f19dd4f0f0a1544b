using BridgeForm.Ropes;

namespace BridgeForm.Checks.Ropes;

/// <summary>Room over the ground, in every load case and after the rope's constructional stretch.</summary>
internal static class GroundClearance
{
    /// <summary>Fails where the bridge touches the ground; nothing when no ground is given.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context) => LeastRoom.Of(
        context, "ground-clearance", "Room over the ground",
        "geometry; how much room floods, animals and people need is for the site", c => c.OverGround, s => s.OverGround);
}

/// <summary>Room over the highest water, in every load case and after the rope's constructional stretch.</summary>
internal static class WaterClearance
{
    /// <summary>Fails where the water reaches the bridge; nothing when no water is given.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context) => LeastRoom.Of(
        context, "water-clearance", "Room over the highest water",
        "geometry; freeboard for drift and floods is for the site and its code", c => c.OverWater, s => s.OverWater);
}

/// <summary>The least room of all cases and of both ends of the stretch.</summary>
internal static class LeastRoom
{
    /// <summary>One result, or none when nothing is given to stay clear of.</summary>
    public static IEnumerable<CheckResult> Of(
        CheckContext context,
        string id,
        string title,
        string source,
        Func<LoadCaseResult, double?> ofCase,
        Func<StretchEnd, double?> ofStretch)
    {
        var words = context.People();
        var rooms = context.Cases.Select(c => (Room: ofCase(c), Where: $"case {c.Id}"))
            .Concat(context.Ropework.Stretch.Select(s => (
                Room: ofStretch(s), Where: $"empty bridge after {CheckWords.Share(s.Share)} of stretch, nothing taken up")))
            .Where(r => r.Room is not null)
            .ToArray();
        if (rooms.Length == 0)
            yield break;
        var worst = rooms.MinBy(r => r.Room);
        var room = worst.Room!.Value;
        yield return new CheckResult(
            id, title, room > 0 ? CheckStatus.Pass : CheckStatus.Fail, room, 0, "m", null, source,
            $"{words.Length(room)} under the lowest part in {worst.Where}; more than none is needed");
    }
}
