using System.Text;
using BridgeForm.Cli.Files;

namespace BridgeForm.Tests.Cli.Commit;

/// <summary>A folder with the files of one run, and a second run that is about to replace them: two small sets in three kinds.</summary>
internal sealed class TwoRuns : IDisposable
{
    /// <summary>Kinds and names of the run that is there: P2 will be gone.</summary>
    private static readonly (string Kind, string Name)[] s_first =
        [
            ("report", "report.json"), ("tables", "a.csv"), ("tables", "b.csv"), ("profiles", "profiles/P1.dxf"),
            ("profiles", "profiles/P2.dxf"), ("boards", "boards/board-1.dxf"),
        ];

    /// <summary>Of the run that comes: P3 and a template are new.</summary>
    private static readonly (string Kind, string Name)[] s_second =
        [
            ("report", "report.json"), ("tables", "a.csv"), ("tables", "b.csv"), ("profiles", "profiles/P1.dxf"),
            ("profiles", "profiles/P3.dxf"), ("templates", "templates/P3.pdf"),
        ];

    private static readonly string[] s_all = ["report", "tables", "profiles", "boards", "templates"];

    private readonly CommandRun _run = new();

    public TwoRuns(params string[] users)
    {
        using (var output = Begin("first", s_first, s_all))
        {
            output.Commit();
        }

        foreach (var name in users)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(_run.Path("out/" + name))!);
            _run.Write("out/" + name, "the user's " + name);
        }

        Old = State();
    }

    public string Folder => _run.Path("out");

    /// <summary>Every file with its text before the second run, the folder's own and the user's.</summary>
    public SortedDictionary<string, string> Old { get; }

    /// <summary>The second run, everything written but nothing in its place.</summary>
    public OutputFolder Second(params string[] kinds) => Begin("second", s_second, kinds.Length > 0 ? kinds : s_all);

    /// <summary>What stands in the folder after an undisturbed second run.</summary>
    public SortedDictionary<string, string> Whole(params string[] kinds)
    {
        using var other = new TwoRuns([.. Old.Where(f => f.Value.StartsWith("the user's", StringComparison.Ordinal)).Select(f => f.Key)]);
        using (var output = other.Second(kinds))
        {
            output.Commit();
        }

        return other.State();
    }

    /// <summary>Every file below the folder with its text; hidden ones of the program are passed over.</summary>
    public SortedDictionary<string, string> State()
    {
        var files = Directory.Exists(Folder) ? Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories) : [];
        return new SortedDictionary<string, string>(
            files.Select(f => Path.GetRelativePath(Folder, f).Replace('\\', '/'))
                .Where(f => !f.StartsWith(".bridgeform-", StringComparison.Ordinal))
                .ToDictionary(f => f, f => File.ReadAllText(Path.Combine(Folder, f))),
            StringComparer.Ordinal);
    }

    /// <summary>Names of everything hidden, in the folder and beside it.</summary>
    public IEnumerable<string> Hidden() => Directory
        .EnumerateFileSystemEntries(_run.Folder, ".*", SearchOption.AllDirectories)
        .Select(f => Path.GetRelativePath(_run.Folder, f));

    public void Dispose() => _run.Dispose();

    private OutputFolder Begin(string text, (string Kind, string Name)[] files, string[] kinds)
    {
        var output = new OutputFolder(Folder, kinds, []);
        foreach (var (kind, name) in files.Where(f => kinds.Contains(f.Kind)))
        {
            output.Write(kind, name, stream => stream.Write(Encoding.UTF8.GetBytes($"{text} {name}")));
        }

        return output;
    }
}
