using BridgeForm.Project.Reading;

namespace BridgeForm.Project.Editing;

/// <summary>
/// Changes one value in a project file's text. Everything else stays as it is to the byte: comments, order, spelling, quotes,
/// blank lines, line ends, byte order mark. The text that comes out is read again before it is given out: it says what was
/// asked for, and besides what the old one said. No text makes these throw; a file that the reader refuses is refused with
/// its first fault. Values are not held against their ranges: that is for the reader.
/// </summary>
public static class FileEdit
{
    private const char ByteOrderMark = '\uFEFF';

    /// <summary>
    /// Writes a value. A key that is missing goes behind the last one of its mapping, one that excludes it gives way to it, and
    /// a mapping that is missing is added.
    /// </summary>
    /// <param name="text">The whole file.</param>
    /// <param name="path">The key, such as <c>frames.post.section</c> or <c>guard.rails.heights.0</c>.</param>
    /// <param name="value">As a person writes it: <c>4x6</c>, <c>[6 in, 12 in]</c>; put in quotes where YAML needs them.</param>
    /// <param name="comment">Put behind the key's line, or above it where a comment stands there already; null for none.</param>
    public static EditResult Set(string text, string path, string value, string? comment = null) =>
        Edited(text, path, (body, way) => Written(body, way, value, comment));

    /// <summary>Takes a key out, with the mapping or list where it was alone in it. A file without the key stays as it is.</summary>
    public static EditResult Remove(string text, string path) => Edited(text, path, Without);

    private static EditResult Edited(string text, string path, Func<string, KeyWay, EditResult> edit)
    {
        var faults = new FaultList();
        var body = YamlText.Checked(text, ProjectKeys.LargestFile, faults);
        var root = body is null ? null : YamlTree.Read(body, faults);
        if (faults.Any)
        {
            var fault = faults.InOrder()[0];
            return EditResult.Refused(FormattableString.Invariant($"line {fault.Line}, column {fault.Column}: {fault.Message}"));
        }

        if (root is not MapNode { Entries.Length: > 0 })
        {
            return EditResult.Refused("the file is no mapping of keys");
        }

        if (KeyWay.Of(path, out var problem) is not { } way)
        {
            return EditResult.Refused(problem!);
        }

        var result = edit(body!, way);
        return result.Text is { } done && text.StartsWith(ByteOrderMark) ? EditResult.Done(ByteOrderMark + done) : result;
    }

    private static EditResult Written(string text, KeyWay way, string value, string? comment)
    {
        var (before, gone) = (Leaves.Of(text)!, new List<string> { way.Path(way.Names.Length) });
        var changed = text;
        for (var depth = 0; depth < way.Names.Length; depth++)
        {
            foreach (var path in way.Excluded(depth).Select(e => depth == 0 ? e : way.Path(depth) + "." + e))
            {
                gone.Add(path);
                // One that has the line to itself is taken out; one whose place the new key can take is kept for that.
                if (Leaves.Has(before, path) && !Placement.CanTakePlace(changed, way, depth, path))
                {
                    var without = Without(changed, KeyWay.Of(path, out _)!);
                    if (without.Text is not { } rest)
                    {
                        return without;
                    }

                    changed = rest;
                }
            }
        }

        gone.AddRange(Enumerable.Range(1, way.Names.Length - 1).Where(way.IsEntry).Select(d => Leaves.CountOf(way.Path(d))));
        var entry = new NewEntry(way, value);
        if (Placement.Put(changed, entry, out var problem) is not { } put)
        {
            return EditResult.Refused(problem!);
        }

        gone.AddRange(Placement.Scalars(changed, way));
        var isRight = Leaves.Of(put) is { } after && Leaves.AreSame(before, after, gone) && IsThere(after, way, value);
        var remarked = !isRight || string.IsNullOrWhiteSpace(comment) ? put : Remarks.Put(put, way, comment);
        return isRight && remarked is not null ? EditResult.Done(remarked) : ByHand(way);
    }

    private static bool IsThere(SortedDictionary<string, string> leaves, KeyWay way, string value)
    {
        var wanted = WrittenValue.For(way.Last, value, flow: true, out _);
        return Leaves.Under(leaves, way.Path(way.Names.Length)).SequenceEqual(Leaves.Under(Leaves.Of("{ k: " + wanted + " }")!, "k"));
    }

    private static EditResult Without(string text, KeyWay way)
    {
        var trail = Trail.Follow(SpotReader.Read(text), way.Names);
        if (trail.Depth < way.Names.Length)
        {
            return EditResult.Done(text);
        }

        var depth = trail.Depth;
        while (depth > 1 && trail.Spots[depth - 1] is MapSpot { Entries.Length: 1 } or ListSpot { Items.Length: 1 })
        {
            depth--;
        }

        if (trail.Spots[depth - 1] is ListSpot { Items.Length: > 1 })
        {
            return EditResult.Refused($"{way.Path(depth - 1)} has other entries; write the list without this one");
        }

        var changes = trail.Spots[depth - 1] is MapSpot { Entries.Length: > 1 } map && trail.Entries[depth - 1] is { } entry
            ? Removal.Of(text, map, entry)
            : [];
        var rest = TextChange.Apply(text, changes);
        return changes.Count > 0 && Leaves.Of(rest) is { } after
            && Leaves.AreSame(Leaves.Of(text)!, after, [way.Path(depth)]) && !Leaves.Has(after, way.Path(depth))
            ? EditResult.Done(rest)
            : ByHand(way);
    }

    private static EditResult ByHand(KeyWay way) =>
        EditResult.Refused($"{way.Path(way.Names.Length)} is written here in a way that only a hand can change");
}
