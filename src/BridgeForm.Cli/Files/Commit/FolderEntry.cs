using System.Diagnostics;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>A folder of results, made where it was not there, locked, and free of what killed runs have left.</summary>
/// <param name="Path">Its path, links resolved.</param>
/// <param name="IsLink">It was named by a link.</param>
/// <param name="Held">The lock.</param>
/// <param name="Made">Folders that were made for it, outermost first.</param>
internal sealed record FolderEntry(string Path, bool IsLink, FolderLock Held, IReadOnlyList<string> Made)
{
    /// <summary>How long a run waits for another one: longer than most runs take.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(20);

    /// <summary>Enters a folder; waits for another run in it, and stops when that takes too long.</summary>
    public static FolderEntry Into(string folder) => Into(folder, Patience);

    /// <summary>Enters a folder, with a patience of one's own.</summary>
    public static FolderEntry Into(string folder, TimeSpan patience)
    {
        var full = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(folder));
        var path = Place.Real(full);
        DemandFolder(folder, full, path);
        var made = new List<string>();
        var watch = Stopwatch.StartNew();
        using var undoing = Interruption.Undoing(() => Unmake(made));
        try
        {
            while (true)
            {
                if ((Directory.Exists(path) || Recovery.BringBack(path)) && Make(path, made) is { } held)
                {
                    return Swept(new FolderEntry(path, Place.At(full) is PlaceKind.Other, held, made));
                }

                if (watch.Elapsed > patience)
                {
                    throw new Stop(
                        ExitCode.FileTrouble, $"{folder}: error: another run is writing into this folder; make again when it is done");
                }

                Thread.Sleep(Beat);
            }
        }
        catch
        {
            Unmake(made);
            throw;
        }
    }

    /// <summary>Puts right what a killed run has left in a folder, if there is anything and nobody is at it.</summary>
    public static void Recover(string folder)
    {
        if (Recovery.IsNeeded(Place.Real(folder)))
        {
            var entry = Into(folder);
            entry.Held.Dispose();
            Unmake(entry.Made);
        }
    }

    /// <summary>Takes folders away that were made and stayed empty.</summary>
    public static void Unmake(IReadOnlyList<string> made)
    {
        foreach (var folder in made.Reverse())
        {
            Place.RemoveIfEmpty(folder);
        }
    }

    private static void DemandFolder(string given, string full, string path)
    {
        if (Place.At(full) is not PlaceKind.Free && Place.At(path) is var kind and not PlaceKind.Folder)
        {
            var what = kind is PlaceKind.Free ? "a link to nothing" : kind is PlaceKind.File ? "a file" : "no folder";
            throw new Stop(ExitCode.FileTrouble, $"{given}: error: this is {what}; name a folder to write into");
        }
    }

    private static FolderLock? Make(string path, List<string> made)
    {
        for (var missing = path; missing is not null && !Directory.Exists(missing); missing = System.IO.Path.GetDirectoryName(missing))
        {
            if (!made.Contains(missing, StringComparer.Ordinal))
            {
                made.Insert(0, missing);
            }
        }

        Interruption.Whole(() => Directory.CreateDirectory(path));
        return FolderLock.Try(path);
    }

    private static FolderEntry Swept(FolderEntry entry)
    {
        try
        {
            Recovery.Sweep(entry.Path);
            return entry;
        }
        catch
        {
            entry.Held.Dispose();
            throw;
        }
    }
}
