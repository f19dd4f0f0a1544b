namespace BridgeForm.Cli.Files;

/// <summary>
/// A folder of results that is replaced whole or not at all: files are written into a hidden folder beside their places and
/// moved into them when all are there; what was there before is put back when a move fails.
/// </summary>
internal sealed class OutputFolder : IDisposable
{
    private readonly string _folder;
    private readonly string _staging;
    private readonly bool _isNew;
    private readonly List<string> _names = [];
    private readonly HashSet<string> _filled = new(StringComparer.Ordinal);
    private readonly ManualResetEventSlim _othersWritten = new();
    private bool _isStuck;

    /// <summary>Prepares to write into a folder, which is made when it is not there.</summary>
    public OutputFolder(string folder)
    {
        _folder = Path.GetFullPath(folder);
        if (File.Exists(_folder))
        {
            throw new Stop(ExitCode.FileTrouble, $"{folder}: error: this is a file; name a folder to write into");
        }

        _isNew = !Directory.Exists(_folder);
        _staging = Path.Combine(_folder, ".bridgeform-" + Environment.ProcessId.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Directory.CreateDirectory(_staging);
    }

    /// <summary>Relative names written so far, sorted, with forward slashes.</summary>
    public IReadOnlyList<string> Names
    {
        get
        {
            lock (_names)
            {
                return [.. _names.Order(StringComparer.Ordinal)];
            }
        }
    }

    /// <summary>Every file but the one that lists them is written, or none will be any more.</summary>
    public void OthersAreWritten() => _othersWritten.Set();

    /// <summary><see cref="Names"/>, when <see cref="OthersAreWritten"/> was told; waits for it.</summary>
    public IReadOnlyList<string> NamesOfOthers()
    {
        _othersWritten.Wait();
        return Names;
    }

    /// <summary>A folder in which this run replaces every file of a piece or board; null for none.</summary>
    public void Fill(string? folder)
    {
        if (folder is not null)
        {
            _filled.Add(folder);
        }
    }

    /// <summary>Writes one file; <paramref name="name"/> is relative, with forward slashes. May be called from several threads.</summary>
    public void Write(string name, Action<Stream> write)
    {
        var path = Path.Combine(_staging, "new", name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using (var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, 1 << 16))
        {
            write(stream);
        }

        lock (_names)
        {
            _names.Add(name);
        }
    }

    /// <summary>
    /// Moves everything into place. Files of an earlier run named like a piece's or a board's, in a folder that this run fills, go away. When something cannot be put back, the message says where it lies.
    /// </summary>
    public void Commit()
    {
        var undo = new Stack<(string From, string To)>();
        try
        {
            foreach (var stale in Stale())
            {
                Move(stale, Path.Combine(_staging, "old", Path.GetRelativePath(_folder, stale)), undo);
            }

            foreach (var name in Names)
            {
                var final = Path.Combine(_folder, name);
                if (Directory.Exists(final))
                {
                    throw new IOException($"{final} is a folder where a file must go; move it away");
                }

                if (File.Exists(final))
                {
                    Move(final, Path.Combine(_staging, "old", name), undo);
                }

                Move(Path.Combine(_staging, "new", name), final, undo);
            }
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            _isStuck = !PutBack(undo);
            if (_isStuck)
            {
                throw new IOException($"{trouble.Message} Not all earlier files could be put back; they lie in {Path.Combine(_staging, "old")}", trouble);
            }

            throw;
        }
    }

    /// <summary>Removes the hidden folder, unless it holds what could not be put back, and the folder itself when nothing is in it.</summary>
    public void Dispose()
    {
        try
        {
            if (!_isStuck)
            {
                Directory.Delete(_staging, recursive: true);
            }

            if (_isNew && !Directory.EnumerateFileSystemEntries(_folder).Any())
            {
                Directory.Delete(_folder);
            }
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // A hidden folder that cannot be removed harms nobody; the trouble that led here is the one to tell.
        }
    }

    /// <summary>Undoes moves, last first; goes on after one that fails. False when any failed.</summary>
    private static bool PutBack(Stack<(string From, string To)> undo)
    {
        var isWhole = true;
        while (undo.TryPop(out var step))
        {
            try
            {
                File.Move(step.To, step.From, overwrite: true);
            }
            catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
            {
                isWhole = false;
            }
        }

        return isWhole;
    }

    private static void Move(string from, string to, Stack<(string From, string To)> undo)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        File.Move(from, to, overwrite: true);
        undo.Push((from, to));
    }

    private IEnumerable<string> Stale()
    {
        var written = _names.ToHashSet(StringComparer.Ordinal);
        return _filled
            .Select(folder => Path.Combine(_folder, folder))
            .Where(Directory.Exists)
            .SelectMany(Directory.EnumerateFiles)
            .Where(file => IsPieceFile(Path.GetFileName(file))
                && !written.Contains(Path.GetRelativePath(_folder, file).Replace('\\', '/')))
            .ToList();
    }

    /// <summary>
    /// A piece's or a board's own file: a mark (letter, number, hand) or <c>board-</c> and a number, as DXF or PDF. Spelled
    /// out: a regular expression costs a short run a tenth of its time.
    /// </summary>
    private static bool IsPieceFile(string name)
    {
        const string Board = "board-";
        var ending = Path.GetExtension(name);
        if (ending is not (".dxf" or ".pdf"))
        {
            return false;
        }

        var mark = name.AsSpan(0, name.Length - ending.Length);
        var digits = mark.StartsWith(Board, StringComparison.Ordinal)
            ? mark[Board.Length..]
            : mark.Length > 1 && char.IsAsciiLetterUpper(mark[0]) ? mark[1..].TrimEnd("LR") : [];
        return digits.Length > 0 && digits.IndexOfAnyExceptInRange('0', '9') < 0;
    }
}
