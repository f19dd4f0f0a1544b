using System.Collections.Immutable;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>
/// A folder of results that another one has replaced. What its manifest lists, unchanged, is deleted; anything else is the
/// user's, put there in the moment of the exchange, and goes back into the folder.
/// </summary>
internal static class Leftover
{
    /// <summary>The deletions one by one, the manifest last, so that a run cut short leaves what says what the rest is.</summary>
    public static IEnumerable<Action> Removal(string leftover, string folder, FolderSurvey? earlier)
    {
        if (Place.At(leftover) is not PlaceKind.Folder)
        {
            yield break;
        }

        Place.Unlock(leftover);
        var survey = FolderSurvey.Look(leftover, earlier);
        ImmutableArray<string> files = [.. Leaves(leftover).Select(f => Path.GetRelativePath(leftover, f).Replace('\\', '/'))
            .OrderBy(f => f is Manifest.FileName)
            .ThenBy(f => f, StringComparer.Ordinal)];
        foreach (var file in files)
        {
            var isOurs = survey.IsUnchanged(file) || (file is Manifest.FileName && survey.HasManifest);
            yield return () => RemoveOrReturn(leftover, folder, file, isOurs);
        }

        yield return () => RemoveEmptyFolders(leftover);
    }

    /// <summary>Everything below a folder but folders; links are named, not entered.</summary>
    private static IEnumerable<string> Leaves(string folder) => Directory.EnumerateFileSystemEntries(folder)
        .SelectMany(e => Place.At(e) is PlaceKind.Folder ? Leaves(e) : [e]);

    private static void RemoveOrReturn(string leftover, string folder, string name, bool isOurs)
    {
        var path = Path.Combine(leftover, name);
        if (isOurs)
        {
            File.Delete(path);
            return;
        }

        var home = Path.Combine(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(home)!);
        Place.MoveToFree(path, Place.At(home) is PlaceKind.Free ? home : Place.FreeBackup(home));
    }

    private static void RemoveEmptyFolders(string folder)
    {
        foreach (var inner in Directory.EnumerateDirectories(folder))
        {
            if (Place.At(inner) is PlaceKind.Folder)
            {
                RemoveEmptyFolders(inner);
            }
        }

        Place.RemoveIfEmpty(folder);
    }
}
