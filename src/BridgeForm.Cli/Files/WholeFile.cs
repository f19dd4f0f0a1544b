using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files;

/// <summary>One file that is replaced whole or not at all.</summary>
internal static class WholeFile
{
    /// <summary>
    /// Writes beside the file's place under a name that is nobody's and moves it there; nothing is left behind on failure. A link
    /// stays a link: what it points to is written, as a shell does.
    /// </summary>
    public static void Write(string path, Action<Stream> write)
    {
        NoFolder(path);
        PlaceTrouble.Writing(path, () => WriteTo(path, write));
    }

    /// <summary>Whether there is a place to write to, told before work is done that would be lost.</summary>
    /// <exception cref="Stop">It is a folder, or there is no folder for it.</exception>
    public static void Demand(string path)
    {
        NoFolder(path);
        if (!IsDevice(path))
        {
            PlaceTrouble.Writing(path, () => FolderOf(path, Place.Real(path)));
        }
    }

    private static void NoFolder(string path)
    {
        if (Directory.Exists(path))
        {
            throw new Stop(ExitCode.FileTrouble, $"{path}: error: this is a folder; name a file to write");
        }
    }

    // A pipe or a device is written to, not replaced.
    private static bool IsDevice(string path) =>
        OperatingSystem.IsLinux() && LinuxCalls.TargetOf(path) is { IsRegularFile: false, IsFolder: false };

    private static string FolderOf(string path, string place)
    {
        var folder = Path.GetDirectoryName(place)!;
        return Directory.Exists(folder) ? folder : throw new Stop(
            ExitCode.FileTrouble,
            $"{path}: error: there is no folder {Path.GetDirectoryName(Path.GetFullPath(path))}; make it first, or name another");
    }

    private static void WriteTo(string path, Action<Stream> write)
    {
        if (IsDevice(path))
        {
            using var device = new FileStream(path, FileMode.Open, FileAccess.Write);
            write(device);
            return;
        }

        var place = Place.Real(path);
        Replace(FolderOf(path, place), place, write);
    }

    private static void Replace(string folder, string path, Action<Stream> write)
    {
        var beside = Path.Combine(folder, "." + Path.GetFileName(path) + "." + Path.GetRandomFileName());
        using var undoing = Interruption.Undoing(() => Delete(beside));
        try
        {
            using (var stream = new FileStream(beside, FileMode.CreateNew, FileAccess.Write))
            {
                KeepMode(path, beside);
                write(stream);
            }

            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            Delete(beside);
        }
    }

    /// <summary>A path names one of some files, links resolved.</summary>
    public static bool Is(string path, IEnumerable<string> files) =>
        files.Select(Place.Real).Contains(Place.Real(path), StringComparer.Ordinal);

    private static void Delete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // What led here is the trouble to tell.
        }
    }

    // Who may read a file that is replaced may read what replaces it, and nobody else.
    private static void KeepMode(string path, string beside)
    {
        if (!OperatingSystem.IsWindows() && File.Exists(path))
        {
            File.SetUnixFileMode(beside, File.GetUnixFileMode(path));
        }
    }
}
