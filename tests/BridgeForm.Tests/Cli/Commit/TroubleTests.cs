using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Tests.Cli.Commit;

/// <summary>Trouble in the middle of a commit: the old files are put back, or the other way into place is taken.</summary>
public sealed class TroubleTests
{
    [Fact]
    public void A_move_that_fails_takes_all_others_back()
    {
        using var runs = new TwoRuns("mine.txt");
        using (var output = runs.Second())
        {
            var commit = output.Plan();

            // Laid in the way after the folder was looked at.
            File.WriteAllText(Path.Combine(runs.Folder, "templates"), "in the way");
            Assert.ThrowsAny<IOException>(commit.ByMoves);
            File.Delete(Path.Combine(runs.Folder, "templates"));
        }

        Assert.Equal(runs.Old, runs.State());
        Assert.Empty(runs.Hidden());
    }

    [Fact]
    public void Where_the_folder_cannot_be_exchanged_its_files_are_moved()
    {
        using var runs = new TwoRuns();
        var whole = runs.Whole();
        using (var output = runs.Second())
        {
            var commit = output.Plan();
            var blocked = Exchange.Beside(runs.Folder, commit.Staging);
            File.WriteAllText(blocked, "in the way");
            Assert.False(commit.TryExchange());
            Assert.Equal(runs.Old, runs.State());
            commit.ByMoves();
            File.Delete(blocked);
        }

        Assert.Equal(whole, runs.State());
        Assert.Empty(runs.Hidden());
    }

    [Fact]
    public void The_working_folder_and_those_above_it_are_not_exchanged()
    {
        using var run = new CommandRun();
        var elsewhere = Place.Real(run.Folder);
        Assert.True(Exchange.IsPossible(elsewhere, elsewhere));
        for (var folder = Place.Real(Environment.CurrentDirectory); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            Assert.False(Exchange.IsPossible(folder, elsewhere));
        }
    }

    [Fact]
    public void A_place_where_something_is_mounted_is_not_exchanged()
    {
        if (OperatingSystem.IsLinux())
        {
            // The kernel's own file system of processes is mounted on every Linux.
            Assert.False(Exchange.IsPossible("/proc", "/proc"));
            Assert.True(LinuxCalls.NodeAt("/proc")!.Value.IsMountPoint);
        }
    }
}
