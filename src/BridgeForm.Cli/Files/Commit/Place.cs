using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>What stands at a path. No link is followed.</summary>
internal enum PlaceKind
{
    /// <summary>Nothing.</summary>
    Free,

    /// <summary>A file.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A link, wherever it points; a pipe, a device.</summary>
    Other,
}

/// <summary>Looks at paths and renames.</summary>
internal static class Place
{
    /// <summary>What stands there.</summary>
    public static PlaceKind At(string path)
    {
        if (OperatingSystem.IsLinux())
        {
            return LinuxCalls.NodeAt(path) is not { } node ? PlaceKind.Free
                : node.IsRegularFile ? PlaceKind.File
                : node.IsFolder ? PlaceKind.Folder
                : PlaceKind.Other;
        }

        var info = new FileInfo(path);
        return info.LinkTarget is not null ? PlaceKind.Other
            : info.Exists ? PlaceKind.File
            : Directory.Exists(path) ? PlaceKind.Folder
            : PlaceKind.Free;
    }

    /// <summary>A file or folder renamed to a name that nothing has.</summary>
    /// <exception cref="IOException">Something has the name, or it cannot be done.</exception>
    public static void MoveToFree(string from, string to)
    {
        var error = OperatingSystem.IsLinux() ? LinuxCalls.TryMoveToFree(from, to) : LinuxCalls.Invalid;
        if (error == 0)
        {
            return;
        }

        if (At(to) is not PlaceKind.Free)
        {
            throw new IOException($"{to} is in the way; move it away");
        }

        // One rename: what .NET does without leave to overwrite makes a second name first, and a kill would leave both.
        if (At(from) is PlaceKind.Folder)
        {
            Directory.Move(from, to);
        }
        else
        {
            File.Move(from, to, overwrite: true);
        }
    }

    /// <summary>The path with every link in it resolved, as far as it exists.</summary>
    public static string Real(string path)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        if (Path.GetDirectoryName(full) is not { } parent)
        {
            return full;
        }

        var here = Path.Combine(Real(parent), Path.GetFileName(full));
        try
        {
            return new FileInfo(here).ResolveLinkTarget(returnFinalTarget: true) is { } target ? Real(target.FullName) : here;
        }
        catch (IOException)
        {
            return here;
        }
    }

    /// <summary>
    /// Takes a hidden folder away with all that is in it. Its folders may have taken over rights by which even their owner
    /// removes nothing from them.
    /// </summary>
    public static void RemoveHidden(string folder)
    {
        Unlock(folder);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>The owner may look into a hidden folder and the folders in it, and remove from them. No link is followed.</summary>
    public static void Unlock(string folder)
    {
        if (OperatingSystem.IsWindows() || At(folder) is not PlaceKind.Folder)
        {
            return;
        }

        const UnixFileMode OwnersAll = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        if (File.GetUnixFileMode(folder) is var mode && (mode & OwnersAll) != OwnersAll)
        {
            File.SetUnixFileMode(folder, mode | OwnersAll);
        }

        foreach (var inner in Directory.EnumerateDirectories(folder))
        {
            Unlock(inner);
        }
    }

    /// <summary>Takes a folder away when it is there and empty; says whether it did.</summary>
    public static bool RemoveIfEmpty(string folder)
    {
        try
        {
            if (At(folder) is not PlaceKind.Folder || Directory.EnumerateFileSystemEntries(folder).Any())
            {
                return false;
            }

            Directory.Delete(folder);
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // An empty folder that stays harms nobody.
            return false;
        }
    }

    /// <summary>The first of NAME.bak, NAME.bak2, … that nothing has.</summary>
    public static string FreeBackup(string path)
    {
        for (var i = 1; ; i++)
        {
            var backup = i == 1 ? path + ".bak" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{path}.bak{i}");
            if (At(backup) is PlaceKind.Free)
            {
                return backup;
            }
        }
    }
}

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
