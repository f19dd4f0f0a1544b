using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Cli.Text;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Cli;

/// <summary>The verdict on one screen, and one check by itself.</summary>
public sealed class ShortTextTests : IDisposable
{
    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    public static TheoryData<string> Samples => [.. Sample.Names];

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_sample_that_passes_stands_on_one_screen_with_all_that_is_to_be_looked_at(string name)
    {
        var model = new Sample(name).Build();
        var lines = Printed(model);
        Assert.InRange(lines.Count, 20, ShortText.MostLines);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, 100));
        foreach (var look in model.Checks.Where(c => c.Status == CheckStatus.Warn))
        {
            Assert.Single(lines, l => l.EndsWith($"({look.Id})", StringComparison.Ordinal));
        }

        Assert.StartsWith("VERDICT: ", lines[1], StringComparison.Ordinal);
        Assert.Contains(lines, l => l.Contains("licensed engineer", StringComparison.Ordinal));
    }

    // However many fail: the verdict stands before them, what has no line is counted and named, and nothing that fails is called a look.
    [Theory]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(70)]
    public void What_fails_has_two_lines_each_or_is_counted(int failing)
    {
        var sound = new Sample("alder-dell").Build();
        var model = sound with
        {
            Checks = [.. sound.Checks.Select((c, i) => i < failing ? c with { Status = CheckStatus.Fail, Ratio = 2 } : c)],
        };
        var lines = Printed(model);
        Assert.InRange(lines.Count, 20, ShortText.MostLinesFailing);
        var told = lines.Count(l => l.StartsWith("FAILS ", StringComparison.Ordinal));
        var more = lines.SingleOrDefault(l => l.Contains(" more fails: ", StringComparison.Ordinal));
        Assert.Equal(failing, told + (more is null ? 0 : int.Parse(more.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Contains(lines, l => l.StartsWith("IT MUST NOT BE BUILT SO: ", StringComparison.Ordinal));
        Assert.Equal(failing > 20, more is not null);
    }

    [Fact]
    public void The_figures_are_those_of_the_model()
    {
        var model = new Sample("alder-dell").Build();
        var figures = KeyFigures.Of(model);
        Assert.Equal(10, figures.Length);
        Assert.Equal("11", figures.Single(f => f.Label == "bays").Value);
        Assert.StartsWith("30 ft 0 in", figures[0].Value, StringComparison.Ordinal);
        var empty = 1 / model.Checks.Single(c => c.Id is "deck-slope").Demand;
        var loaded = 1 / model.Cases.Where(c => c.Shape is not null).Max(c => c.SteepestDeck);
        Assert.Equal(
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"1 : {empty:0.0} empty, 1 : {loaded:0.0} loaded"),
            figures.Single(f => f.Label == "steepest deck").Value);
        Assert.All(Printed(model), l => Assert.DoesNotMatch("[a-z]most[0-9]", l));
    }

    // A joint that the file leaves out is an engineer's; plates that pass are looked for when it is asked after.
    [Fact]
    public void A_joint_that_is_left_to_an_engineer_has_plates_that_pass()
    {
        using var run = new CommandRun();
        var file = run.Write("bridge.yaml", "name: Left out (invented)\nsite: { span: 30 ft }\n");
        var (code, said, error) = CommandRun.Run("check", file, "--explain", "guard-joint-post-foot");
        Assert.Equal((0, ""), (code, error));
        var flat = string.Join(' ', said.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("WHAT WOULD PASS - Preliminary: the lightest plates of the list that pass", flat, StringComparison.Ordinal);
        Assert.Contains("A licensed engineer confirms the joint", flat, StringComparison.Ordinal);
    }

    [Fact]
    public void One_check_is_told_with_what_it_compares_its_numbers_and_its_cure()
    {
        // Rails of 1x4: the guard's push breaks them.
        var file = _run.Write(
            "weak.yaml",
            "name: Weak (invented)\nsite: { span: 30 ft }\nframes: { spacing: 3 ft }\nguard: { rails: { section: 1x4, stock: cedar } }\n");
        var (code, said, error) = CommandRun.Run("check", file, "--explain", "rail-bending");
        Assert.Equal((1, ""), (code, error));
        var flat = string.Join(' ', said.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.StartsWith("Guard rail pushed outward (rail-bending)", said, StringComparison.Ordinal);
        Assert.Contains(AllChecks.Declared.First(d => d.Id == "rail-bending").Compares[..60], flat, StringComparison.Ordinal);
        Assert.Contains("WHAT WOULD PASS - Preliminary: rails of", flat, StringComparison.Ordinal);
        Assert.Single(said.Split('\n'), l => l.StartsWith("FAILS ", StringComparison.Ordinal));
        Assert.All(said.Split('\n'), l => Assert.InRange(l.Length, 0, 100));
    }

    /// <summary>What rules chose is never silent: briefly on the screen, each rule in the whole text; nothing where all is given.</summary>
    [Fact]
    public void What_defaults_chose_is_told()
    {
        var file = _run.Write("bare.yaml", "name: Bare (invented)\nsite: { span: 30 ft }\n");
        var (code, said, _) = CommandRun.Run("check", file);
        Assert.Equal(0, code);
        Assert.Contains(
            "chosen by default: ropes.spacing 58 in, ropes.sag 5.3 %, ropes.type\n  rope-6x19-iwrc-eips-galvanized-7/8, ", said,
            StringComparison.Ordinal);
        Assert.InRange(said.TrimEnd('\n').Split('\n').Length, 10, ShortText.MostLines);
        Assert.All(said.Split('\n'), l => Assert.InRange(l.Length, 0, 100));
        var all = CommandRun.Run("check", file, "--all").Out;
        Assert.Contains("  ropes.spacing 58 in\n    by: 49 in (1245 mm; public", all, StringComparison.Ordinal);
        Assert.Contains("  guard.rails.count 4\n    by: as few as leave gaps", all, StringComparison.Ordinal);
        var given = _run.Write("given.yaml", Ground.Under("name: Given\nsite: { span: 30 ft }\n"));
        Assert.DoesNotContain("chosen by default", CommandRun.Run("check", given).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("imperial", "30 ft")]
    [InlineData("metric", "9 m")]
    public void Start_writes_a_file_that_check_passes(string units, string span)
    {
        var file = _run.Path(units + ".yaml");
        Assert.Equal(0, CommandRun.Run("start", file, "--units", units).Code);
        Assert.Contains($"span: {span} ", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Equal(0, CommandRun.Run("check", file).Code);
        Assert.Equal(2, CommandRun.Run("start", _run.Path("none.yaml"), "--units", "cubits").Code);
    }

    [Fact]
    public void A_check_that_there_is_not_is_told_with_the_nearest()
    {
        var file = _run.Write("a.yaml", "name: a\nsite: { span: 30 ft }\n");
        var (code, said, error) = CommandRun.Run("check", file, "--explain", "guard-pots");
        Assert.Equal((2, ""), (code, said));
        Assert.Contains("did you mean guard-post? 'bridgeform list checks' names them all", error, StringComparison.Ordinal);
    }

    private static List<string> Printed(BridgeModel model)
    {
        using var text = new StringWriter();
        ShortText.Write(text, model, "bridge.yaml");
        return [.. text.ToString().ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')];
    }
}
