using System.Diagnostics;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Cli;

/// <summary>The limit holds for what is read, not for what a file says of its length.</summary>
public sealed class EndlessInputTests : IDisposable
{
    // Work that grows with the square of a list of 1 MB takes minutes; reading without end takes all memory.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void A_device_without_end_is_no_project_file_and_no_price_list()
    {
        var watch = Stopwatch.StartNew();
        Assert.Equal((2, "/dev/zero: error: more than 1000000 bytes are no project file [file-too-large]"), Error("/dev/zero"));
        var file = _run.Write("a.yaml", Bridges.Garden + "\nprices: /dev/zero\n");
        Assert.Equal((2, "/dev/zero: error: more than 1000000 bytes are no price list [file-too-large]"), Error(file));
        Assert.True(watch.Elapsed < Patience, watch.Elapsed.ToString());
    }

    [Fact]
    public void A_pipe_is_read_to_its_end_or_to_the_limit()
    {
        Assert.Equal(0, Through(Bridges.Garden + "\nshop: { tabs: true }\n", "make", "--only", "report", "-o", _run.Path("out")));
        Assert.Equal(2, Through("name: a\nsite: {}\n", "check"));
        Assert.Equal(2, Through(new string('#', 1_000_001), "check"));
    }

    [Theory]
    [InlineData("stock,section,length,price\n", "oak,2x4,8 ft,1\n", 200)]
    [InlineData("stock,section,length,price\ntreated,2x4,8 ft,1\n", "treated,2x4,8 ft,1\n", 200)]
    [InlineData("stock,section,length,price\n", "treated,2x4,8 ft\n", 200)]
    [InlineData("stock,section,length,price\n", ",", 1)]
    [InlineData("", "\"", 1)]
    [InlineData("stock,section,length,price\n", "\n", 0)]
    public void A_price_list_of_one_megabyte_is_read_quickly_and_its_faults_are_told_in_part(string head, string line, int faults)
    {
        var list = head + string.Concat(Enumerable.Repeat(line, (999_000 - head.Length) / line.Length));
        var watch = Stopwatch.StartNew();
        var reading = PriceReader.Read(list, "prices.csv", Bridges.Read(Bridges.Garden).Stock);
        Assert.True(watch.Elapsed < Patience, watch.Elapsed.ToString());
        Assert.InRange(reading.Faults.Length, Math.Min(1, faults), Math.Max(4, faults));
        Assert.InRange(reading.Faults.Length, faults == 200 ? 200 : 0, 200);
    }

    /// <summary>Sections that differ by a tenth of a millimetre are as many boards as one likes, each with a price of its own.</summary>
    [Fact]
    public void A_price_list_of_twenty_five_thousand_boards_is_read_quickly()
    {
        var lines = Enumerable.Range(0, 25_000).Select(
            i => FormattableString.Invariant($"treated,{20 + (i / 250)} x {40 + (0.5 * (i % 250))} mm,8 ft,{i + 1}"));
        var watch = Stopwatch.StartNew();
        var reading = PriceReader.Read(
            "stock,section,length,price\n" + string.Join('\n', lines), "prices.csv", Bridges.Read(Bridges.Garden).Stock);
        Assert.True(watch.Elapsed < Patience, watch.Elapsed.ToString());
        Assert.Equal(25_000, reading.List!.Prices.Length);
    }

    private static (int Code, string Error) Error(string file)
    {
        var (code, _, error) = CommandRun.Run("check", file);
        return (code, error.TrimEnd());
    }

    private int Through(string text, string command, params string[] more)
    {
        var pipe = _run.Path("pipe-" + Guid.NewGuid().ToString("N"));
        using (var make = Process.Start("/usr/bin/mkfifo", pipe))
        {
            make.WaitForExit();
        }

        var writing = Task.Run(() =>
        {
            try
            {
                File.WriteAllText(pipe, text);
            }
            catch (IOException)
            {
                // The reader has had enough.
            }
        });
        var code = CommandRun.Run([command, pipe, .. more]).Code;
        writing.Wait();
        return code;
    }
}
