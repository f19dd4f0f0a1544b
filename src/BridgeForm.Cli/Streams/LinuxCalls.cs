using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace BridgeForm.Cli.Streams;

/// <summary>What Linux can do with folders that .NET has no name for. Never called on another system.</summary>
internal static partial class LinuxCalls
{
    /// <summary>There is no such file or folder (ENOENT).</summary>
    public const int Missing = 2;

    /// <summary>What stands in the way of a lock that is held already (EWOULDBLOCK).</summary>
    public const int WouldBlock = 11;

    /// <summary>The file system cannot do this (EINVAL).</summary>
    public const int Invalid = 22;

    private const int ReadOnly = 0;
    private const int CloseOnExec = 0x80000;
    private const int CurrentFolder = -100;
    private const int EmptyPath = 0x1000;
    private const int NoFollow = 0x100;
    private const uint BasicStats = 0x7FF;
    private const int LockExclusive = 2;
    private const int LockAtOnce = 4;
    private const uint NoReplace = 1;
    private const uint ExchangeNames = 2;
    private const int GetDescriptorFlags = 1;

    /// <summary>Opens a file or folder and locks it until it is closed or the process ends. 0, or the number of the error.</summary>
    public static int TryLock(string path, out SafeFileHandle open)
    {
        open = new SafeFileHandle(Open(path, ReadOnly | CloseOnExec, 0), ownsHandle: true);
        return !open.IsInvalid && Flock(open, LockExclusive | LockAtOnce) == 0 ? 0 : Marshal.GetLastPInvokeError();
    }

    /// <summary>What a path names, links not followed; null when there is nothing.</summary>
    public static Node? NodeAt(string path) => Statx(CurrentFolder, path, NoFollow, BasicStats, out var node) == 0 ? node : null;

    /// <summary>What a path leads to, links followed; null when there is nothing.</summary>
    public static Node? TargetOf(string path) => Statx(CurrentFolder, path, 0, BasicStats, out var node) == 0 ? node : null;

    /// <summary>What is open.</summary>
    public static Node? NodeOf(SafeFileHandle open) =>
        Statx((int)open.DangerousGetHandle(), "", EmptyPath, BasicStats, out var node) == 0 ? node : null;

    /// <summary>Lets two folders change places at once. 0, or the number of the error.</summary>
    public static int TryExchange(string one, string other) =>
        Renameat2(CurrentFolder, one, CurrentFolder, other, ExchangeNames) == 0 ? 0 : Marshal.GetLastPInvokeError();

    /// <summary>Renames to a name that nothing has. 0, or the number of the error.</summary>
    public static int TryMoveToFree(string from, string to) =>
        Renameat2(CurrentFolder, from, CurrentFolder, to, NoReplace) == 0 ? 0 : Marshal.GetLastPInvokeError();

    /// <summary>Gives a file a second name. False when the file system cannot.</summary>
    public static bool TryLink(string existing, string name) => Link(existing, name) == 0;

    /// <summary>The flags of a descriptor, -1 when it is closed.</summary>
    public static int FlagsOf(int descriptor) => Fcntl(descriptor, GetDescriptorFlags, 0);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Open(string path, int flags, int mode);

    [LibraryImport("libc", EntryPoint = "flock", SetLastError = true)]
    private static partial int Flock(SafeFileHandle open, int operation);

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Statx(int folder, string path, int flags, uint mask, out Node node);

    [LibraryImport("libc", EntryPoint = "renameat2", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Renameat2(int fromFolder, string from, int toFolder, string to, uint flags);

    [LibraryImport("libc", EntryPoint = "link", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Link(string existing, string name);

    [LibraryImport("libc", EntryPoint = "fcntl", SetLastError = true)]
    private static partial int Fcntl(int descriptor, int command, int argument);

    /// <summary>The part of <c>struct statx</c> that matters here; the same on every processor.</summary>
    [StructLayout(LayoutKind.Explicit, Size = 256)]
    internal readonly struct Node
    {
        private const ulong MountRoot = 0x2000;
        private const ushort TypeMask = 0xF000;
        private const ushort RegularFile = 0x8000;
        private const ushort Folder = 0x4000;

        [FieldOffset(8)]
        private readonly ulong _attributes;

        [FieldOffset(20)]
        private readonly uint _owner;

        [FieldOffset(28)]
        private readonly ushort _mode;

        [FieldOffset(32)]
        private readonly ulong _number;

        [FieldOffset(136)]
        private readonly uint _deviceMajor;

        [FieldOffset(140)]
        private readonly uint _deviceMinor;

        /// <summary>Something is mounted here.</summary>
        public bool IsMountPoint => (_attributes & MountRoot) != 0;

        /// <summary>Number of the user it belongs to.</summary>
        public uint Owner => _owner;

        /// <summary>A file of bytes: no device, pipe, folder or link.</summary>
        public bool IsRegularFile => (_mode & TypeMask) == RegularFile;

        /// <summary>A folder.</summary>
        public bool IsFolder => (_mode & TypeMask) == Folder;

        /// <summary>The same file or folder, whatever its name.</summary>
        public bool IsSameAs(Node other) =>
            _number == other._number && _deviceMajor == other._deviceMajor && _deviceMinor == other._deviceMinor;
    }
}
