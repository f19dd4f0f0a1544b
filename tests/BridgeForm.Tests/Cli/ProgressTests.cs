using BridgeForm.Cli.Streams;

namespace BridgeForm.Tests.Cli;

public class ProgressTests
{
    [Fact]
    public void A_long_run_shows_a_bar_on_a_terminal_and_wipes_it()
    {
        var clock = new HandClock();
        using var error = new StringWriter();
        using (var progress = new Progress(error, isTerminal: true, clock))
        {
            progress.Say("working out the bridge");
            Assert.Equal("", error.ToString());
            Assert.Equal(TimeSpan.FromSeconds(1), clock.Due);
            clock.Beat();
            Assert.Contains("] working out the bridge", error.ToString(), StringComparison.Ordinal);
            var steps = progress.Of(4);
            steps.Done("model");
            steps.Done("drawings");
            clock.Beat();
            Assert.Contains("2 of 4, drawings done", error.ToString(), StringComparison.Ordinal);
        }

        var parts = error.ToString().Split('\r');
        Assert.Equal("", parts[^1]);
        Assert.True(string.IsNullOrWhiteSpace(parts[^2]));
        clock.Beat();
        Assert.Equal(parts.Length, error.ToString().Split('\r').Length);
    }

    [Fact]
    public void Nothing_is_shown_where_nobody_looks()
    {
        var clock = new HandClock();
        using var progress = new Progress(TextWriter.Null, isTerminal: false, clock);
        Assert.Null(clock.Due);
    }

    /// <summary>A clock whose timer beats when it is told to.</summary>
    private sealed class HandClock : TimeProvider
    {
        private TimerCallback? _callback;

        public TimeSpan? Due { get; private set; }

        public void Beat() => _callback!(null);

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            (_callback, Due) = (callback, dueTime);
            return System.CreateTimer(_ => { }, null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        }
    }
}
