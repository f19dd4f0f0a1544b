using BridgeForm.Cli.Streams;
using Microsoft.Win32.SafeHandles;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>
/// One run at a time in a folder. The lock is on the folder itself where the system can do that, so that it holds through any
/// mount, leaves no file and ends with the process; elsewhere it is an open file that goes away when it is closed.
/// </summary>
internal sealed class FolderLock : IDisposable
{
    private readonly List<IDisposable> _held = [];

    private FolderLock(IDisposable first) => _held.Add(first);

    /// <summary>Locks a folder that is there; null while another run has it, or when it has gone or changed places meanwhile.</summary>
    public static FolderLock? Try(string folder)
    {
        if (OperatingSystem.IsLinux())
        {
            var error = LinuxCalls.TryLock(folder, out var open);
            if (error == 0 && IsStill(open, folder))
            {
                return new FolderLock(open);
            }

            open.Dispose();
            if (error is 0 or LinuxCalls.WouldBlock or LinuxCalls.Missing)
            {
                return null;
            }
        }

        return TryFile(folder) is { } file ? new FolderLock(file) : null;
    }

    /// <summary>Locks also the folder that is about to take the first one's name: nobody gets in before this run is done.</summary>
    public void AlsoHold(string folder)
    {
        if (OperatingSystem.IsLinux())
        {
            _ = LinuxCalls.TryLock(folder, out var open);
            _held.Add(open);
        }
    }

    public void Dispose()
    {
        _held.ForEach(h => h.Dispose());
        _held.Clear();
    }

    private static bool IsStill(SafeFileHandle open, string folder) =>
        LinuxCalls.NodeOf(open) is { } held && LinuxCalls.NodeAt(folder) is { } named && held.IsSameAs(named);

    /// <summary>Beside the folder, so that the folder can be renamed; in it where the place beside it is not to be written.</summary>
    private static FileStream? TryFile(string folder)
    {
        foreach (var path in (string[])[StagingNames.Beside(folder) + "lock", Path.Combine(folder, StagingNames.Prefix + "lock")])
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (UnauthorizedAccessException)
            {
                // The next place may be one to write in.
            }
            catch (IOException)
            {
                return null;
            }
        }

        throw new UnauthorizedAccessException($"{folder} cannot be locked: nothing can be written in it or beside it");
    }
}
