using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files;

/// <summary>What the system says against a place that the user named, in people's words and with what would be right.</summary>
internal static class PlaceTrouble
{
    private const string NoFolder = "the folder it would lie in is not there, or takes no files; name another place";
    private const string Full = "the medium is full; make room on it, or name a place on another";
    private const string ReadOnly = "the medium is for reading only; name a place on another";
    private const string Faulty = "the system cannot read or write here; name another place, or look whether the medium is whole";
    private const string Busy = "another program has the file open; close it there, then run this again";
    private const string IsFolder = "this is a folder; name a file";
    private const string TooLong = "the path, or a name in it, is longer than the system takes; name a shorter one";

    private const string NotAllowed = "you may not write here; name another place, or have its owner let you";
    private const int WindowsFacility = unchecked((int)0xFFFF8007);

    /// <summary>Reads at a place; trouble with it ends the run.</summary>
    public static T Reading<T>(string place, Func<T> read) =>
        Told(place, "you may not read this; name another file, or have its owner let you", read);

    /// <summary>Writes at a place; trouble with it ends the run.</summary>
    public static T Writing<T>(string place, Func<T> write) => Told(place, NotAllowed, write);

    /// <summary>Writes at a place; trouble with it ends the run.</summary>
    public static void Writing(string place, Action write) => Writing(place, () =>
    {
        write();
        return true;
    });

    /// <summary>The system's trouble in people's words; a trouble that is not the system's has words of its own.</summary>
    public static string Words(Exception trouble) => Known(trouble, NotAllowed) ?? trouble.Message;

    private static T Told<T>(string place, string notAllowed, Func<T> action)
    {
        try
        {
            return action();
        }
        catch (Exception trouble) when (Known(trouble, notAllowed) is { } words)
        {
            throw new Stop(ExitCode.FileTrouble, $"{Within(place, trouble.Message)}: error: {words}");
        }
    }

    private static string? Known(Exception trouble, string notAllowed) => trouble switch
    {
        UnauthorizedAccessException => notAllowed,
        PathTooLongException => TooLong,
        FileNotFoundException or DirectoryNotFoundException => NoFolder,
        IOException when OperatingSystem.IsWindows() =>
            (trouble.HResult >> 16) == WindowsFacility ? OfWindows(trouble.HResult & 0xFFFF) : null,
        IOException => OfUnix(trouble.HResult),
        _ => null,
    };

    // Numbers of Windows' winerror.h: a full disk, a full handle, write protection, sharing, a checksum, a device.
    private static string? OfWindows(int code) => code switch
    {
        112 or 39 => Full,
        19 => ReadOnly,
        32 => Busy,
        23 or 1117 => Faulty,
        _ => null,
    };

    // Numbers of errno.h: ENOSPC; EDQUOT of Linux and of macOS; EROFS; EAGAIN, which .NET has for a file that is locked; EIO; EISDIR.
    private static string? OfUnix(int code) => code switch
    {
        28 or 122 or 69 => Full,
        30 => ReadOnly,
        11 => Busy,
        5 => Faulty,
        21 => IsFolder,
        _ => null,
    };

    /// <summary>
    /// The place, or what the system names in it; names that begin with a dot are this program's own and say nothing to people.
    /// </summary>
    private static string Within(string place, string message)
    {
        if (message.Split('\'') is not [_, var named, _, ..])
        {
            return place;
        }

        var root = Place.Real(place) + Path.DirectorySeparatorChar;
        return named.StartsWith(root, StringComparison.Ordinal)
            && !named[(root.Length - 1)..].Contains(Path.DirectorySeparatorChar + ".", StringComparison.Ordinal)
            ? Path.Combine(place, named[root.Length..])
            : place;
    }
}
