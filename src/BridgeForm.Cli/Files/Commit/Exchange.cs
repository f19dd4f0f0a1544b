using BridgeForm.Cli.Streams;
namespace BridgeForm.Cli.Files.Commit;

/// <summary>
/// The new folder and the old one change places whole: by one call where the system has it, else by two renames. Only for a
/// folder that holds nothing of the user's, since whoever stands in the old one stands in it still.
/// </summary>
internal static class Exchange
{
    private const int NotThere = 38;
    private const int NotSupported = 95;
    private const int Attempts = 3;

    /// <summary>
    /// The folder may be another one afterwards: nobody is known to stand in it, nothing is mounted on it, the same user owns
    /// both.
    /// </summary>
    public static bool IsPossible(string folder, string staging)
    {
        if (IsWorkingFolder(folder) || Path.GetDirectoryName(folder) is null)
        {
            return false;
        }

        return !OperatingSystem.IsLinux()
            || (LinuxCalls.NodeAt(folder) is { IsMountPoint: false } old && LinuxCalls.NodeAt(staging) is { } fresh
            && old.Owner == fresh.Owner);
    }

    /// <summary>
    /// The steps, in order; a kill after any of them leaves the old folder or the new one whole, or, between two renames, beside
    /// its place, where the next run finds it.
    /// </summary>
    /// <param name="folder">The folder of results.</param>
    /// <param name="staging">The hidden folder in it.</param>
    /// <param name="held">Is to hold the new folder too.</param>
    /// <param name="atOnce">The system can exchange names in one call.</param>
    public static IEnumerable<Action> Steps(string folder, string staging, FolderLock held, bool atOnce)
    {
        var (beside, isDone) = (Beside(folder, staging), false);
        var (fresh, old) = (Path.Combine(beside, StagingNames.New), Path.Combine(beside, StagingNames.Old));
        yield return () =>
        {
            Place.MoveToFree(staging, beside);
            held.AlsoHold(fresh);
        };
        if (atOnce)
        {
            yield return () => isDone = TryAtOnce(fresh, folder);
        }

        if (!isDone)
        {
            yield return () => Place.MoveToFree(folder, old);
            yield return () => MoveToPlace(fresh, folder);
        }
    }

    /// <summary>The old folder is taken away, file by file.</summary>
    public static IEnumerable<Action> Clearing(string folder, string staging, FolderSurvey? earlier)
    {
        var beside = Beside(folder, staging);
        var old = Path.Combine(beside, StagingNames.Old);
        return Leftover.Removal(Place.At(old) is PlaceKind.Folder ? old : Path.Combine(beside, StagingNames.New), folder, earlier)
            .Append(() => Place.RemoveIfEmpty(beside));
    }

    /// <summary>After a step that failed: the old folder is in its place, the hidden one in it.</summary>
    public static void TakeBack(string folder, string staging)
    {
        var beside = Beside(folder, staging);
        var old = Path.Combine(beside, StagingNames.Old);
        if (Place.At(old) is PlaceKind.Folder)
        {
            MoveToPlace(old, folder);
        }

        if (Place.At(beside) is PlaceKind.Folder)
        {
            Place.MoveToFree(beside, staging);
        }
    }

    /// <summary>Where the hidden folder stands while it is beside the folder of results.</summary>
    public static string Beside(string folder, string staging) =>
        StagingNames.Beside(folder) + Path.GetFileName(staging)[StagingNames.Prefix.Length..];

    private static bool IsWorkingFolder(string folder)
    {
        var inside = Path.EndsInDirectorySeparator(folder) ? folder : folder + Path.DirectorySeparatorChar;
        return (Place.Real(Environment.CurrentDirectory) + Path.DirectorySeparatorChar).StartsWith(inside, StringComparison.Ordinal);
    }

    private static bool TryAtOnce(string fresh, string folder)
    {
        var error = LinuxCalls.TryExchange(fresh, folder);
        return error switch
        {
            0 => true,
            LinuxCalls.Invalid or NotThere or NotSupported => false,
            _ => throw new IOException($"{folder} cannot be exchanged (error {error} of the system)"),
        };
    }

    /// <summary>Another run may have made an empty folder here in between; it finds out and begins again.</summary>
    private static void MoveToPlace(string from, string folder)
    {
        for (var left = Attempts; ; left--)
        {
            Place.RemoveIfEmpty(folder);
            try
            {
                Place.MoveToFree(from, folder);
                return;
            }
            catch (IOException) when (left > 0)
            {
                // Once more.
            }
        }
    }
}
