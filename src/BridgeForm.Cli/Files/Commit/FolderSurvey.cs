using System.Collections.Immutable;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>What stands in a folder of results, held against the manifest in it.</summary>
/// <param name="Listed">Files that the manifest lists, by name; none without a manifest.</param>
/// <param name="Changed">Listed names at which something else stands than the run before wrote: the user's.</param>
/// <param name="Missing">Listed names at which nothing stands.</param>
/// <param name="HasManifest">The folder has a manifest of ours.</param>
/// <param name="HoldsOthers">Something is there that is not listed: the user's.</param>
/// <param name="Seen">What the bytes of listed files were, and by what one sees that they still are.</param>
internal sealed record FolderSurvey(
    ImmutableSortedDictionary<string, ListedFile> Listed,
    ImmutableHashSet<string> Changed,
    ImmutableHashSet<string> Missing,
    bool HasManifest,
    bool HoldsOthers,
    ImmutableDictionary<string, FolderSurvey.Sight> Seen)
{
    /// <summary>Nothing is there but what earlier runs made, as they made it.</summary>
    public bool IsOurs => !HoldsOthers && Changed.IsEmpty;

    /// <summary>Listed, and as the run before wrote it.</summary>
    public bool IsUnchanged(string name) => Listed.ContainsKey(name) && !Changed.Contains(name) && !Missing.Contains(name);

    /// <summary>Looks at a folder. Hidden folders of this program are passed over.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="earlier">An earlier look at the same files: those untouched since are not read again.</param>
    public static FolderSurvey Look(string folder, FolderSurvey? earlier = null)
    {
        var manifest = Manifest.Read(folder);
        var listed = (manifest?.Files ?? []).ToImmutableSortedDictionary(f => f.Name, f => f, StringComparer.Ordinal);
        var standing = listed.Values.ToLookup(f => KindAt(folder, f.Name));
        ImmutableArray<ListedFile> files = [.. standing[PlaceKind.File]];
        var sights = new Sight[files.Length];
        Parallel.For(
            0, files.Length,
            i => sights[i] = Sight.Look(Path.Combine(folder, files[i].Name), earlier?.Seen.GetValueOrDefault(files[i].Name)));
        var changed = files.Where((f, i) => !string.Equals(f.Hash, sights[i].Hash, StringComparison.Ordinal))
            .Concat(standing[PlaceKind.Folder]).Concat(standing[PlaceKind.Other]);
        return new FolderSurvey(
            listed,
            [.. changed.Select(f => f.Name)],
            [.. standing[PlaceKind.Free].Select(f => f.Name)],
            manifest is not null,
            HasOthers(folder, "", listed, manifest is not null),
            files.Select((f, i) => KeyValuePair.Create(f.Name, sights[i])).ToImmutableDictionary(StringComparer.Ordinal));
    }

    /// <summary>The first part of a name, from the left, that is no folder though something stands there; null when all is well.</summary>
    public static string? BlockedParent(string folder, string name)
    {
        for (var slash = name.IndexOf('/', StringComparison.Ordinal); slash > 0; slash = name.IndexOf('/', slash + 1))
        {
            if (Place.At(Path.Combine(folder, name[..slash])) is PlaceKind.File or PlaceKind.Other)
            {
                return name[..slash];
            }
        }

        return null;
    }

    /// <summary>A file reached through a link is not in the folder: the link counts.</summary>
    private static PlaceKind KindAt(string folder, string name) =>
        BlockedParent(folder, name) is null ? Place.At(Path.Combine(folder, name)) : PlaceKind.Other;

    /// <summary>Only folders that listed files are in are looked into, so that a folder with much else in it costs nothing.</summary>
    private static bool HasOthers(string folder, string within, ImmutableSortedDictionary<string, ListedFile> listed, bool hasManifest)
    {
        foreach (var entry in new DirectoryInfo(Path.Combine(folder, within)).EnumerateFileSystemInfos())
        {
            var name = within + entry.Name;
            var isOurs = Place.At(entry.FullName) is PlaceKind.Folder
                ? (within.Length == 0 && StagingNames.IsWithin(entry.Name))
                    || (listed.Keys.Any(k => k.StartsWith(name + "/", StringComparison.Ordinal))
                    && !HasOthers(folder, name + "/", listed, hasManifest))
                : listed.ContainsKey(name) || (hasManifest && name is Manifest.FileName);
            if (!isOurs)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A file's bytes, and what changes when somebody writes to it.</summary>
    internal sealed record Sight(string Hash, long Length, DateTime Written)
    {
        /// <summary>Reads a file, unless it is as it was seen before.</summary>
        public static Sight Look(string path, Sight? before)
        {
            var info = new FileInfo(path);
            var (length, written) = (info.Length, info.LastWriteTimeUtc);
            return before is not null && before.Length == length && before.Written == written
                ? before
                : new Sight(Manifest.HashOf(path), length, written);
        }
    }
}

/// <summary>What of the user's a run would have to remove or overwrite: it does neither, and says so.</summary>
internal static class Refusal
{
    /// <summary>Stops when a file that this run replaces or takes away was changed after it was made.</summary>
    public static void OfChanged(string given, FolderSurvey survey, ImmutableHashSet<string> kinds)
    {
        var changed = survey.Changed.Where(name => kinds.Contains(survey.Listed[name].Kind)).Order(StringComparer.Ordinal);
        StopAt(changed.Select(name => $"{Path.Combine(given, name)}: error: {Changed}"));
    }

    /// <summary>Stops when something that is not to be moved stands where a file must go.</summary>
    /// <param name="given">The folder as the user named it.</param>
    /// <param name="folder">Its path, links resolved.</param>
    /// <param name="survey">What is in it.</param>
    /// <param name="names">Of the files that come.</param>
    /// <param name="sources">Files that the run read, links resolved.</param>
    public static void OfOccupied(
        string given, string folder, FolderSurvey survey, IEnumerable<string> names, ImmutableHashSet<string> sources)
    {
        StopAt(names
            .Select(name => (Name: FolderSurvey.BlockedParent(folder, name) ?? name, Why: Why(folder, survey, name, sources)))
            .Where(r => r.Why is not null)
            .DistinctBy(r => r.Name, StringComparer.Ordinal)
            .Select(r => $"{Path.Combine(given, r.Name)}: error: {r.Why}"));
    }

    private const string Changed = "this file was changed after it was made, so it is yours; rename or delete it, then make again";

    private static string? Why(string folder, FolderSurvey survey, string name, ImmutableHashSet<string> sources)
    {
        var path = Path.Combine(folder, name);
        return FolderSurvey.BlockedParent(folder, name) is not null
            ? "this is no folder, and one must go here; move it away, then make again"
            : Place.At(path) is PlaceKind.Folder ? "this is a folder where a file must go; move it away, then make again"
            : sources.Contains(Place.Real(path)) || sources.Contains(path)
            ? "the bridge is read from this file, and a file of this name must be written; name another folder with -o"
            : survey.Changed.Contains(name) ? Changed
            : null;
    }

    private static void StopAt(IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length > 0)
        {
            throw new Stop(ExitCode.FileTrouble, all);
        }
    }
}
