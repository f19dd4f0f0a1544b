using System.Collections.Immutable;
using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files;

/// <summary>
/// A folder of results that is replaced whole or not at all: files are gathered in a hidden folder and take their places when
/// all are there. What the user has put there stays as it is.
/// </summary>
internal sealed class OutputFolder : IDisposable
{
    private readonly string _given;
    private readonly FolderEntry _entry;
    private readonly string _staging;
    private readonly ImmutableHashSet<string> _kinds;
    private readonly ImmutableHashSet<string> _sources;
    private readonly List<ListedFile> _files = [];
    private readonly ManualResetEventSlim _othersWritten = new();
    private readonly IDisposable _undoing;
    private readonly FolderSurvey _before;
    private bool _isCommitted;

    /// <summary>Prepares to write into a folder, which is made when it is not there; waits for another run in it.</summary>
    /// <param name="folder">As the user named it.</param>
    /// <param name="kinds">What is made: earlier files of these kinds go.</param>
    /// <param name="sources">Files that the run read; none of them is touched.</param>
    public OutputFolder(string folder, IEnumerable<string> kinds, IEnumerable<string> sources)
    {
        (_given, _kinds, _sources) = (folder, [.. kinds], [.. sources.Select(Place.Real)]);
        _entry = FolderEntry.Into(folder);
        _staging = Path.Combine(_entry.Path, StagingNames.Fresh());
        _undoing = Interruption.Undoing(CleanUp);
        try
        {
            _before = FolderSurvey.Look(_entry.Path);
            Refusal.OfChanged(folder, _before, _kinds);
            Interruption.Whole(() => Directory.CreateDirectory(Path.Combine(_staging, StagingNames.New)));
        }
        catch
        {
            Dispose();
            throw;
        }
    }

    /// <summary>Relative names written so far, sorted, with forward slashes.</summary>
    public IReadOnlyList<string> Names => [.. Files().Select(f => f.Name)];

    /// <summary>Files of the user's that were in the way, and the names they have now; none before the commit.</summary>
    public ImmutableArray<(string Name, string Now)> Kept { get; private set; } = [];

    /// <summary>Every file but the one that lists them is written, or none will be any more.</summary>
    public void OthersAreWritten() => _othersWritten.Set();

    /// <summary><see cref="Names"/>, when <see cref="OthersAreWritten"/> was told; waits for it.</summary>
    public IReadOnlyList<string> NamesOfOthers()
    {
        _othersWritten.Wait();
        return Names;
    }

    /// <summary>Writes one file; <paramref name="name"/> is relative, with forward slashes. May be called from several threads.</summary>
    public void Write(string kind, string name, Action<Stream> write)
    {
        var path = Path.Combine(_staging, StagingNames.New, name);
        FileStream? stream = null;
        Interruption.Whole(() =>
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, 1 << 16);
        });
        using (stream!)
        {
            write(stream!);
        }

        var file = new ListedFile(name, kind, Manifest.HashOf(path));
        lock (_files)
        {
            _files.Add(file);
        }
    }

    /// <summary>Everything takes its place, or nothing does.</summary>
    public void Commit() => Interruption.Whole(() =>
    {
        var commit = Plan();
        if (commit.MayExchange)
        {
            _isCommitted = commit.TryExchange();
        }

        if (!_isCommitted)
        {
            commit.ByMoves();
            _isCommitted = true;
        }

        Kept = commit.Kept;
    });

    /// <summary>Looks at the folder as it is now, stops where the user's files are in the way, and writes the manifest.</summary>
    internal FolderCommit Plan()
    {
        var commit = FolderCommit.Prepare(_entry, _staging, Files(), _kinds, _before);
        Refusal.OfChanged(_given, commit.Survey, _kinds);
        Refusal.OfOccupied(_given, _entry.Path, commit.Survey, commit.Touched, _sources);
        commit.WriteManifest();
        return commit;
    }

    /// <summary>Removes the hidden folder, unless it holds what could not be put back, and folders that were made for nothing.</summary>
    public void Dispose()
    {
        Interruption.Whole(CleanUp);
        _undoing.Dispose();
    }

    /// <summary>Gives up the lock and leaves everything else, as a kill does.</summary>
    internal void Abandon()
    {
        _entry.Held.Dispose();
        _undoing.Dispose();
    }

    private ImmutableArray<ListedFile> Files()
    {
        lock (_files)
        {
            return [.. _files.OrderBy(f => f.Name, StringComparer.Ordinal)];
        }
    }

    private void CleanUp()
    {
        try
        {
            if (Directory.Exists(_staging) && !Journal.Exists(_staging))
            {
                Place.RemoveHidden(_staging);
            }

            Recovery.RemoveBeside(Exchange.Beside(_entry.Path, _staging), _entry.Path);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // The next run takes it away; the trouble that led here is the one to tell.
        }

        if (!_isCommitted)
        {
            FolderEntry.Unmake(_entry.Made);
        }

        _entry.Held.Dispose();
    }
}
