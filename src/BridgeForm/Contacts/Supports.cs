using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Roles;

namespace BridgeForm.Contacts;

/// <summary>What each part of a list rests on, by places in the list.</summary>
internal sealed class Supports
{
    private readonly ImmutableArray<SurveyedPart> _parts;
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _stringers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (FramePose From, FramePose To)> _between = new(StringComparer.Ordinal);

    private Supports(ImmutableArray<SurveyedPart> parts) => _parts = parts;

    /// <summary>Nothing rests on anything.</summary>
    public static Supports None(ImmutableArray<SurveyedPart> parts) => new(parts);

    /// <summary>As parts of the frames and bays of a layout rest on each other.</summary>
    public static Supports Of(ImmutableArray<SurveyedPart> parts, ImmutableArray<FramePose> poses)
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
            supports._places.Add(parts[i].Id, i);
            if (parts[i].Role == Role.Stringer)
            {
                var owner = Owner(parts[i]);
                supports._stringers.TryAdd(owner, []);
                supports._stringers[owner].Add(parts[i].Id);
            }
        }

        return supports;
    }

    /// <summary>Sets of parts of each of which the part must touch at least one.</summary>
    public int[][] CarriersOf(int index)
    {
        if (_between.Count == 0)
        {
            return [];
        }

        var part = _parts[index];
        var owner = Owner(part);
        var (from, to) = _between[owner];
        IReadOnlyList<string> stringers = part.Role == Role.Tread && _stringers.TryGetValue(owner, out var found) ? found : [];
        return [.. Bearings.Of(part, from.Name, to.Name, stringers).Select(set => Places(part, set))];
    }

    /// <summary>The frame whose base the part is, when it hangs on the ropes; null for every other part.</summary>
    public FramePose? HangsOnRopes(int index) =>
        _parts[index].Role == Role.Base && _between.TryGetValue(Owner(_parts[index]), out var found) && !found.From.IsEnd
            ? found.From
            : null;

    private int[] Places(SurveyedPart part, string[] ids)
    {
        int[] places = [.. ids.Where(_places.ContainsKey).Select(id => _places[id])];
        return places.Length > 0 ? places : throw new InvalidOperationException($"There is no {ids[0]} to carry {part.Id}.");
    }

    private static string Owner(SurveyedPart part) => part.Id[..part.Id.IndexOf('/', StringComparison.Ordinal)];
}
