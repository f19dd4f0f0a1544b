using System.Diagnostics;
using System.Globalization;
using BridgeForm.Cli.Files.Commit;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>What a killed run found in its folder.</summary>
internal enum KillGround
{
    /// <summary>Nothing but files of earlier runs: the folder is exchanged whole.</summary>
    Ours,

    /// <summary>A file of the user's in the folder and in each folder in it: files are moved one by one.</summary>
    Shared,

    /// <summary>The same, and only some kinds are made.</summary>
    SharedOnly,

    /// <summary>Nothing but files of earlier runs, and only some kinds are made.</summary>
    OursOnly,
}

/// <summary>
/// A folder of results between two designs, in which real runs of the command line are killed while they put their files in
/// place: at one call to the system of all that the commit makes, where strace is there to count them, else by time. Which
/// design the folder holds afterwards is known by its bytes.
/// </summary>
internal sealed class KillTrial : IDisposable
{
    private const string All = "profiles,router,tables,report";
    private const string Some = "profiles,tables";

    /// <summary>What changes names; a question mark for those that not every processor's system has.</summary>
    private const string Calls = "renameat2,?rename,?renameat,?unlink,?unlinkat,?rmdir,?link,?linkat";

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);
    private static readonly string[] Users = ["mine.txt", "profiles/mine.txt", "router/mine.txt"];

    private readonly string _root = Directory.CreateTempSubdirectory("bridgeform-kill-").FullName;
    private readonly string _kinds;
    private readonly bool _isShared;
    private readonly SortedDictionary<string, string>[] _whole;
    private readonly TimeSpan _window;
    private readonly (string Name, int Number)[] _calls = [];
    private readonly bool _isCounted;
    private int _design;

    /// <summary>Makes both designs undisturbed, to know what whole folders are and how long a commit takes.</summary>
    /// <param name="ground">What is in the folder.</param>
    /// <param name="isCounted">Aim by calls, with strace.</param>
    public KillTrial(KillGround ground, bool isCounted)
    {
        _isCounted = isCounted;
        (_kinds, _isShared) =
            (ground is KillGround.Ours or KillGround.Shared ? All : Some, ground is KillGround.Shared or KillGround.SharedOnly);
        File.WriteAllText(Project(0), Text("6 %", "3 ft"));
        File.WriteAllText(Project(1), Text("7 %", "3 ft 3 in"));
        Watched(Begin(0, All));
        if (_isShared)
        {
            foreach (var name in Users)
            {
                File.WriteAllText(Path.Combine(Folder, name), "the user's " + name);
            }
        }

        Watched(Begin(1, _kinds, isCounted ? Counting() : []));
        var second = State();
        _calls = isCounted ? CountedCalls() : [];
        _window = Watched(Begin(0, _kinds));
        _whole = [State(), second];
    }

    /// <summary>strace is installed and may trace.</summary>
    public static bool CanCount()
    {
        try
        {
            using var trace = Process.Start(
                new ProcessStartInfo(
                    "strace", ["-f", "-qq", "-o", "/dev/null", "true"])
                { RedirectStandardError = true, UseShellExecute = false })!;
            trace.WaitForExit();
            return trace.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    /// <summary>How a commit is measured.</summary>
    public string Window => _isCounted
        ? string.Create(CultureInfo.InvariantCulture, $"{_calls.Length} calls")
        : string.Create(CultureInfo.InvariantCulture, $"{_window.TotalMilliseconds:0} ms");

    private string Folder => Path.Combine(_root, "out");

    /// <summary>
    /// Begins to make the other design, kills the run at a share of its commit (0: as it begins), and says what came of it.
    /// </summary>
    public KillOutcome Kill(double share)
    {
        var (before, next) = (_whole[_design], 1 - _design);
        if (_isCounted)
        {
            using var traced = Begin(next, _kinds, Killing(_calls[(int)(_calls.Length * share)]));
            traced.WaitForExit();
        }
        else
        {
            using var run = Begin(next, _kinds);
            KillByTime(run, share);
        }

        var isCut = Recovery.IsNeeded(Folder);
        var atOnce = State();
        FolderEntry.Recover(Folder);
        var after = State();
        _design = after.SequenceEqual(_whole[next]) ? next : _design;
        return new KillOutcome(
            IsCut: isCut,
            IsWholeAtOnce: atOnce.SequenceEqual(before) || atOnce.SequenceEqual(_whole[next]),
            IsWholeAfterwards: after.SequenceEqual(_whole[_design]) && !Recovery.IsNeeded(Folder),
            AreUsersFilesSame: !_isShared || Users.All(u => atOnce.GetValueOrDefault(u) == Hash("the user's " + u)),
            MustBeWholeAtOnce: !_isShared,
            IsNew: _design == next);
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private static string Text(string sag, string spacing) => $$"""
        name: A bridge between two designs (invented)
        site: { span: 12 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, sag: {{sag}} }
        frames: { spacing: {{spacing}} }
        """;

    private static string Hash(string text) =>
        Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(text)));

    private string Project(int design) => Path.Combine(_root, $"design-{design}.yaml");

    private void KillByTime(Process run, double share)
    {
        AwaitManifest(run);
        var watch = Stopwatch.StartNew();
        while (watch.Elapsed < _window * share)
        {
            Thread.SpinWait(10);
        }

        run.Kill();
        run.WaitForExit();
    }

    private Process Begin(int design, string kinds, params string[] tracer)
    {
        string[] command =
        [
            .. tracer, "dotnet", Path.Combine(AppContext.BaseDirectory, "BridgeForm.Cli.dll"),
            "make", Project(design), "-o", Folder, "--only", kinds, "--quiet",
        ];
        return Process.Start(new ProcessStartInfo(command[0], command[1..]) { RedirectStandardError = true, UseShellExecute = false })!;
    }

    private string[] Counting() => ["strace", "-f", "-qq", "-o", Path.Combine(_root, "calls"), "-e", "trace=" + Calls];

    private string[] Killing((string Name, int Number) call) =>
        [.. Counting(), "-e", string.Create(CultureInfo.InvariantCulture, $"inject={call.Name}:signal=SIGKILL:when={call.Number}")];

    /// <summary>
    /// Calls in the folder by the thread that renames, each with its number among those of its name: strace counts so.
    /// </summary>
    private (string Name, int Number)[] CountedCalls()
    {
        string[][] lines =
            [.. File.ReadAllLines(Path.Combine(_root, "calls")).Select(l => l.Split([' ', '('], 3, StringSplitOptions.RemoveEmptyEntries))];
        var thread = lines.First(l => l[1] is "renameat2")[0];
        return [.. lines.Where(l => l[0] == thread && l[1] is not "<...")
            .GroupBy(l => l[1], StringComparer.Ordinal)
            .SelectMany(calls => calls.Select((l, i) => (Call: (calls.Key, i + 1), Where: l[2])))
            .Where(
                c => c.Where.Contains(Folder, StringComparison.Ordinal) || c.Where.Contains(StagingNames.Prefix, StringComparison.Ordinal))
            .Select(c => c.Call)];
    }

    /// <summary>Lets a run end by itself; how long its commit took.</summary>
    private TimeSpan Watched(Process run)
    {
        using (run)
        {
            AwaitManifest(run);
            var watch = Stopwatch.StartNew();
            while (Recovery.IsNeeded(Folder) && !run.HasExited)
            {
                Thread.SpinWait(10);
            }

            var taken = watch.Elapsed;
            var said = run.StandardError.ReadToEnd();
            run.WaitForExit();
            return run.ExitCode == 0 ? taken : throw new InvalidOperationException("make: " + said);
        }
    }

    /// <summary>The commit begins when the manifest is among the new files.</summary>
    private void AwaitManifest(Process run)
    {
        var watch = Stopwatch.StartNew();
        while (!run.HasExited && watch.Elapsed < Patience)
        {
            if (!Directory.Exists(Folder) || StagingNames.Within(Folder) is not [var staging])
            {
                Thread.Sleep(1);
            }
            else if (File.Exists(Path.Combine(staging, StagingNames.New, Manifest.FileName)))
            {
                return;
            }
        }
    }

    /// <summary>Every visible file with the hash of its bytes.</summary>
    private SortedDictionary<string, string> State() => new(
        (Directory.Exists(Folder) ? Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories) : [])
            .Where(f => !f.Contains(Path.DirectorySeparatorChar + StagingNames.Prefix, StringComparison.Ordinal))
            .ToDictionary(f => Path.GetRelativePath(Folder, f), Manifest.HashOf),
        StringComparer.Ordinal);
}

/// <summary>What a kill left.</summary>
/// <param name="IsCut">The commit had begun and was not done with.</param>
/// <param name="IsWholeAtOnce">The folder held one design whole right after the kill.</param>
/// <param name="IsWholeAfterwards">It does after the first thing that the next run does, and nothing hidden is left.</param>
/// <param name="AreUsersFilesSame">The user's files have their names and bytes, right after the kill.</param>
/// <param name="MustBeWholeAtOnce">The folder is exchanged, so it must be whole at once.</param>
/// <param name="IsNew">The new design won.</param>
internal sealed record KillOutcome(
    bool IsCut, bool IsWholeAtOnce, bool IsWholeAfterwards, bool AreUsersFilesSame, bool MustBeWholeAtOnce, bool IsNew)
{
    /// <summary>All that is promised.</summary>
    public bool IsRight => IsWholeAfterwards && AreUsersFilesSame && (IsWholeAtOnce || !MustBeWholeAtOnce);
}
