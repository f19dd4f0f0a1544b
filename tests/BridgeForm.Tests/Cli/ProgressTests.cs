using BridgeForm.Cli;

namespace BridgeForm.Tests.Cli;

public class ProgressTests
{
    [Fact]
    public void A_long_run_shows_a_bar_on_a_terminal_and_wipes_it()
    {
        Assert.Equal("", Shown(isTerminal: false));
        var text = Shown(isTerminal: true);
        Assert.Contains("2 of 4, drawings", text, StringComparison.Ordinal);
        Assert.Equal("", text.Split('\r')[^1]);
        Assert.True(string.IsNullOrWhiteSpace(text.Split('\r')[^2]));
    }

    private static string Shown(bool isTerminal)
    {
        using var error = new StringWriter();
        using (var progress = new Progress(error, isTerminal))
        {
            progress.Show("model", 0, 4);
            Assert.Equal("", error.ToString());
            Thread.Sleep(TimeSpan.FromSeconds(1.05));
            progress.Show("drawings", 2, 4);
        }

        return error.ToString();
    }
}
