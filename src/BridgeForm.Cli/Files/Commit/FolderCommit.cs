using System.Collections.Immutable;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>How gathered files take the places of earlier ones.</summary>
/// <param name="Entry">The folder.</param>
/// <param name="Staging">The hidden folder in it, with the new files.</param>
/// <param name="Survey">What was in the folder just before.</param>
/// <param name="Made">New files.</param>
/// <param name="Staying">Earlier files of kinds that this run does not make.</param>
/// <param name="Gone">Earlier files of kinds that this run makes, and which it did not make.</param>
internal sealed record FolderCommit(
    FolderEntry Entry,
    string Staging,
    FolderSurvey Survey,
    ImmutableArray<ListedFile> Made,
    ImmutableArray<ListedFile> Staying,
    ImmutableArray<ListedFile> Gone)
{
    private ImmutableArray<Move> _moves = [];

    /// <summary>Looks at the folder.</summary>
    public static FolderCommit Prepare(
        FolderEntry entry, string staging, ImmutableArray<ListedFile> made, ImmutableHashSet<string> kinds, FolderSurvey earlier)
    {
        var survey = FolderSurvey.Look(entry.Path, earlier);
        var names = made.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        var others = survey.Listed.Values.Where(f => !names.Contains(f.Name) && !survey.Missing.Contains(f.Name)).ToLookup(
            f => kinds.Contains(f.Kind));
        return new FolderCommit(entry, staging, survey, made, [.. others[false]], [.. others[true]]);
    }

    /// <summary>The folder holds nothing but what earlier runs made, and may become another one.</summary>
    public bool MayExchange => Survey.IsOurs && !Entry.IsLink && Exchange.IsPossible(Entry.Path, Staging);

    /// <summary>Names at which this run changes something.</summary>
    public IEnumerable<string> Touched => [.. Made.Concat(Gone).Select(f => f.Name), Manifest.FileName];

    /// <summary>Files of the user's that get another name, once the moves are planned.</summary>
    public ImmutableArray<(string Name, string Now)> Kept => [.. _moves.Where(m => m.Kind is MoveKind.Keep).Select(m => (m.Name, m.Mark))];

    private string New => Path.Combine(Staging, StagingNames.New);

    /// <summary>Writes the manifest of the folder as it will be, among the new files.</summary>
    public void WriteManifest()
    {
        using var stream = new FileStream(Path.Combine(New, Manifest.FileName), FileMode.Create, FileAccess.Write);
        new Manifest([.. Made, .. Staying]).Write(stream);
    }

    /// <summary>By exchange, step by step.</summary>
    public IEnumerable<Action> ExchangeSteps(bool atOnce) => Exchange.Steps(Entry.Path, Staging, Entry.Held, atOnce)
        .Prepend(Complete)
        .Concat(Later(() => Exchange.Clearing(Entry.Path, Staging, Survey)));

    /// <summary>Exchanges the folders; false when that cannot be done, and then everything is as it was.</summary>
    public bool TryExchange()
    {
        try
        {
            Complete();
            foreach (var step in Exchange.Steps(Entry.Path, Staging, Entry.Held, OperatingSystem.IsLinux()))
            {
                step();
            }
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            Exchange.TakeBack(Entry.Path, Staging);
            return false;
        }

        Clear();
        return true;
    }

    /// <summary>By moves, step by step: the list is written, the moves are done, the list is taken away.</summary>
    public IEnumerable<Action> MoveSteps()
    {
        Likeness.OfFiles(Entry.Path, New, Made);
        var manifest = new ListedFile(Manifest.FileName, "", Manifest.HashOf(Path.Combine(New, Manifest.FileName)));
        _moves = MovePlan.Plan(Entry.Path, Survey, [.. Made, manifest], Gone);
        return
        [
            () => Journal.Write(Staging, _moves),
            .. _moves.Select(move => (Action)(() => move.Do(Entry.Path, Staging))),
            () => Journal.Remove(Staging),
        ];
    }

    /// <summary>Moves files one by one; when one cannot be moved, all go back.</summary>
    /// <exception cref="IOException">What could not be done, and where earlier files lie that could not be put back.</exception>
    public void ByMoves()
    {
        try
        {
            foreach (var step in MoveSteps())
            {
                step();
            }
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            PutBack(trouble);
            throw;
        }

        foreach (var folder in Gone.Select(f => Path.GetDirectoryName(f.Name)!).Where(f => f.Length > 0).Distinct(StringComparer.Ordinal))
        {
            Place.RemoveIfEmpty(Path.Combine(Entry.Path, folder));
        }
    }

    private static IEnumerable<Action> Later(Func<IEnumerable<Action>> steps)
    {
        foreach (var step in steps())
        {
            yield return step;
        }
    }

    /// <summary>The new folder becomes a whole one: with the files that stay, and with the rights of the old.</summary>
    private void Complete()
    {
        foreach (var file in Staying)
        {
            var name = Path.Combine(New, file.Name);
            Directory.CreateDirectory(Path.GetDirectoryName(name)!);
            if (!OperatingSystem.IsLinux() || !LinuxCalls.TryLink(Path.Combine(Entry.Path, file.Name), name))
            {
                File.Copy(Path.Combine(Entry.Path, file.Name), name, overwrite: true);
            }
        }

        Likeness.OfFiles(Entry.Path, New, Made);
        Likeness.OfFolders(Entry.Path, New);
    }

    /// <summary>The old folder goes. The new one is in place: what cannot be removed now is left to the next run.</summary>
    private void Clear()
    {
        try
        {
            foreach (var step in Exchange.Clearing(Entry.Path, Staging, Survey))
            {
                step();
            }
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // Nothing of the user's is in it but what has just come back.
        }
    }

    private void PutBack(Exception trouble)
    {
        try
        {
            Journal.RollBack(Entry.Path, Staging);
        }
        catch (Exception second) when (second is IOException or UnauthorizedAccessException)
        {
            throw new IOException(
                $"{trouble.Message}. Not all earlier files could be put back: {second.Message}. They lie in "
                    + $"{Path.Combine(Staging, StagingNames.Old)}; the next run tries again",
                trouble);
        }
    }
}
