namespace BridgeForm.Cli.Files.Commit;

/// <summary>What a run that was killed has left: put right before anything else is done in the folder.</summary>
internal static class Recovery
{
    /// <summary>A run that was killed has left something in the folder or beside it.</summary>
    public static bool IsNeeded(string folder) =>
        (Place.At(folder) is PlaceKind.Folder && StagingNames.Within(folder).Length > 0) || StagingNames.BesideOf(folder).Length > 0;

    /// <summary>
    /// A folder that stands beside its place, because a run was killed between two renames, comes back. False when another run is
    /// at it right now.
    /// </summary>
    public static bool BringBack(string folder)
    {
        foreach (var staging in StagingNames.BesideOf(folder))
        {
            var old = Path.Combine(staging, StagingNames.Old);
            if (Place.At(old) is PlaceKind.Folder)
            {
                using var held = FolderLock.Try(old);
                if (held is null)
                {
                    return false;
                }

                Place.MoveToFree(old, folder);
                return true;
            }
        }

        return true;
    }

    /// <summary>Puts old files back and takes hidden folders away. The folder must be locked, so that none of them is in use.</summary>
    public static void Sweep(string folder)
    {
        foreach (var staging in StagingNames.Within(folder))
        {
            Journal.RollBack(folder, staging);
            Place.RemoveHidden(staging);
        }

        foreach (var staging in StagingNames.BesideOf(folder))
        {
            RemoveBeside(staging, folder);
        }
    }

    /// <summary>Takes away a hidden folder that stands beside its place.</summary>
    public static void RemoveBeside(string staging, string folder)
    {
        foreach (var inner in (string[])[StagingNames.New, StagingNames.Old])
        {
            foreach (var step in Leftover.Removal(Path.Combine(staging, inner), folder, earlier: null))
            {
                step();
            }
        }

        Place.RemoveIfEmpty(staging);
    }
}
