namespace BridgeForm.Tests.Project;

/// <summary>Each kind of fault: where it points (the ‹ in the replaced text, taken out before reading) and what it says.</summary>
public sealed class FaultPlaceTests
{
    [Theory]
    [InlineData("span: 30 ft", "span: ‹30", "span: '30' has no unit")]
    [InlineData("span: 30 ft", "span: ‹30 furlong", "'furlong' is not a unit of length")]
    [InlineData("span: 30 ft", "span: ‹1 in", "span: '1 in' is out of range; allowed is 3 ft to 20000 ft")]
    [InlineData("span: 30 ft", "span: ‹0 ft", "is out of range")]
    [InlineData("span: 30 ft", "span: ‹-30 ft", "is out of range")]
    [InlineData("span: 30 ft", "span: ‹1e300 ft", "span: '1e300 ft' is out of range; allowed is 3 ft to 20000 ft")]
    [InlineData("sag: 6 %", "sag: ‹1e300 %", "sag: '1e300 %' is out of range; allowed is 0.05 % to 30 % of the span")]
    [InlineData("  rise: 0 ft", "‹\trise: 0 ft", "tab")]
    [InlineData(
        "prices: prices.csv", "holes: { base: [{ ‹from: 3 in, diameter: 1 in }] }",
        "'from' is not a key of holes.base.0; did you mean from_end?")]
    [InlineData("span: 30 ft", "span: ‹NaN ft", "is not a length")]
    [InlineData("span: 30 ft", "span: ‹.inf", "is not a length")]
    [InlineData("span: 30 ft", "span: ‹[30 ft]", "span must be a single value such as 30 ft, not a list")]
    [InlineData("span: 30 ft", "span: ‹{a: 30 ft}", "span must be a single value such as 30 ft, not a mapping")]
    [InlineData("  span: 30 ft", "  ‹spam: 30 ft", "'spam' is not a key of site; did you mean span?")]
    [InlineData("prices: prices.csv", "‹sag: 5 %", "'sag' is not a key of a project file; its place is ropes.sag")]
    [InlineData("  rise: 0 ft", "  ‹zzzzzzzzz: 0 ft", "known keys: span, rise")]
    [InlineData("  rise: 0 ft", "  ‹span: 31 ft", "key 'span' is repeated; it stands in line 5 already")]
    [InlineData("  rise: 0 ft", "  rise: ‹11 ft", "steeper than 1 in 3; over this span at most 10 ft 0 in")]
    [InlineData("[20 F, 100 F]", "[20 F, ‹100]", "has no unit")]
    [InlineData("[20 F, 100 F]", "‹20 F", "temperatures must be a list such as [20 F, 100 F], not a single value")]
    [InlineData(
        "type: rope-6x19-iwrc-eips-galvanized-3/4", "type: ‹rope-6x19-iwrc-eips-galvanised-3/4",
        "did you mean rope-6x19-iwrc-eips-galvanized-3/4?")]
    [InlineData("sag: 6 %", "sag: ‹6", "must be a share or a length, such as 6 %")]
    [InlineData("sag: 6 %", "sag: ‹0 %", "sag: '0 %' is out of range; allowed is 0.05 % to 30 % of the span")]
    [InlineData("sag: 6 %", "sag: ‹31 %", "allowed is 0.05 % to 30 % of the span, here 3/16 in to 9 ft 0 in")]
    [InlineData("sag: 6 %", "sag: ‹-1 ft", "is out of range")]
    [InlineData("sag: 6 %", "sag: ‹28 %", "more than 45 deg; with this rise sag is at most 7 ft 6 in (25 %)")]
    [InlineData("kind: clips", "kind: ‹clisp", "'clisp' is not a value of kind; did you mean clips?")]
    [InlineData("safety_factor: 5", "safety_factor: ‹five", "'five' is not a number from 1 to 20")]
    [InlineData("safety_factor: 5", "safety_factor: ‹0.5", "is not a number from 1 to 20")]
    [InlineData("base:    { section: 4x4,", "base:    { section: ‹4x5x6,", "is not a section")]
    [InlineData("base:    { section: 4x4,", "base:    { section: ‹4x7,", "is not a nominal size of PS 20")]
    [InlineData("depth: 5/8 in", "depth: ‹3-1/2 in", "cuts through the base, which is 3-1/2 in deep")]
    [InlineData("lean: 8 deg", "lean: ‹45 deg", "allowed is 0 deg to 44.9 deg")]
    [InlineData("foot: 17-3/4 in", "foot: ‹26 in", "stands out over the base's end; write at most 24-7/16 in")]
    [InlineData("foot: 27-1/2 in", "foot: ‹29 in", "stands out over the base's end; write more than 24-7/8 in and at most 28 in")]
    [InlineData("foot: 27-1/2 in", "foot: ‹23 in", "its inner edge would be cut away")]
    [InlineData("foot: 27-1/2 in", "foot: 27-1/2 in, ‹length: 18 in", "length and foot (line 22) exclude each other")]
    [InlineData("spread: 2-1/2 in", "spread: ‹1 in", "puts the keeper holes into the rope channel; write at least 1-1/8 in")]
    [InlineData("depth: 2 in", "depth: ‹4 in", "keeper holes are blind")]
    [InlineData(
        "count: auto", "count: ‹7",
        "7 boards leave gaps below 1/4 in; between the posts' feet, less the side gaps, are 34-1/2 in, room for at most 6")]
    [InlineData("count: auto", "count: ‹0", "is not a whole number from 1 to 1000, or auto")]
    [InlineData("count: auto", "count: ‹2.5", "is not a whole number")]
    [InlineData("count: 6", "count: ‹11", "11 rails of 3-1/2 in do not fit between deck and head")]
    [InlineData(
        "count: 6", "heights: [6 in, ‹8 in]", "lies on the rail before it; list heights from the lowest up, here at least 9-1/2 in")]
    [InlineData("count: 6", "heights: [‹1 in]", "allowed is 3-5/16 in to 38-1/4 in")]
    [InlineData(
        "cap:   { section: 2x6, stock: cedar }", "cap:   { section: 2x6, stock: ‹ceder }",
        "'ceder' is not a name under stock; did you mean cedar?")]
    [InlineData("species: southern-pine", "species: ‹southern-pin", "did you mean southern-pine?")]
    [InlineData(
        "grade: no1", "grade: ‹No.1 NonDense",
        "'No.1 NonDense' is not a grade of the built-in tables; there are ss, no1, no2, no3, C30, C24, C18, D30; "
            + "'bridgeform list grades' lists them by species; values of another grade go under values:")]
    [InlineData("grade: no1", "grade: ‹no4", "'no4' is not a grade of the built-in tables; did you mean no3?")]
    [InlineData("efficiency: 80 %", "efficiency: ‹80.1 %", "efficiency: '80.1 %' is more than clips hold; at most 80 %")]
    [InlineData("live: 60 psf", "low_live_reason: ‹' '", "low_live_reason is empty; write a text")]
    [InlineData("[20 F, 100 F]", "‹[]", "temperatures: none is colder and none hotter than the reference temperature '60 F'")]
    [InlineData("[20 F, 100 F]", "‹[20 F, 60 F]", "temperatures: none is hotter than the reference temperature '60 F'")]
    [InlineData("[20 F, 100 F]", "‹[60 F, 100 F]", "temperatures: none is colder than the reference temperature '60 F'")]
    [InlineData("eccentricity: 60 %", "eccentricity: ‹54 %", "eccentricity: '54 %' is out of range; allowed is 55 % to 100 %")]
    [InlineData(
        "type: rope-6x19-iwrc-eips-galvanized-3/4",
        "type: { diameter: 19 mm, mass_per_length: 1.55 kg/m, breaking_strength: ‹387 kN, metallic_area: 175 mm2, modulus: 100 GPa }",
        "breaking_strength: '387 kN' over metallic_area '175 mm2' is 2.21 GPa; no wire holds more than 2.2 GPa")]
    [InlineData("type: rope-6x19-iwrc-eips-galvanized-3/4", "type: { diameter: 19 mm, mass_per_length: 1.55 kg/m, breaking_strength: 235 "
        + "kN, metallic_area: 175 mm2, modulus: ‹29.9 GPa }", "modulus: '29.9 GPa' is out of range; allowed is")]
    [InlineData("treated: true", "treated: ‹yes", "'yes' is not a value of treated; write true or false")]
    [InlineData(
        "edge: 6 in", "edge: ‹18 in",
        "edge: '18 in' from the posts' inner face lies beyond the middle of the deck; from there to the middle are 17-15/16 in")]
    [InlineData("paper: letter", "paper: ‹leter", "did you mean letter?")]
    public void One_fault(string old, string replacement, string says)
    {
        var marked = Examples.With(old, replacement);
        var before = marked[..marked.IndexOf('‹', StringComparison.Ordinal)];
        var (line, column) = (1 + before.Count(c => c == '\n'), before.Length - before.LastIndexOf('\n'));
        var fault = Assert.Single(Examples.Read(marked.Replace("‹", "", StringComparison.Ordinal)).Faults);
        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
        Assert.Equal((line, column), (fault.Line, fault.Column));
    }

    /// <summary>Rails and cap take their default stock, which the file's own list has not: told once, at the list.</summary>
    [Fact]
    public void One_reason_is_told_once()
    {
        var faults = Examples.Read(
            "name: T\nsite: { span: 30 ft }\nstock:\n  treated: { species: southern-pine, treated: true, lengths: [12 ft] }\n").Faults;
        var fault = Assert.Single(faults);
        Assert.Contains("stock has no 'cedar', which", fault.Message, StringComparison.Ordinal);
        Assert.Equal(4, fault.Line);
    }

    // Counted by hand, so that the places above do not rest on one way of counting.
    [Fact]
    public void Places_count_from_one()
    {
        var fault = Assert.Single(Examples.Read(Examples.With("depth: 5/8 in", "depth: 4 in")).Faults);
        Assert.Equal((20, 40), (fault.Line, fault.Column));
    }

    [Fact]
    public void A_key_without_value_is_told_behind_the_key()
    {
        var fault = Assert.Single(Examples.Read("name: a\nsite:\n  span:\n").Faults);
        Assert.Contains("span must be a single value such as 30 ft, not nothing", fault.Message, StringComparison.Ordinal);
        Assert.Equal((3, 8), (fault.Line, fault.Column));
    }

    [Fact]
    public void A_bridge_of_one_bay_has_no_frame()
    {
        var fault = Assert.Single(Examples.Read("name: a\nsite: { span: 20 ft }\nframes: { spacing: 25 ft }\n").Faults);
        Assert.Contains("leaves no frame between the two end frames", fault.Message, StringComparison.Ordinal);
        Assert.Equal((3, 20), (fault.Line, fault.Column));
    }

    [Fact]
    public void Missing_required_keys_are_told_at_the_mapping_that_lacks_them()
    {
        var faults = Examples.Read("use: private\nsite:\n  rise: 0 ft\n").Lines;
        Assert.Equal(
            """
            bridge.yaml:1:1: error: name is missing; write one such as name: My footbridge [missing-key]
            bridge.yaml:3:3: error: site.span is missing; write one such as span: 30 ft [missing-key]
            """.ReplaceLineEndings("\n"),
            string.Join('\n', faults));
    }

    [Fact]
    public void Several_faults_are_told_together_in_the_order_of_the_file()
    {
        var text = Examples.With("span: 30 ft", "span: 30")
            .Replace("sag: 6 %", "sagg: 6 %", StringComparison.Ordinal)
            .Replace("depth: 5/8 in", "depth: 4 in", StringComparison.Ordinal)
            .Replace("stock: cedar }     #", "stock: oak }     #", StringComparison.Ordinal);
        Assert.Equal([(5, 9), (12, 3), (20, 40), (34, 43)], Examples.Read(text).Faults.Select(f => (f.Line, f.Column)));
    }

    // Only what the file says can be mended in it: the defaults that it runs into are not at fault.
    [Theory]
    [InlineData("frames: { base: { length: ‹52 in } }", "stands out over the base's end")]
    [InlineData("frames: { base: { section: ‹2x4, flat: true } }", "keeper holes are blind")]
    [InlineData("ropes: { spacing: 54 in }\nframes: { base: { length: ‹56 in }, post: { foot: 17-3/4 in } }",
        "puts the outer keeper holes over the ends of the base; write at most 1-3/4 in")]
    [InlineData("frames: { post: { length: ‹12 in } }\nguard: { rails: { count: 1 } }", "meets the post above its head")]
    [InlineData("frames: { post: { foot: ‹3 in }, brace: { foot: 13 in } }", "no board fits")]
    [InlineData("frames: { post: { foot: 18 in } }\ndeck: { side_gap: ‹17 in }", "side_gap: with '17 in' no board fits: between the posts' "
        + "feet are 36 in, less 17 in on either side, and 5-1/2 in are needed; write at most 15-1/4 in")]
    [InlineData("deck: { layout: across, side_gap: ‹17-1/2 in }", "side_gap: with '17-1/2 in' two stringers do not fit")]
    [InlineData(
        "frames: { base: { length: 56 in }, post: { foot: 17-3/4 in }, brace: { lean: ‹75 deg } }",
        "there is no place for the brace between post and base's end; with this foot write at most")]
    public void A_fault_of_a_default_is_told_at_what_the_file_gives(string rest, string says)
    {
        var marked = "name: a\nsite: { span: 30 ft }\n" + rest + "\n";
        var before = marked[..marked.IndexOf('‹', StringComparison.Ordinal)];
        var (line, column) = (1 + before.Count(c => c == '\n'), before.Length - before.LastIndexOf('\n'));
        var faults = Examples.Read(marked.Replace("‹", "", StringComparison.Ordinal)).Faults;
        Assert.Contains(says, Assert.Single(faults).Message, StringComparison.Ordinal);
        Assert.Equal((line, column), (faults[0].Line, faults[0].Column));
    }

    // What is told about a lean is tried: it works, and a tenth of a degree more does not.
    [Fact]
    public void The_lean_told_for_a_brace_works()
    {
        const string text = "name: a\nsite: { span: 30 ft }\n"
            + "frames: { base: { length: 56 in }, post: { foot: 17-3/4 in }, brace: { lean: 75 deg } }\n";
        var message = Assert.Single(Examples.Read(text).Faults).Message;
        var told = message[(message.LastIndexOf("at most ", StringComparison.Ordinal) + 8)..];
        Assert.Empty(Examples.Read(text.Replace("75 deg", told, StringComparison.Ordinal)).Faults);
        var degrees = double.Parse(told.Replace(" deg", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
        Assert.NotEmpty(
            Examples
                .Read(text.Replace("75 deg", FormattableString.Invariant($"{degrees + 0.1:0.0} deg"), StringComparison.Ordinal)).Faults);
    }

    [Fact]
    public void A_fault_prints_with_file_line_and_column() => Assert.Equal(
        "bridge.yaml:5:9: error: span: '30' has no unit; a length is written with in, ft, mm, cm or m, as in 36 ft, 37 ft 6-1/2 in, 5/8 "
            + "in, 1219 mm or 1.2 m [not-a-quantity]",
        Assert.Single(Examples.Read(Examples.With("span: 30 ft", "span: 30")).Lines));

    [Fact]
    public void More_than_fifty_thousand_frames_are_too_many()
    {
        var text = Examples.With("span: 30 ft", "span: 20000 ft").Replace("spacing: 3 ft", "spacing: 4 in", StringComparison.Ordinal);
        var fault = Assert.Single(Examples.Read(text).Faults);
        Assert.Contains("more than 50000", fault.Message, StringComparison.Ordinal);
        Assert.Equal((16, 12), (fault.Line, fault.Column));
    }

    [Fact]
    public void A_metric_file_is_answered_in_millimetres()
    {
        var fault = Assert.Single(Examples.Read("name: x\nunits: metric\nsite: { span: 9 m }\nropes: { sag: 3 m }\n").Faults);
        Assert.Contains("here 4.5 mm to 2700 mm", fault.Message, StringComparison.Ordinal);
        Assert.Equal((4, 15), (fault.Line, fault.Column));
    }
}
