using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Roles;

namespace BridgeForm.Contacts;

/// <summary>What each part of a list rests on, by places in the list, as the table of roles says.</summary>
internal sealed class Supports
{
    private readonly ImmutableArray<SweptPart> _parts;
    private readonly Dictionary<(string Owner, Role Role), List<int>> _places = [];
    private readonly Dictionary<(string Owner, Role Role, Side Side), int[][]> _carriers = [];
    private readonly Dictionary<string, (FramePose From, FramePose To)> _between = new(StringComparer.Ordinal);

    private Supports(ImmutableArray<SweptPart> parts) => _parts = parts;

    /// <summary>Nothing rests on anything.</summary>
    public static Supports None(ImmutableArray<SweptPart> parts) => new(parts);

    /// <summary>As parts of the frames and bays of a layout rest on each other.</summary>
    public static Supports Find(ImmutableArray<SweptPart> parts, ImmutableArray<FramePose> poses)
    {
        var supports = new Supports(parts);
        for (var i = 0; i < poses.Length; i++)
        {
            supports._between.Add(poses[i].Name, (poses[i], poses[i]));
            if (i > 0)
            {
                supports._between.Add(FramePoses.BayName(i, poses.Length - 1), (poses[i - 1], poses[i]));
            }
        }

        for (var i = 0; i < parts.Length; i++)
        {
            var key = (Owner(parts[i]), parts[i].Role);
            supports._places.TryAdd(key, []);
            supports._places[key].Add(i);
        }

        return supports;
    }

    /// <summary>
    /// Sets of parts of each of which the part must touch at least one, the same arrays for all parts alike. Bases rest on the ropes
    /// (<see cref="RopeContacts"/> looks at that) or on their landing and have none; nor has what brackets hold clear.
    /// </summary>
    public int[][] CarriersOf(int index)
    {
        if (_between.Count == 0)
        {
            return [];
        }

        var part = _parts[index];
        var alike = (Owner(part), part.Role, part.Side);
        if (!_carriers.TryGetValue(alike, out var sets))
        {
            sets = [.. RoleTable.Of(part.Role).RestsOn.Where(b => !b.IsClear).SelectMany(bearing => Sets(part, bearing))];
            _carriers.Add(alike, sets);
        }

        return sets;
    }

    /// <summary>The frame that the part hangs on the ropes; null for every part that rests on something else.</summary>
    public FramePose? HangsOnRopes(int index) =>
        RoleTable.Of(_parts[index].Role).LiesOnRopes && _between.TryGetValue(Owner(_parts[index]), out var found) && !found.From.IsEnd
            ? found.From
            : null;

    private IEnumerable<int[]> Sets(SweptPart part, Bearing bearing)
    {
        var owner = Owner(part);
        var (from, to) = _between[owner];
        return bearing.Place switch
        {
            BearingPlace.Frame => [OneOf(part, bearing, owner)],
            BearingPlace.BothFrames => [OneOf(part, bearing, from.Name), OneOf(part, bearing, to.Name)],
            BearingPlace.WholeBay => Found(part, bearing, owner).Select(place => (int[])[place]),
            _ => throw new ArgumentOutOfRangeException(nameof(bearing), bearing.Place, "No such place."),
        };
    }

    private int[] OneOf(SweptPart part, Bearing bearing, string owner)
    {
        int[] places = [.. Found(part, bearing, owner)];
        return places.Length > 0
            ? places
            : throw new InvalidOperationException($"There is no {RoleTable.Of(bearing.On[0]).Name} in {owner} to carry {part.Id}.");
    }

    /// <summary>Parts of a frame or bay that may carry the part: across the middle, or on its own side.</summary>
    private IEnumerable<int> Found(SweptPart part, Bearing bearing, string owner) => bearing.On
        .SelectMany(role => _places.TryGetValue((owner, role), out var places) ? places : [])
        .Where(i => _parts[i].Side == Side.None || _parts[i].Side == part.Side);

    private static string Owner(SweptPart part) => PartId.OwnerOf(part.Id);
}
