using BridgeForm.Project.Editing;

namespace BridgeForm.Tests.Project.Editing;

/// <summary>Single edits by eye: what a person would have written by hand, and nothing else changed.</summary>
public sealed class FileEditTests
{
    private const string Head = "name: A (invented)\nsite: { span: 30 ft }\n";

    [Theory]
    // A value in a block and in braces, with comments, quotes and odd blanks about it.
    [InlineData("ropes:\n  sag: 6 %   # share\n", "ropes.sag", "5.1 %", "ropes:\n  sag: 5.1 %   # share\n")]
    [InlineData("deck:   {board: {section:  2x6}}  # d\n", "deck.board.section", "2x8", "deck:   {board: {section:  2x8}}  # d\n")]
    [InlineData("ropes: { 'sag' : \"6 %\" }\n", "ropes.sag", "5 %", "ropes: { 'sag' : 5 % }\n")]
    [InlineData("ropes:\n  sag:\n    6 %\n", "ropes.sag", "5 %", "ropes:\n  sag:\n    5 %\n")]
    [InlineData("prices: |\n  a.csv\nuse: public\n", "prices", "b.csv", "prices: b.csv\nuse: public\n")]
    // A key that is missing: in braces on one line, on several, with a comma at the end, with comments, in none.
    [InlineData("frames: { spacing: 3 ft }\n", "frames.stance", "plumb", "frames: { spacing: 3 ft, stance: plumb }\n")]
    [InlineData("frames: {spacing: 3 ft}\n", "frames.stance", "plumb", "frames: {spacing: 3 ft, stance: plumb}\n")]
    [InlineData("frames: { spacing: 3 ft, }\n", "frames.stance", "plumb", "frames: { spacing: 3 ft, stance: plumb, }\n")]
    [InlineData("frames: {}\n", "frames.stance", "plumb", "frames: { stance: plumb }\n")]
    [InlineData("frames: { } # f\n", "frames.stance", "plumb", "frames: { stance: plumb } # f\n")]
    [InlineData(
        "frames: {\n  spacing: 3 ft,  # s\n  step: rope      # r\n}\n", "frames.stance", "plumb",
        "frames: {\n  spacing: 3 ft,  # s\n  step: rope,      # r\n  stance: plumb\n}\n")]
    [InlineData(
        "frames: { spacing: 3 ft, # s, t\n          step: rope }\n", "frames.stance", "plumb",
        "frames: { spacing: 3 ft, # s, t\n          step: rope,\n          stance: plumb }\n")]
    // In a block: behind its last line, at its indent; the file may end without a line end.
    [InlineData("ropes:\n    sag: 6 %  # s\n\n# next\nuse: public\n", "ropes.spacing", "50 in",
        "ropes:\n    sag: 6 %  # s\n    spacing: 50 in\n\n# next\nuse: public\n")]
    [InlineData("ropes:\n  sag: 6 %", "ropes.spacing", "50 in", "ropes:\n  sag: 6 %\n  spacing: 50 in")]
    [InlineData("use: public\n", "erection", "one-end", "use: public\nerection: one-end\n")]
    // A mapping that is missing: a block of its own at the top, in braces below.
    [InlineData("use: public\n", "guard.cap.section", "2x8", "use: public\nguard:\n  cap: { section: 2x8 }\n")]
    [InlineData("frames:\n    spacing: 3 ft\n", "frames.post.section", "4x4", "frames:\n    spacing: 3 ft\n    post: { section: 4x4 }\n")]
    [InlineData("frames: { spacing: 3 ft }\n", "frames.post.section", "4x4", "frames: { spacing: 3 ft, post: { section: 4x4 } }\n")]
    // Keys that exclude each other.
    [InlineData("frames:\n  channel: { depth: 1 in, width: 1 in } # c\n", "frames.channel.clearance", "1/8 in",
        "frames:\n  channel: { depth: 1 in, clearance: 1/8 in } # c\n")]
    [InlineData("frames:\n  brace:\n    foot: 28 in\n    section: 2x4\n", "frames.brace.length", "20 in",
        "frames:\n  brace:\n    length: 20 in\n    section: 2x4\n")]
    [InlineData("guard:\n  rails:\n    heights:\n      - 6 in # a\n      - 12 in\n    section: 2x4\n", "guard.rails.count", "5",
        "guard:\n  rails:\n    section: 2x4\n    count: 5\n")]
    [InlineData("guard:\n  rails: { count: 6 }\n", "guard.rails.heights", "[6 in, 12 in]", "guard:\n  rails: { heights: [6 in, 12 in] }\n")]
    // Lists: an entry, one more, the whole.
    [InlineData("guard: { rails: { heights: [6 in, 12 in] } }\n", "guard.rails.heights.1", "13 in",
        "guard: { rails: { heights: [6 in, 13 in] } }\n")]
    [InlineData("guard: { rails: { heights: [6 in, 12 in] } }\n", "guard.rails.heights.2", "18 in",
        "guard: { rails: { heights: [6 in, 12 in, 18 in] } }\n")]
    [InlineData("guard:\n  rails:\n    heights:\n    - 6 in # a\n", "guard.rails.heights.1", "12 in",
        "guard:\n  rails:\n    heights:\n    - 6 in # a\n    - 12 in\n")]
    [InlineData("guard:\n  rails:\n    heights: # h\n    - 6 in # a\n    # b\n    - 9 in\n  cap: { section: 2x6 }\n", "guard.rails.heights",
        "[7 in]", "guard:\n  rails:\n    heights: [7 in] # h\n  cap: { section: 2x6 }\n")]
    // A rope of one's own and back.
    [InlineData("ropes:\n  type: { diameter: 1 in, modulus: 100 GPa } # mine\n  sag: 6 %\n", "ropes.type", "strand-ehs-1/2",
        "ropes:\n  type: strand-ehs-1/2 # mine\n  sag: 6 %\n")]
    [InlineData("ropes:\n  type: # mine\n    diameter: 1 in\n    # m\n    modulus: 1 GPa # n\n  sag: 6 %\n", "ropes.type", "strand-ehs-1/2",
        "ropes:\n  type: strand-ehs-1/2 # mine\n  sag: 6 %\n")]
    [InlineData("ropes:\n  type: strand-ehs-1/2 # t\n", "ropes.type", "{ diameter: 1 in }", "ropes:\n  type: { diameter: 1 in } # t\n")]
    [InlineData("ropes:\n  type: strand-ehs-1/2 # t\n", "ropes.type.diameter", "1 in", "ropes:\n  type: { diameter: 1 in } # t\n")]
    // Quotes where YAML needs them, and only there.
    [InlineData("prices: a.csv\n", "prices", "#1.csv", "prices: '#1.csv'\n")]
    [InlineData("prices: a.csv\n", "prices", "a: b's.csv", "prices: 'a: b''s.csv'\n")]
    [InlineData("prices: a.csv\n", "prices", "a, b.csv", "prices: a, b.csv\n")]
    [InlineData("prices: a.csv\n", "prices", "\"a\\\\b\"", "prices: \"a\\\\b\"\n")]
    [InlineData("stock: { x: { species: a } }\n", "stock.x.grade", "a, b", "stock: { x: { species: a, grade: 'a, b' } }\n")]
    public void One_value(string rest, string path, string value, string expected) =>
        Assert.Equal(new EditResult(Head + expected, null), FileEdit.Set(Head + rest, path, value));

    [Theory]
    [InlineData("frames: { spacing: 3 ft, stance: plumb, step: rope } # f\n", "frames.stance",
        "frames: { spacing: 3 ft, step: rope } # f\n")]
    [InlineData("frames: { spacing: 3 ft, stance: plumb } # f\n", "frames.stance", "frames: { spacing: 3 ft } # f\n")]
    [InlineData("frames: { stance: plumb, spacing: 3 ft } # f\n", "frames.stance", "frames: { spacing: 3 ft } # f\n")]
    [InlineData("frames: { spacing: 3 ft, stance: plumb, } # f\n", "frames.stance", "frames: { spacing: 3 ft, } # f\n")]
    [InlineData("frames: {\n  spacing: 3 ft, # s\n  stance: plumb # p\n}\n", "frames.stance", "frames: {\n  spacing: 3 ft # s\n}\n")]
    [InlineData("frames: {\n  stance: plumb, # p\n  spacing: 3 ft # s\n}\n", "frames.stance", "frames: {\n  spacing: 3 ft # s\n}\n")]
    [InlineData("frames: { spacing: 3 ft, stance: plumb,\n  step: rope }\n", "frames.stance", "frames: { spacing: 3 ft,\n  step: rope }\n")]
    [InlineData("ropes:\n  sag: 6 %\n  # k\n  spacing: 50 in # p\n# n\nuse: public\n", "ropes.spacing",
        "ropes:\n  sag: 6 %\n  # k\n# n\nuse: public\n")]
    [InlineData("ropes:\n  sag: 6 %\nuse: public\n", "ropes.sag", "use: public\n")]
    [InlineData("use: public\nropes:\n  sag: 6 %", "ropes.sag", "use: public")]
    [InlineData("use: public\n", "ropes.sag", "use: public\n")]
    public void Taken_out(string rest, string path, string expected) =>
        Assert.Equal(new EditResult(Head + expected, null), FileEdit.Remove(Head + rest, path));

    [Theory]
    [InlineData("use: public\n", "use", "private", "use: private  # quiet\n")]
    [InlineData("use: public   \n", "use", "private", "use: private  # quiet\n")]
    [InlineData("ropes:\n  sag: 6 %  # mine\n", "ropes.sag", "5 %", "ropes:\n  # quiet\n  sag: 5 %  # mine\n")]
    [InlineData("ropes: { sag: 6 %, spacing: 44 in }\n", "ropes.sag", "5 %", "ropes: { sag: 5 %, spacing: 44 in }  # quiet\n")]
    [InlineData("prices: 'a #1'\n", "prices", "'b #2'", "prices: 'b #2'  # quiet\n")]
    [InlineData("ropes: { sag: 6 %, type: \"strand\n  x\" }\n", "ropes.sag", "5 %",
        "# quiet\nropes: { sag: 5 %, type: \"strand\n  x\" }\n")]
    [InlineData("use: public\n", "guard.cap.section", "2x8", "use: public\nguard:\n  cap: { section: 2x8 }  # quiet\n")]
    public void With_a_comment(string rest, string path, string value, string expected)
    {
        var done = FileEdit.Set(Head + rest, path, value, "quiet").Text!;
        Assert.Equal(Head + expected, done);
        Assert.Equal(done, FileEdit.Set(done, path, value, "# quiet").Text);
    }

    [Theory]
    [InlineData("name: A\nsite:\n\tspan: 30 ft\n", "use", "public", "line 3, column 1: ")]
    [InlineData("name: A\nsite: { span: 30 ft\n", "use", "public", "line ")]
    [InlineData("name: &a A\n", "use", "public", "line 1, column 7: anchor &a is not allowed")]
    [InlineData("name: *a\n", "use", "public", "line 1, column 7: alias *a is not allowed")]
    [InlineData("name: A\nname: B\n", "name", "C", "line 2, column 1: key 'name' is repeated")]
    [InlineData("", "use", "public", "the file is no mapping of keys")]
    [InlineData("- a\n", "use", "public", "the file is no mapping of keys")]
    [InlineData("name: A\u0001\n", "use", "public", "line 1, column 8: character U+0001")]
    [InlineData("name: A\n", "nmae", "B", "'nmae' is not a key of a project file")]
    [InlineData("name: A\n", "", "B", "'' is not a key of a project file")]
    [InlineData("name: A\n", "site.ground.x", "B", "'site.ground.x' is not a key of a project file")]
    [InlineData("name: A\n", "name", "B\nuse: public", "the value must be one line of text")]
    [InlineData("name: A\n", "guard.rails.heights", "6 in", "'6 in' is no list in square brackets")]
    [InlineData("name: A\n", "guard.rails.heights", "[6 in", "'[6 in' is no list in square brackets")]
    [InlineData("name: A\n", "guard.rails.heights", "[6 in] # six", "'[6 in] # six' is no list in square brackets")]
    [InlineData("name: A\n", "guard.rails.heights", "[6 in], a: [1]", "'[6 in], a: [1]' is no list in square brackets")]
    [InlineData("name: A\n", "guard.rails.heights.3", "6 in", "guard.rails.heights has no entry before number 3")]
    [InlineData("name: A\nguard: { rails: { heights: [] } }\n", "guard.rails.heights.1", "6 in", "guard.rails.heights has 0 entries")]
    [InlineData("? name\n: A\n", "use", "public", "use is written here in a way that only a hand can change")]
    public void What_cannot_be_done_is_said(string text, string path, string value, string problem)
    {
        var result = FileEdit.Set(text, path, value);
        Assert.Null(result.Text);
        Assert.StartsWith(problem, result.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void One_of_several_entries_is_not_taken_out() => Assert.Equal(
        "guard.rails.heights has other entries; write the list without this one",
        FileEdit.Remove("name: A\nguard: { rails: { heights: [6 in, 12 in] } }\n", "guard.rails.heights.0").Problem);

    [Fact]
    public void The_only_key_of_a_file_stays() => Assert.NotNull(FileEdit.Remove("name: A\n", "name").Problem);
}
