using System.Text.RegularExpressions;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Tests.Cli;

/// <summary>
/// Files of which every key is in range and no bridge can be cut: told by key and place, with the nearest value that works,
/// alike by <c>check</c> and <c>make</c>. ‹ marks where the fault points.
/// </summary>
public sealed class ImpossibleBridgeTests
{
    private const string NoTread = """
        name: Bays too short for a tread (invented)
        site: { span: 12 ft, rise: 0 ft }
        ropes: { sag: 8 % }
        frames: { spacing: ‹8 in, stance: square }
        deck: { layout: across, board: { section: 2x8 }, gap: 1/4 in }
        """;

    private const string NoTreadInSome = """
        name: Most bays too short for a tread (invented)
        site: { span: 10 ft }
        frames: { spacing: ‹7.6 in, stance: plumb }
        deck: { layout: across, board: { section: 2x8 }, gap: 1/4 in, count: auto }
        """;

    private const string TooManyTreads = """
        name: More treads than a bay holds (invented)
        site: { span: 30 ft }
        deck: { layout: across, count: ‹7 }
        """;

    // Frames at equal steps in plan: the bays at the ends are longer, those in the middle bind.
    private const string TooManyInTheMiddle = """
        name: More treads than the shortest bay holds (invented)
        site: { span: 30 ft }
        ropes: { sag: 10 % }
        frames: { spacing: 3 ft, step: plan, stance: plumb }
        deck: { layout: across, count: ‹7 }
        """;

    private const string PostsCross = """
        name: Posts that cross above the deck (invented)
        site: { span: 36 in }
        ropes: { sag: 10 % }
        frames: { spacing: 9 in, post: { length: ‹47 in } }
        """;

    private const string CapsTurn = """
        name: Caps that turn over (invented)
        units: metric
        site: { span: 1046 mm, rise: "-53 mm" }
        ropes: { sag: 105 mm }
        frames: { spacing: 526 mm, base: { section: 2x6, flat: true }, post: { length: ‹1224 mm }, keeper: { depth: 17 mm } }
        guard: { cap: { section: 1x4 } }
        """;

    private const string RailsRise = """
        name: Rails that lie on each other where they rise (invented)
        site: { span: 30 ft }
        ropes: { spacing: 46 in, sag: 18 % }
        frames:
          base: { section: 4x6, length: 58 in }
          channel: { depth: 1 in, end_depth: 1-1/2 in }
          post: { section: 3x4, length: 40 in, lean: 8 deg, foot: 18-1/4 in }
          brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in }
        guard: { rails: { section: 1x4, count: ‹10 } }
        """;

    [Theory]
    [InlineData(NoTread, "frames.spacing", "no tread fits")]
    [InlineData(NoTreadInSome, "frames.spacing", "no tread fits")]
    [InlineData(TooManyTreads, "deck.count", "treads leave gaps below 1/4 in")]
    [InlineData(TooManyInTheMiddle, "deck.count", "in B06, 35-15/16 in between its frames' mid-planes")]
    [InlineData(PostsCross, "frames.post.length", "cross above the deck")]
    [InlineData(CapsTurn, "frames.post.length", "cross above the deck")]
    [InlineData(RailsRise, "guard.rails.count", "the rails overlap")]
    public void A_fault_of_the_file(string marked, string key, string says)
    {
        using var run = new CommandRun();
        var (text, line, column) = Unmarked(marked);
        var file = run.Write("bridge.yaml", text);
        var check = CommandRun.Run("check", file);
        var make = CommandRun.Run("make", file, "-o", run.Path("out"));
        Assert.Equal((ExitCode.WrongInput, ExitCode.WrongInput), (check.Code, make.Code));
        Assert.Equal(check.Error, make.Error);
        Assert.StartsWith($"{file}:{line}:{column}: error: {key}: with '", check.Error, StringComparison.Ordinal);
        Assert.Contains(says, check.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", check.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(NoTread)]
    [InlineData(TooManyTreads)]
    [InlineData(PostsCross)]
    [InlineData(CapsTurn)]
    [InlineData(RailsRise)]
    public void The_value_told_works_and_the_one_before_it_does_not(string marked)
    {
        using var run = new CommandRun();
        var (text, _, _) = Unmarked(marked);
        var told = Regex.Match(
            CommandRun.Run("check", run.Write("a.yaml", text)).Error, "write at (?<way>most|least) (?<value>[^,]+),",
            RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
        Assert.True(told.Success);
        var works = With(marked, told.Groups["value"].Value);
        Assert.True(CommandRun.Run("check", run.Write("b.yaml", works)).Code is ExitCode.Done or ExitCode.CheckFails, works);

        // A step further back towards the file's own value the fault is there again.
        var back = told.Groups["way"].Value == "most" ? 1 : -1;
        Assert.Equal(
            ExitCode.WrongInput,
            CommandRun.Run("check", run.Write("c.yaml", With(marked, Stepped(told.Groups["value"].Value, back)))).Code);
    }

    // One step of what is written: a whole number, a millimetre, or a sixteenth of an inch (inches as a decimal).
    private static string Stepped(string value, int by)
    {
        if (int.TryParse(value, out var count))
        {
            return $"{count + by}";
        }

        var metres = BridgeForm.Quantities.QuantityReader.Read(BridgeForm.Quantities.QuantityKind.Length, value).Value;
        return value.EndsWith("mm", StringComparison.Ordinal)
            ? FormattableString.Invariant($"{(metres * 1000) + by:0} mm")
            : FormattableString.Invariant($"{(metres / 0.0254) + (by / 16.0):0.####} in");
    }

    private static string With(string marked, string value)
    {
        var at = marked.IndexOf('‹', StringComparison.Ordinal);
        var end = marked.IndexOfAny([',', '}'], at);
        return marked[..at] + value + " " + marked[end..];
    }

    private static (string Text, int Line, int Column) Unmarked(string marked)
    {
        var before = marked[..marked.IndexOf('‹', StringComparison.Ordinal)];
        return (
            marked.Replace("‹", "", StringComparison.Ordinal), 1 + before.Count(c => c == '\n'), before.Length - before.LastIndexOf('\n'));
    }
}
