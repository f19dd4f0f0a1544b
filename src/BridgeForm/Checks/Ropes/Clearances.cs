using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Checks.Ropes;

/// <summary>Room over the ground, in every load case, as marked and after the rope's constructional stretch.</summary>
internal static class GroundClearance
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "ground-clearance",
        "Clearance over the ground",
        "Least clearance over site.ground under both ropes, all the way from one end base's inner face to the other's, and under the "
            + "ends of interior bases, which tilt: lower than the lower rope by overhang × sin θ. In all load cases as marked, hot and "
            + "with live load where it brings the bridge nearest to the ground among them, and with the rope stretched for good in those "
            + "that can hang lowest or tilt most; end bases stand on their landings, and the ground may rise to these. Only where "
            + "site.ground is given; to review where it does not reach under all of that.",
        "geometry; how much is enough is for the site",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>Fails where the bridge touches the ground; nothing when no ground is given.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var (words, ground) = (context.Words(), context.Parameters.Site.Ground);
        if (ground.IsEmpty)
        {
            yield break;
        }

        var (from, to) = (DeckEnd.Beyond(context.Parameters), context.Parameters.Site.Span - DeckEnd.Beyond(context.Parameters));
        var given = ground.Length == 1 ? $"site.ground is given at {words.Length(ground[0].X)} alone"
            : $"site.ground is given from {words.Length(ground[0].X)} to {words.Length(ground[^1].X)}";
        var isWhole = Clearance.IsWhole(context.Parameters.Site, from);
        var missing = isWhole ? "" : $"; {given}: not looked at elsewhere, from {words.Length(from)} to {words.Length(to)} is needed";
        if (LeastRoom.Find(context, c => c.OverGround, s => s.OverGround) is not { } least)
        {
            yield return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Warn, 0, null, "m", null, Declared.Source, $"{given}: nothing was looked at");
            yield break;
        }

        double Level(double x) => x >= Math.Max(from, ground[0].X) && x <= Math.Min(to, ground[^1].X)
            ? Clearance.Height(ground, x)
            : double.NegativeInfinity;
        var holds = isWhole ? CheckStatus.Pass : CheckStatus.Warn;
        var frame = LeastRoom.Beside(context, least.Case, Level);
        yield return new CheckResult(
            Declared.Id, Declared.Title, least.Room > 0 ? holds : CheckStatus.Fail, least.Room, 0, "m", null,
            "geometry; how much room floods, animals and people need is for the site",
            $"{LeastRoom.Words(words, least.Room)} between the end bases{LeastRoom.Near(frame)} in {least.Where}; more than none is "
                + $"needed{missing}")
            .OnBase(context, frame);
    }
}

/// <summary>Room over the highest water, in every load case, as marked and after the rope's constructional stretch.</summary>
internal static class WaterClearance
{
    private const string Source = "geometry; freeboard for drift and floods is for the site and its code";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "water-clearance",
        "Clearance over the highest water",
        "Least clearance over site.water under both ropes and the ends of interior bases, which tilt: lower than the lower rope by "
            + "overhang × sin θ. In all load cases as marked, and with the rope stretched for good in those that can hang lowest or tilt "
            + "most, "
            + "against site.freeboard; for an engineer where no freeboard is given. Only where site.water is given.",
        "geometry; freeboard is for the site and its code",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>
    /// Fails where there is less than the freeboard; without one, fails where the water reaches the bridge and is else for an
    /// engineer. Nothing when no water is given.
    /// </summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (LeastRoom.Find(context, c => c.OverWater, s => s.OverWater) is not { } least)
        {
            yield break;
        }

        var words = context.Words();
        var frame = LeastRoom.Beside(context, least.Case, _ => context.Parameters.Site.Water!.Value);
        var text = $"{LeastRoom.Words(words, least.Room)}{LeastRoom.Near(frame)} in {least.Where}";
        if (context.Parameters.Site.Freeboard is { } freeboard)
        {
            yield return Outcome.AtLeast(
                Declared, least.Room, freeboard, "m", Source, $"{text}; freeboard of the project file {words.Length(freeboard)}")
                .OnBase(context, frame);
        }
        else
        {
            yield return new CheckResult(
                Declared.Id, Declared.Title, least.Room > 0 ? CheckStatus.Engineer : CheckStatus.Fail, least.Room, null, "m", null, Source,
                $"{text}; how much room drift and floods need is for the site: write site.freeboard")
                .OnBase(context, frame);
        }
    }
}

/// <summary>The least room of all cases, as marked and at both ends of the stretch.</summary>
internal static class LeastRoom
{
    /// <summary>So much room, or so far in.</summary>
    public static string Words(CheckWords words, double room) => room < 0
        ? $"lowest part {words.Length(-room)} too low"
        : $"{words.Length(room)} under the lowest part";

    /// <summary>Where along the bridge, by the nearest frame; empty where that is not known.</summary>
    public static string Near(string frame) => frame.Length > 0 ? $", nearest {frame}," : "";

    /// <summary>Metres, id of the case, and where in words; null when nothing is given to stay clear of.</summary>
    public static (double Room, string Case, string Where)? Find(
        CheckContext context, Func<LoadCaseResult, double?> ofCase, Func<StretchEnd, RoomInCase?> ofStretch)
    {
        var (marked, grown) = (RoomInCase.Least(context.Cases, ofCase), RoomInCase.Least(context.Ropework.Grown, ofCase));
        (double Room, string Case, string Where)[] rooms =
        [
            .. marked is { } m ? [(m.Room, m.Case, $"case {m.Case}")] : Array.Empty<(double, string, string)>(),
            .. context.Ropework.Stretch.Where(s => ofStretch(s) is not null).Select(s => (
                ofStretch(s)!.Room, ofStretch(s)!.Case,
                $"case {ofStretch(s)!.Case} after {CheckWords.Share(s.Share)} of stretch, nothing taken up")),
            .. grown is { } g ? [(g.Room, g.Case, Grown(context, g.Case))] : Array.Empty<(double, string, string)>(),
        ];
        return rooms.Length == 0 ? null : Ties.FirstLeast(rooms, r => r.Room);
    }

    /// <summary>
    /// The frame next to the place with least room in a case as marked (stretched rope is lower by about as much all along): of the
    /// ends of the interior bases and of both ropes between the end bases.
    /// </summary>
    /// <param name="context">The bridge.</param>
    /// <param name="id">Of the case.</param>
    /// <param name="level">Of ground or water at a world x, metres; minus infinity where neither is looked at.</param>
    public static string Beside(CheckContext context, string id, Func<double, double> level)
    {
        if (context.Cases.FirstOrDefault(c => string.Equals(c.Id, id, StringComparison.Ordinal)) is not { Shape: { } one } of)
        {
            return "";
        }

        var (other, under, site) = (of.Lighter ?? one, Underside.Of(context.Parameters), context.Parameters.Site);
        var skipped = DeckEnd.Beyond(context.Parameters);
        var places = one.Curve(SamplesPerBay).Select(p => p.X).Concat(site.Ground.Select(g => g.X))
            .Append(skipped).Append(site.Span - skipped)
            .Where(x => x >= 0 && x <= site.Span)
            .Select(x => new RopePoint(x, Math.Min(one.HeightAt(x), other.HeightAt(x)) - under.Radius))
            .Concat(under.LowerEnds(one, other).SelectMany(e => (RopePoint[])[e.A, e.B]));
        var lowest = Ties.FirstLeast(places, p => p.Y - level(p.X));
        return context.Frames[
            Ties.FirstLeast(Enumerable.Range(0, one.Nodes.Length), i => Math.Abs(one.Nodes[i].X - lowest.X))].Name;
    }

    // A bay's own sag is a millimetre or two.
    private const int SamplesPerBay = 4;

    private static string Grown(CheckContext context, string id) =>
        $"case {id}, hottest, after {CheckWords.Share(StretchRange.Most(context.Parameters.Ropes))} of stretch, nothing taken up";
}
