using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>Goes through file and definition side by side, reads every value and fills in every default.</summary>
internal sealed class SpecWalker(FileValues values, FaultList faults)
{
    private const int LongestName = 60;

    // Places of a key in the wrong place that are told; of more, none.
    private const int MostPlaces = 3;

    private readonly HashSet<string> meantBy = new(StringComparer.Ordinal);

    /// <summary>Reads the whole file into values by path.</summary>
    public void Walk(KeySpec root, MapNode map) => Map(root, map, "", Place.Start, given: true);

    /// <summary>Reads a value of a key that has one as if the file said it there.</summary>
    public void Rewrite(KeySpec spec, string path, string text)
    {
        var place = values.Place(path);
        Value(spec, new ScalarNode(place, text, Quoted: false), path, given: true);
    }

    /// <summary>Reads a value that a rule chose for a key that the file leaves out.</summary>
    /// <param name="spec">The key.</param>
    /// <param name="path">Its path.</param>
    /// <param name="text">The value, as people write it.</param>
    /// <param name="good">What it was chosen from was read without a fault.</param>
    public void Choose(KeySpec spec, string path, string text, bool good) =>
        Default(spec, text, path, values.Place(path), good);

    private static string Join(string path, string name) => path.Length == 0 ? name : path + "." + name;

    private void Read(KeySpec spec, FileNode node, string path, bool given)
    {
        switch (spec.Shape, node)
        {
            case (_, BrokenNode):
                StandIn(spec, path, node.Place);
                break;
            case (KeyShape.Value, ScalarNode scalar) when scalar.Text.Length > 0 || scalar.Quoted:
                Value(spec, scalar, path, given);
                break;
            case (KeyShape.Value, MapNode map) when spec.Type == ValueForm.Rope:
                Map(spec, map, path, node.Place, given);
                break;
            case (KeyShape.Map, MapNode map):
                Map(spec, map, path, node.Place, given);
                break;
            case (KeyShape.Named, MapNode map):
                Named(spec, map, path, given);
                break;
            case (KeyShape.List, ListNode list):
                List(spec, list, path, given);
                break;
            default:
                faults.Add(FaultCode.WrongShape, node.Place, WrongKind(spec, node));
                StandIn(spec, path, node.Place);
                break;
        }
    }

    private string WrongKind(KeySpec spec, FileNode node)
    {
        var name = spec.Name.Length == 0 ? "this" : spec.Name;
        var example = spec.DefaultIn(values.Units) ?? spec.ExampleIn(values.Units);
        var wanted = spec.Shape switch
        {
            KeyShape.Value => "a single value" + (example is null ? "" : $" such as {example}"),
            KeyShape.List => "a list" + (example is null ? " in square brackets" : $" such as {example}"),
            KeyShape.Map => $"a mapping with the keys {string.Join(", ", spec.Keys.Select(k => k.Name))}",
            _ => "a mapping from names of your own",
        };
        var comment = spec.Type == ValueForm.Text && node is ScalarNode
            ? "; a # behind a blank begins a comment: put the value in quotes where it has one"
            : "";
        return $"{name} must be {wanted}, not {node.Noun}{comment}";
    }

    private void Value(KeySpec spec, ScalarNode node, string path, bool given)
    {
        var result = ValueReader.Read(spec, node.Text, values.Units);
        if (result.Entry is { } entry)
        {
            values.Set(path, entry with { Place = node.Place, Given = given });
            return;
        }

        faults.Add(result.Code, node.Place, result.Problem!);
        StandIn(spec, path, node.Place);
        values.Set(path, values.Find(path)! with { Faulty = node.Text });
    }

    private void Map(KeySpec spec, MapNode map, string path, Place place, bool given)
    {
        values.Set(path, new Entry(place, given, Good: true));
        var byName = spec.Keys.ToDictionary(k => k.Name, StringComparer.Ordinal);
        var written = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in map.Entries)
        {
            if (byName.TryGetValue(entry.Key, out var key))
            {
                written.Add(entry.Key);
                Read(key, entry.Value, Join(path, entry.Key), given);
            }
            else if (!faults.Full && Unknown(spec, entry, path) is { } meant)
            {
                // A mistyped key is one fault; that the right one is missing then need not be told as well.
                meantBy.Add(Join(path, meant));
            }
        }

        Exclusive(spec, map);
        foreach (var key in spec.Keys.Where(k => !written.Contains(k.Name)))
        {
            var crowdedOut = (spec.OneOf.Contains(key.Name, StringComparer.Ordinal) && spec.OneOf.Any(written.Contains))
                || (key.Instead is { } instead && written.Contains(instead));
            Missing(key, Join(path, key.Name), place, crowdedOut);
        }
    }

    private void Exclusive(KeySpec spec, MapNode map)
    {
        foreach (var second in map.Entries.Where(e => spec.OneOf.Contains(e.Key, StringComparer.Ordinal)).Skip(1))
        {
            var first = map.Entries.First(e => spec.OneOf.Contains(e.Key, StringComparer.Ordinal));
            faults.Add(FaultCode.KeysExclude, second.KeyPlace, FormattableString.Invariant($"{second.Key} and {first.Key} (line ")
                + FormattableString.Invariant($"{first.KeyPlace.Line}) exclude each other; give one of them"));
        }
    }

    // Tells an unknown key and returns the one that was probably meant.
    private string? Unknown(KeySpec spec, MapEntry entry, string path)
    {
        var known = spec.Keys.Select(k => k.Name).ToList();
        var nearest = NearestWord.Find(entry.Key, known);
        var colon = entry.Key.IndexOf(':', StringComparison.Ordinal);
        var hint = colon > 0 && known.Contains(entry.Key[..colon], StringComparer.Ordinal)
            ? $"write a blank behind the colon of {entry.Key[..colon]}"
            : Below(spec, path, entry.Key).Take(MostPlaces + 1).ToList() is { Count: > 0 and <= MostPlaces } places
                ? $"its place is {string.Join(" or ", places)}"
            : nearest is null ? $"known keys: {string.Join(", ", known)}" : $"did you mean {nearest}?";
        faults.Add(
            FaultCode.UnknownKey, entry.KeyPlace,
            $"{QuantityReader.Quote(entry.Key)} is not a key of {(path.Length == 0 ? "a project file" : path)}; {hint}");
        return nearest;
    }

    // Where keys of this name stand further in: who writes span beside site means site.span.
    private static IEnumerable<string> Below(KeySpec spec, string path, string name) => spec.Keys.SelectMany(k =>
    {
        var at = Join(path, k.Name);
        var here = k.Keys.Where(inner => string.Equals(inner.Name, name, StringComparison.Ordinal)).Select(inner => Join(at, inner.Name));
        return here.Concat(Below(k, at, name));
    });

    private void Missing(KeySpec spec, string path, Place place, bool crowdedOut)
    {
        if (spec.Required && !crowdedOut)
        {
            TellMissing(spec, path, place);
            StandIn(spec, path, place);
        }
        else if (spec.Shape == KeyShape.Map && !spec.Optional)
        {
            values.Set(path, new Entry(place, Given: false, Good: true));
            foreach (var key in spec.Keys)
            {
                Missing(key, Join(path, key.Name), place, spec.OneOf.Skip(1).Contains(key.Name, StringComparer.Ordinal));
            }
        }
        else if (!crowdedOut && spec.DefaultIn(values.Units) is { } text)
        {
            Default(spec, text, path, place, good: true);
        }
    }

    private void TellMissing(KeySpec spec, string path, Place place)
    {
        if (!meantBy.Contains(path))
        {
            faults.Add(FaultCode.MissingKey, place, $"{path} is missing; write one such as {spec.Name}: {spec.ExampleIn(values.Units)}");
        }
    }

    // What a faulty value is replaced by, so that reading can go on.
    private void StandIn(KeySpec spec, string path, Place place)
    {
        if (spec.Shape == KeyShape.Map)
        {
            // An optional one too: it stands in the file, so its values are asked for.
            new SpecWalker(values, new FaultList()).Missing(
                spec with { Required = false, Optional = false }, path, place, crowdedOut: false);
        }
        else if ((spec.DefaultIn(values.Units) ?? spec.ExampleIn(values.Units)) is { } text)
        {
            Default(spec, text, path, place, good: false);
        }

        values.Set(path, (values.Find(path) ?? new Entry(place, false, false)) with { Place = place, Given = true, Good = false });
    }

    private void Default(KeySpec spec, string text, string path, Place place, bool good)
    {
        var none = new FaultList();
        if (spec.Shape == KeyShape.Value)
        {
            var entry = ValueReader.Read(spec, text, values.Units).Entry
                ?? throw new InvalidOperationException($"The definition's default '{text}' of {path} cannot be read.");
            values.Set(path, entry with { Place = place, Given = false, Good = good });
            return;
        }

        var node = YamlTree.Read(text, none) ?? throw new InvalidOperationException($"The definition's default of {path} is not YAML.");
        new SpecWalker(values, none).Read(spec, Moved(node, place), path, given: false);
        if (none.Any)
        {
            throw new InvalidOperationException($"The definition's default of {path} cannot be read: {none.InOrder()[0].Message}");
        }
    }

    // A default has no place of its own in the file.
    private static FileNode Moved(FileNode node, Place place) => node switch
    {
        MapNode map => new MapNode(place, [.. map.Entries.Select(e => new MapEntry(e.Key, place, Moved(e.Value, place)))]),
        ListNode list => new ListNode(place, [.. list.Items.Select(i => Moved(i, place))]),
        _ => node with { Place = place },
    };

    // Names end up in tables, drawings and file names; a point would look like a path of keys.
    private static bool IsName(string key) => key.Length is > 0 and <= LongestName
        && !string.IsNullOrWhiteSpace(key)
        && key.All(c => char.IsLetterOrDigit(c) || c is '-' or '_' or ' ');

    private void Named(KeySpec spec, MapNode map, string path, bool given)
    {
        var entries = map.Entries.Take(spec.Count.Most).ToList();
        if (entries.Count < map.Entries.Length)
        {
            faults.Add(
                FaultCode.TooManyNames, map.Place,
                FormattableString.Invariant($"{spec.Name} has {map.Entries.Length} names; at most {spec.Count.Most} are read"));
        }

        values.Set(path, new Entry(map.Place, given, Good: true) { Items = [.. entries.Select(e => e.Key)] });
        foreach (var entry in entries)
        {
            if (!IsName(entry.Key))
            {
                faults.Add(FaultCode.BadName, entry.KeyPlace, FormattableString.Invariant($"{QuantityReader.Quote(entry.Key)} is not a ")
                    + FormattableString.Invariant($"name; use at most {LongestName} letters, digits, hyphens, underscores and spaces"));
            }

            else if (!spec.Choices.IsEmpty && !spec.Choices.Contains(entry.Key, StringComparer.Ordinal) && !faults.Full)
            {
                var hint = NearestWord.Find(entry.Key.Replace('_', '-'), spec.Choices) is { } nearest
                    ? $"did you mean {nearest}?"
                    : $"known are {string.Join(", ", spec.Choices)}";
                faults.Add(FaultCode.UnknownName, entry.KeyPlace, $"{QuantityReader.Quote(entry.Key)} is not a name under {path}; {hint}");
            }

            Read(spec.Item! with { Name = entry.Key }, entry.Value, Join(path, entry.Key), given);
        }
    }

    private void List(KeySpec spec, ListNode list, string path, bool given)
    {
        var (least, most) = spec.Count;
        var fits = list.Items.Length >= least && list.Items.Length <= most;
        if (!fits)
        {
            var wanted = least == most ? FormattableString.Invariant($"{least}") : FormattableString.Invariant($"{least} to {most}");
            faults.Add(
                FaultCode.EntryCount, list.Place,
                FormattableString.Invariant(
                    $"{(spec.Name.Length == 0 ? "this list" : spec.Name)} has {list.Items.Length} entries; it takes {wanted}"));
        }

        var items = list.Items.Take(most).ToList();
        var names = Enumerable.Range(0, items.Count).Select(i => FormattableString.Invariant($"{i}")).ToList();
        for (var i = 0; i < items.Count; i++)
        {
            Read(spec.Item!, items[i], Join(path, names[i]), given);
        }

        var good = fits && names.TrueForAll(n => values.Good(Join(path, n)));
        values.Set(path, new Entry(list.Place, given, good) { Items = names });
    }
}
