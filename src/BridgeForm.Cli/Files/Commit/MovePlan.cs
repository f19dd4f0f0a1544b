using System.Collections.Immutable;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>The moves that take a folder from its old files to its new ones, one by one.</summary>
internal static class MovePlan
{
    /// <summary>
    /// Plans the moves: folders first, then each file right after what it replaces, then what is no longer made, the manifest
    /// last. A file of the user's at the name of a new one is kept under another.
    /// </summary>
    /// <param name="folder">The folder, to look at what stands in it.</param>
    /// <param name="survey">What is listed there.</param>
    /// <param name="files">What this run made, the manifest among them.</param>
    /// <param name="gone">Listed, made by a kind that this run makes, and not made by it.</param>
    public static ImmutableArray<Move> Of(
        string folder, FolderSurvey survey, ImmutableArray<ListedFile> files, IEnumerable<ListedFile> gone)
    {
        var order = files.OrderBy(f => f.Name is Manifest.FileName).ThenBy(f => f.Name, StringComparer.Ordinal);
        return
        [
            .. Folders(folder, files).Select(f => new Move(MoveKind.Folder, f, "")),
            .. gone.Where(f => survey.IsUnchanged(f.Name)).Select(f => new Move(MoveKind.Away, f.Name, f.Hash)),
            .. order.SelectMany(f => (Move?[])[Clearing(folder, survey, f.Name), new Move(MoveKind.Put, f.Name, f.Hash)]).OfType<Move>(),
        ];
    }

    private static IEnumerable<string> Folders(string folder, IEnumerable<ListedFile> files) => files
        .Select(f => f.Name.LastIndexOf('/') is > 0 and var slash ? f.Name[..slash] : "")
        .Where(f => f.Length > 0 && Place.At(Path.Combine(folder, f)) is PlaceKind.Free)
        .Distinct(StringComparer.Ordinal)
        .Order(StringComparer.Ordinal);

    private static Move? Clearing(string folder, FolderSurvey survey, string name)
    {
        var path = Path.Combine(folder, name);
        var isOurs = survey.IsUnchanged(name) || (name is Manifest.FileName && survey.HasManifest);
        return Place.At(path) is PlaceKind.Free ? null
            : isOurs ? new Move(MoveKind.Away, name, "")
            : new Move(MoveKind.Keep, name, Path.GetRelativePath(folder, Place.FreeBackup(path)).Replace('\\', '/'));
    }
}
