using BridgeForm.Cli.Files.Commit;

namespace BridgeForm.Tests.Cli.Commit;

/// <summary>A run that ends after any step of its commit, as by a kill: the folder is whole, old or new.</summary>
public sealed class EveryStepTests
{
    private static readonly string[] s_users = ["mine.txt", "profiles/mine.dxf", "boards/mine.dxf"];

    [Theory]
    [InlineData(true)]
    [InlineData(true, "tables", "profiles")]
    [InlineData(true, "boards")]
    [InlineData(false)]
    [InlineData(false, "tables", "profiles")]
    public void By_exchange(bool atOnce, params string[] kinds)
    {
        // Where names cannot be exchanged in one call, the folder may be missing between two renames, until the next run.
        var isWholeAtOnce = atOnce && OperatingSystem.IsLinux();
        var states = new List<string>();
        var whole = Whole([], kinds);
        for (var (cut, isDone) = (0, false); !isDone; cut++)
        {
            using var runs = new TwoRuns();
            var output = runs.Second(kinds);
            var commit = output.Plan();
            Assert.True(commit.MayExchange);
            isDone = Do(commit.ExchangeSteps(isWholeAtOnce), cut);
            output.Abandon();
            if (isWholeAtOnce)
            {
                DemandWhole(runs, whole);
            }

            FolderEntry.Recover(runs.Folder);
            DemandWhole(runs, whole);
            Assert.Empty(runs.Hidden());
            states.Add(runs.State().SequenceEqual(whole) ? "new" : "old");
        }

        Assert.Equal("old", states[0]);
        Assert.Equal("new", states[^1]);
        Assert.InRange(states.Count, 10, 30);
    }

    [Theory]
    [InlineData]
    [InlineData("tables", "profiles")]
    [InlineData("boards")]
    public void By_moves_beside_the_users_files(params string[] kinds)
    {
        var whole = Whole(s_users, kinds);
        for (var (cut, isDone) = (0, false); !isDone; cut++)
        {
            using var runs = new TwoRuns(s_users);
            var output = runs.Second(kinds);
            var commit = output.Plan();
            Assert.False(commit.MayExchange);
            isDone = Do(commit.MoveSteps(), cut);
            output.Abandon();
            Assert.All(s_users, name => Assert.Equal("the user's " + name, runs.State()[name]));
            FolderEntry.Recover(runs.Folder);
            Assert.Equal(isDone ? whole : runs.Old, runs.State());
            Assert.Empty(runs.Hidden());
        }
    }

    // Every kind of move is among these: a file that is replaced, one that goes, new ones in an old folder and in a new one.
    [Fact]
    public void Cut_short_on_the_way_back_as_well()
    {
        var tried = 0;
        for (var (cut, isDone) = (1, false); !isDone; cut++)
        {
            for (var (back, isBack) = (0, false); !isBack; back++, tried++)
            {
                using var runs = new TwoRuns(s_users);
                var output = runs.Second("profiles", "templates");
                isDone = Do(output.Plan().MoveSteps(), cut);
                output.Abandon();
                isBack = StagingNames.Within(runs.Folder) is not [var staging] || Do(Journal.BackSteps(runs.Folder, staging), back);
                FolderEntry.Recover(runs.Folder);
                Assert.True(isDone || runs.State().SequenceEqual(runs.Old), $"{cut} steps there, {back} back");
                Assert.Empty(runs.Hidden());
            }
        }

        Assert.True(tried > 50);
    }

    [Fact]
    public void A_file_that_the_user_lays_into_the_folder_while_it_is_exchanged_comes_back()
    {
        using var runs = new TwoRuns();
        var output = runs.Second();
        var steps = output.Plan().ExchangeSteps(atOnce: false).GetEnumerator();
        steps.MoveNext();
        File.WriteAllText(Path.Combine(runs.Folder, "mine.txt"), "mine");
        File.WriteAllText(Path.Combine(runs.Folder, "profiles/P2.dxf"), "mine since a moment");
        File.WriteAllText(Path.Combine(runs.Folder, "profiles/P1.dxf"), "mine as well");
        do
        {
            steps.Current();
        }
        while (steps.MoveNext());

        output.Abandon();
        Assert.Equal("mine", runs.State()["mine.txt"]);
        Assert.Equal("mine since a moment", runs.State()["profiles/P2.dxf"]);
        Assert.Equal("second profiles/P1.dxf", runs.State()["profiles/P1.dxf"]);
        Assert.Equal("mine as well", runs.State()["profiles/P1.dxf.bak"]);
        Assert.Empty(runs.Hidden());
    }

    [Fact]
    public void A_file_changed_after_a_kill_is_not_taken_away_by_the_way_back()
    {
        using var runs = new TwoRuns(s_users);
        var output = runs.Second();
        Do(output.Plan().MoveSteps(), 6);
        output.Abandon();
        var changed = runs.State().First(f => f.Value.StartsWith("second", StringComparison.Ordinal)).Key;
        File.WriteAllText(Path.Combine(runs.Folder, changed), "changed since");
        var trouble = Assert.Throws<IOException>(() => FolderEntry.Recover(runs.Folder));
        Assert.Contains(changed, trouble.Message, StringComparison.Ordinal);
        Assert.Equal("changed since", runs.State()[changed]);

        File.Delete(Path.Combine(runs.Folder, changed));
        FolderEntry.Recover(runs.Folder);
        Assert.Equal(runs.Old, runs.State());
    }

    [Fact]
    public void Files_half_written_by_a_killed_run_are_swept()
    {
        using var runs = new TwoRuns();
        runs.Second().Abandon();
        Assert.NotEmpty(runs.Hidden());
        FolderEntry.Recover(runs.Folder);
        Assert.Empty(runs.Hidden());
        Assert.Equal(runs.Old, runs.State());
    }

    private static void DemandWhole(TwoRuns runs, SortedDictionary<string, string> whole) =>
        Assert.True(runs.State().SequenceEqual(runs.Old) || runs.State().SequenceEqual(whole), string.Join('\n', runs.State()));

    private static SortedDictionary<string, string> Whole(string[] users, string[] kinds)
    {
        using var runs = new TwoRuns(users);
        return runs.Whole(kinds);
    }

    /// <summary>Does so many steps; says whether those were all.</summary>
    private static bool Do(IEnumerable<Action> steps, int count)
    {
        using var next = steps.GetEnumerator();
        for (var done = 0; done < count; done++)
        {
            if (!next.MoveNext())
            {
                return true;
            }

            next.Current();
        }

        return !next.MoveNext();
    }
}
