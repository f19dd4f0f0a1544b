namespace BridgeForm.Tests.Project;

/// <summary>Slips that YAML has a rule for are told in plain words, each with what to write instead, which then reads.</summary>
public sealed class PlainFaultTests
{
    private const string Site = "\nsite: { span: 30 ft }\n";

    [Theory]
    [InlineData(
        "name: Bridge: over the brook" + Site, 1, "the value of name has a colon in it, which YAML takes for one more key; put it in "
            + "quotes: write name: 'Bridge: over the brook'")]
    [InlineData("name: Bob's: new   # mine" + Site, 1, "write name: 'Bob''s: new'")]
    [InlineData("name: A" + Site + "ropes: { type: { diameter: 1 in, source: maker: x } }", 3, "write source: 'maker: x'")]
    [InlineData("name: @home" + Site, 1, "begins with @, which YAML keeps for itself; put it in quotes: write name: '@home'")]
    [InlineData("name: [A] bridge" + Site, 1, "write name: '[A] bridge'")]
    [InlineData("name: #1 bridge" + Site, 1, "a # behind a blank begins a comment: put the value in quotes where it has one")]
    [InlineData("name:A" + Site, 2, "a blank is missing behind the colon of name; write name: A")]
    [InlineData("name: A\nsite:{ span: 30 ft }\n", 2, "write a blank behind the colon of site")]
    [InlineData("name: A\nsite:\n\tspan: 30 ft\n", 3, "a tab indents this line, and YAML takes blanks alone; take the tab out and write 2 "
        + "blanks before 'span: 30 ft'")]
    [InlineData("name: A\nsite:\n  span: 30 ft\n\trise: 1 ft\n", 4, "write 2 blanks before 'rise: 1 ft'")]
    [InlineData("name: A\nsite:\n  span: 30 ft\n   rise: 1 ft\n", 4, "line 4 is set in further than the line before it, which has a value "
        + "already; begin both after 2 blanks")]
    [InlineData("name: \"A" + Site, 1, "a \" is opened here and not closed; write a second one where the text ends")]
    [InlineData(
        "name: A\nsite: { span: 30 ft\nropes: { sag: 6 % }\n", 2, "a { is opened here and not closed; write its } behind what it holds")]
    public void A_slip_is_told_with_its_cure(string text, int line, string cure)
    {
        var faults = Examples.Read(text).Faults;
        Assert.Contains(faults, f => f.Line == line && f.Message.Contains(cure, StringComparison.Ordinal));
        Assert.DoesNotContain(faults, f => f.Message.Contains("scalar", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("name: 'Bridge: over the brook'" + Site)]
    [InlineData("name: 'Bob''s: new'   # mine" + Site)]
    [InlineData("name: '@home'" + Site)]
    [InlineData("name: '[A] bridge'" + Site)]
    [InlineData("name: '#1 bridge'" + Site)]
    [InlineData("name: A\nsite:\n  span: 30 ft\n  rise: 1 ft\n")]
    public void The_cure_reads(string text) => Examples.Good(text);

    [Fact]
    public void Own_stock_in_the_place_of_the_usual_one_is_told_once_for_each_name_with_what_to_write()
    {
        const string Oak = "stock:\n  oak: { species: white-oak, lengths: [8 ft] }\n";
        var faults = Examples.Read("name: A" + Site + Oak).Faults;
        Assert.Equal(
            [
                "the file's own stock has no 'treated', which frames.base.stock, frames.post.stock, frames.brace.stock, "
                    + "deck.board.stock, guard.rails.stock mean where left out; name oak for each of them, or add under stock: "
                    + "treated: { species: southern-pine, grade: no1, treated: true, lengths: [8 ft, 10 ft, 12 ft, 16 ft] }",
                "the file's own stock has no 'cedar', which guard.cap.stock means where left out; name oak for it, or add under stock: "
                    + "cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft, 10 ft, 12 ft] }",
            ],
            faults.Select(f => f.Message));
        Assert.All(faults, f => Assert.Equal(("unknown-stock", 4), (f.Code, f.Line)));

        var cures = faults.Select(f => "  " + f.Message[(f.Message.IndexOf("under stock: ", StringComparison.Ordinal) + 13)..] + "\n");
        Examples.Good("name: A" + Site + Oak + string.Concat(cures));
        Examples.Good("name: A" + Site + Oak + """
            frames: { base: { stock: oak }, post: { stock: oak }, brace: { stock: oak } }
            deck: { board: { stock: oak } }
            guard: { rails: { stock: oak }, cap: { stock: oak } }
            """);
    }
}
