using System.Collections.Immutable;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>What of the user's a run would have to remove or overwrite: it does neither, and says so.</summary>
internal static class Refusal
{
    /// <summary>Stops when a file that this run replaces or takes away was changed after it was made.</summary>
    public static void OfChanged(string given, FolderSurvey survey, ImmutableHashSet<string> kinds)
    {
        var changed = survey.Changed.Where(name => kinds.Contains(survey.Listed[name].Kind)).Order(StringComparer.Ordinal);
        StopAt(changed.Select(name => $"{Path.Combine(given, name)}: error: {Changed}"));
    }

    /// <summary>Stops when something that is not to be moved stands where a file must go.</summary>
    /// <param name="given">The folder as the user named it.</param>
    /// <param name="folder">Its path, links resolved.</param>
    /// <param name="survey">What is in it.</param>
    /// <param name="names">Of the files that come.</param>
    /// <param name="sources">Files that the run read, links resolved.</param>
    public static void OfOccupied(
        string given, string folder, FolderSurvey survey, IEnumerable<string> names, ImmutableHashSet<string> sources)
    {
        StopAt(names
            .Select(name => (Name: FolderSurvey.BlockedParent(folder, name) ?? name, Why: Why(folder, survey, name, sources)))
            .Where(r => r.Why is not null)
            .DistinctBy(r => r.Name, StringComparer.Ordinal)
            .Select(r => $"{Path.Combine(given, r.Name)}: error: {r.Why}"));
    }

    private const string Changed = "this file was changed after it was made, so it is yours; rename or delete it, then make again";

    private static string? Why(string folder, FolderSurvey survey, string name, ImmutableHashSet<string> sources)
    {
        var path = Path.Combine(folder, name);
        return FolderSurvey.BlockedParent(folder, name) is not null ? "this is no folder, and one must go here; move it away, then make again"
            : Place.At(path) is PlaceKind.Folder ? "this is a folder where a file must go; move it away, then make again"
            : sources.Contains(Place.Real(path)) || sources.Contains(path) ? "the bridge is read from this file, and a file of this name must be written; name another folder with -o"
            : survey.Changed.Contains(name) ? Changed
            : null;
    }

    private static void StopAt(IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length > 0)
        {
            throw new Stop(ExitCode.FileTrouble, all);
        }
    }
}
