using System.Collections.Immutable;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>What a move does.</summary>
internal enum MoveKind
{
    /// <summary>A folder is made.</summary>
    Folder,

    /// <summary>A file of an earlier run goes into the hidden folder.</summary>
    Away,

    /// <summary>A file of the user's, in the way, gets another name.</summary>
    Keep,

    /// <summary>A file of this run comes out of the hidden folder.</summary>
    Put,
}

/// <summary>One step of the way from the old files in a folder to the new ones.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Name">Relative to the folder, with forward slashes.</param>
/// <param name="Mark">Of a file that goes or comes, its hash; of one that is kept, its new name; of a folder, nothing.</param>
internal sealed record Move(MoveKind Kind, string Name, string Mark)
{
    /// <summary>Does it.</summary>
    public void Do(string folder, string staging)
    {
        var here = Path.Combine(folder, Name);
        switch (Kind)
        {
            case MoveKind.Folder:
                Directory.CreateDirectory(here);
                break;
            case MoveKind.Away:
                var old = Path.Combine(staging, StagingNames.Old, Name);
                Directory.CreateDirectory(Path.GetDirectoryName(old)!);
                Place.MoveToFree(here, old);
                break;
            case MoveKind.Keep:
                Place.MoveToFree(here, Path.Combine(folder, Mark));
                break;
            default:
                Place.MoveToFree(Path.Combine(staging, StagingNames.New, Name), here);
                break;
        }
    }

    /// <summary>Undoes it where it was done; where it was not, nothing happens.</summary>
    /// <exception cref="IOException">Something that this program did not put there is in the way.</exception>
    public void Undo(string folder, string staging)
    {
        var here = Path.Combine(folder, Name);
        switch (Kind)
        {
            case MoveKind.Folder:
                Place.RemoveIfEmpty(here);
                break;
            case MoveKind.Away:
                Back(Path.Combine(staging, StagingNames.Old, Name), here);
                break;
            case MoveKind.Keep:
                if (Place.At(here) is PlaceKind.Free)
                {
                    Back(Path.Combine(folder, Mark), here);
                }

                break;
            default:
                var origin = Path.Combine(staging, StagingNames.New, Name);
                if (Place.At(origin) is PlaceKind.Free && Place.At(here) is not PlaceKind.Free)
                {
                    DemandOurs(here);
                    Place.MoveToFree(here, origin);
                }

                break;
        }
    }

    private static void Back(string from, string to)
    {
        if (Place.At(from) is not PlaceKind.Free)
        {
            Place.MoveToFree(from, to);
        }
    }

    private void DemandOurs(string path)
    {
        if (Place.At(path) is not PlaceKind.File || !string.Equals(Manifest.HashOf(path), Mark, StringComparison.Ordinal))
        {
            throw new IOException($"{path} was changed after a run that was cut short; move it away, then make again");
        }
    }
}

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
    public static ImmutableArray<Move> Plan(
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
