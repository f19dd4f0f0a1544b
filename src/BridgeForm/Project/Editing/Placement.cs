namespace BridgeForm.Project.Editing;

/// <summary>Puts a value where its key is, or its key where it belongs.</summary>
internal static class Placement
{
    private const int UsualStep = 2;

    /// <summary>The text with the value in it, or null with a problem.</summary>
    public static string? Put(string text, NewEntry entry, out string? problem)
    {
        var (root, way) = (SpotReader.Read(text), entry.Way);
        var trail = Trail.Follow(root, way.Names);
        var depth = trail.Depth;
        if (depth == way.Names.Length || trail.Last is ScalarSpot)
        {
            // A single value in the place of a mapping that the key needs gives way to it.
            return entry.Below(depth, trail.IsFlow(depth - 1), out problem) is { } value
                ? TextChange.Apply(text, InPlaceOf(text, trail, value))
                : null;
        }

        return trail.Last switch
        {
            MapSpot map when Crowded(map, way, depth) is { } excluded => Exchanged(text, trail, entry, excluded, out problem),
            MapSpot map when trail.IsFlow(depth) => InBraces(text, map, entry, depth, out problem),
            MapSpot map => InBlock(text, root, map, entry, depth, out problem),
            ListSpot list => Appended(text, trail, list, entry, out problem),
            _ => throw new InvalidOperationException("A single value has nothing under it."),
        };
    }

    /// <summary>Whether a key can stand where one stands that it excludes: it is missing, and the other's value is on its line.</summary>
    public static bool CanTakePlace(string text, KeyWay way, int depth, string excluded)
    {
        var root = SpotReader.Read(text);
        return Trail.Follow(root, way.Names.Take(depth + 1)).Depth == depth
            && Trail.Follow(root, excluded.Split('.')).Last is ScalarSpot or MapSpot { Flow: true } or ListSpot { Flow: true };
    }

    /// <summary>Paths of single values that stand where the way needs a mapping.</summary>
    public static IEnumerable<string> Scalars(string text, KeyWay way)
    {
        var trail = Trail.Follow(SpotReader.Read(text), way.Names);
        return trail.Last is ScalarSpot ? [way.Path(trail.Depth)] : [];
    }

    private static SpotEntry? Crowded(MapSpot map, KeyWay way, int depth) =>
        way.Excluded(depth).Select(map.Find).FirstOrDefault(e => e is not null);

    private static string? Exchanged(string text, Trail trail, NewEntry entry, SpotEntry excluded, out string? problem)
    {
        var depth = trail.Depth;
        var word = entry.Way.Names[depth];
        return entry.Below(depth + 1, trail.IsFlow(depth), out problem) is { } value
            ? TextChange.Apply(text, [new TextChange(excluded.Start, excluded.End, word + ": " + value)])
            : null;
    }

    private static string? InBraces(string text, MapSpot map, NewEntry entry, int depth, out string? problem) =>
        entry.InFlow(depth, out problem) is { } written
            ? TextChange.Apply(text, Insertion.Flow(text, map, map.Entries is [.., var l] ? (l.Start, l.End) : null, written))
            : null;

    private static string? InBlock(string text, Spot root, MapSpot map, NewEntry entry, int depth, out string? problem) =>
        entry.InBlock(depth, Step(text, root), HasBraces(root), out problem) is { } lines
            ? TextChange.Apply(text, [Insertion.Block(text, map, map.Entries[0].Start, lines)])
            : null;

    private static string? Appended(string text, Trail trail, ListSpot list, NewEntry entry, out string? problem)
    {
        var depth = trail.Depth;
        var number = FormattableString.Invariant($"{list.Items.Length}");
        if (!string.Equals(entry.Way.Names[depth], number, StringComparison.Ordinal))
        {
            problem = $"{entry.Way.Path(depth)} has {number} entries; the next is number {number}";
            return null;
        }

        var isFlow = trail.IsFlow(depth);
        if (entry.Below(depth + 1, isFlow, out problem) is not { } item)
        {
            return null;
        }

        return isFlow
            ? TextChange.Apply(text, Insertion.Flow(text, list, list.Items is [.., var l] ? (l.Start, l.End) : null, item))
            : TextChange.Apply(text, [Insertion.Block(text, list, Dash(text, list.Items[0].Start), ["- " + item])]);
    }

    // A list's entry begins behind its dash.
    private static int Dash(string text, int item) => text.LastIndexOf('-', item - 1);

    private static IEnumerable<TextChange> InPlaceOf(string text, Trail trail, string value)
    {
        var spot = trail.Last;
        if (spot.Start == spot.End)
        {
            return [new TextChange(spot.Start, spot.End, " " + value)];
        }

        if (spot is not (MapSpot { Flow: false } or ListSpot { Flow: false }) || trail.Entries[^1] is not { } entry)
        {
            return [new TextChange(spot.Start, spot.End, value)];
        }

        // A block goes with its lines; a comment behind its key stays there.
        var colon = text.IndexOf(':', entry.KeyEnd) + 1;
        return
        [
            new TextChange(colon, colon, " " + value),
            new TextChange(LineText.End(text, colon), LineText.End(text, spot.End), ""),
        ];
    }

    private static int Step(string text, Spot root) => root is MapSpot { Flow: false } map
        && map.Entries.Select(e => e.Value).OfType<MapSpot>().FirstOrDefault(m => !m.Flow) is { } nested
            ? Math.Max(1, LineText.Indent(text, nested.Start).Length - LineText.Indent(text, map.Start).Length)
            : UsualStep;

    private static bool HasBraces(Spot spot) => spot switch
    {
        MapSpot { Flow: true } => true,
        MapSpot map => map.Entries.Any(e => HasBraces(e.Value)),
        ListSpot list => list.Items.Any(HasBraces),
        _ => false,
    };
}
