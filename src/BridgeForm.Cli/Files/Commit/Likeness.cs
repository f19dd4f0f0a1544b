namespace BridgeForm.Cli.Files.Commit;

/// <summary>Who may read and write what: a file or folder that takes another one's place has its rights.</summary>
internal static class Likeness
{
    /// <summary>Rights of files that stand in the folder go to new ones of the same name.</summary>
    public static void OfFiles(string folder, string fresh, IEnumerable<ListedFile> files)
    {
        foreach (var file in files)
        {
            var here = Path.Combine(folder, file.Name);
            if (Place.At(here) is PlaceKind.File)
            {
                Copy(here, Path.Combine(fresh, file.Name));
            }
        }
    }

    /// <summary>Rights of the folder, and of folders in it, go to the new ones.</summary>
    public static void OfFolders(string folder, string fresh)
    {
        Copy(folder, fresh);
        foreach (var inner in Directory.EnumerateDirectories(fresh))
        {
            var here = Path.Combine(folder, Path.GetFileName(inner));
            if (Place.At(here) is PlaceKind.Folder)
            {
                Copy(here, inner);
            }
        }
    }

    private static void Copy(string from, string to)
    {
        if (!OperatingSystem.IsWindows() && File.GetUnixFileMode(from) is var mode && mode != File.GetUnixFileMode(to))
        {
            File.SetUnixFileMode(to, mode);
        }
    }
}
