using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

/// <summary>What is told of a rope, species, grade, section or stock that there is not: the nearest meaning, and what lists all.</summary>
public sealed class SuggestionTests
{
    private const string Stock =
        "  treated: { species: southern-pine, grade: no1, treated: true, lengths: [8 ft] }\n"
        + "  cedar: { species: western-red-cedar, grade: no2, lengths: [8 ft] }\n";

    private static readonly string[] s_makes = ["strand-ehs", "rope-6x19-iwrc-ips-galvanized", "cord-7x19"];

    // Metric sizes beside those in inches: EN 12385-4 has rope of 16 mm. Numbers invented.
    private static readonly RopeCatalogue s_metric = Catalogue(
        Own("wire-16", RopeKind.WireRope, 0.016, 140e3, galvanized: true), Own("wire-16-stronger", RopeKind.WireRope, 0.016, 160e3, true),
        Own("wire-16-bare", RopeKind.WireRope, 0.016, 130e3, false), Own("strand-5/8", RopeKind.Strand, 0.015875, 180e3, true));

    [Theory]
    [InlineData("5/8 in")]
    [InlineData("5/8 inch")]
    [InlineData("5/8\"")]
    [InlineData("5/8")]
    [InlineData("0.625 in")]
    [InlineData("5/8 in steel cable")]
    [InlineData("cable 5/8 in")]
    public void A_diameter_in_inches_names_the_ropes_of_it_by_kind(string text) => Assert.Equal(
        "of 5/8 in (15.9 mm) there are strand-ehs-5/8, strand-ehs-galvanized-5/8, rope-6x19-iwrc-ips-galvanized-5/8, "
            + "rope-6x19-iwrc-eips-galvanized-5/8; 'bridgeform list ropes' lists all",
        Hint(text));

    // 5/8 in, 15.875 mm, is no 16 mm.
    [Theory]
    [InlineData("16 mm")]
    [InlineData("16 mm wire rope")]
    [InlineData("rope-6x37-1770-16-mm")]
    public void A_diameter_in_millimetres_names_the_metric_ropes_of_it(string text) => Assert.Equal(
        "of 16 mm (0.63 in) there are rope-6x19-iwrc-1770-16-mm, rope-6x19-iwrc-1960-16-mm, rope-6x36-iwrc-1770-16-mm, "
            + "rope-6x36-iwrc-1960-16-mm; 'bridgeform list ropes' lists all",
        Hint(text));

    // 30 mm lie between 1-1/8 in, 28.6 mm, and 1-1/4 in, 31.8 mm; metric ropes have 28 and 32 mm; 3/4 in are 19.05 mm.
    [Fact]
    public void A_diameter_in_millimetres_names_what_is_next_to_it()
    {
        Assert.StartsWith(
            "there is none of 30 mm (1.18 in), but of 28.6 mm (1-1/8 in) rope-6x19-iwrc-ips-galvanized-1-1/8, "
                + "rope-6x19-iwrc-eips-galvanized-1-1/8, and of 31.8 mm (1-1/4 in) rope-6x19-iwrc-ips-galvanized-1-1/4, "
                + "rope-6x19-iwrc-eips-galvanized-1-1/4; 'bridgeform list ropes' lists all",
            Hint("30 mm"), StringComparison.Ordinal);
        Assert.StartsWith("of 19.1 mm (3/4 in) there are strand-ehs-3/4, ", Hint("19 mm"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("16 mm")]
    [InlineData("16mm")]
    [InlineData("16")]
    [InlineData("1.6 cm")]
    public void A_metric_rope_is_named_where_there_is_one(string text) =>
        Assert.Contains(
            "; of 16 mm (0.63 in) there are wire-16, wire-16-stronger; ", RopeHint.Message(text, s_metric), StringComparison.Ordinal);

    [Theory]
    [InlineData("rope-6x19-iwrc-eips-galvanised-5/8", "rope-6x19-iwrc-eips-galvanized-5/8")]
    [InlineData("strand-esh-3/8", "strand-ehs-3/8")]
    [InlineData("Cord-7x19-1/4", "cord-7x19-1/4")]
    [InlineData("cord-7x9-1/4", "cord-7x19-1/4")]
    [InlineData("rope-6x19-iwcr-1960-16-mm", "rope-6x19-iwrc-1960-16-mm")]
    [InlineData("rope-6x19-iwrc-1770-16", "rope-6x19-iwrc-1770-16-mm")]
    [InlineData("rope-6x19-iwrc-eips 1-1/8", "rope-6x19-iwrc-eips-1-1/8")]
    // Extra improved or improved: a letter from both, a seventh apart in strength.
    [InlineData("rope-6x19-iwrc-xips-3/4", "rope-6x19-iwrc-ips-3/4 or rope-6x19-iwrc-eips-3/4")]
    public void A_misspelt_key_is_the_nearest_one_of_its_size(string key, string meant) =>
        Assert.Equal($"did you mean {meant}? 'bridgeform list ropes' lists all", Hint(key));

    // By letters alone these are one letter from ropes of another size: 9/16, 1-3/8, 3/8.
    [Theory]
    [InlineData("rope-6x19-iwrc-eips-3/16", "of 3/16 in (4.8 mm) there are strand-ehs-3/16, strand-ehs-galvanized-3/16, cord-7x19-")]
    [InlineData("rope-6x19-iwrc-eips-1-5/8", "there is none of 1-5/8 in (41.3 mm), but of 1-1/2 in (38.1 mm) rope-6x19-iwrc-ips-")]
    [InlineData("cord-7x19-5/8", "of 5/8 in (15.9 mm) there are strand-ehs-5/8, strand-ehs-galvanized-5/8, rope-6x19-iwrc-ips-")]
    public void A_size_that_a_make_has_not_is_not_taken_for_another(string key, string says) =>
        Assert.StartsWith(says, Hint(key), StringComparison.Ordinal);

    [Theory]
    [InlineData("rope-6x19-iwrc-eips", "rope-6x19-iwrc-eips-SIZE from 1/4 to 1-1/2;")]
    [InlineData("rope-6x36-iwrc-1960", "rope-6x36-iwrc-1960-SIZE from 8-mm to 40-mm;")]
    [InlineData("strand", "strand-ehs-SIZE from 1/8 to 1, strand-ehs-galvanized-SIZE from 1/8 to 1;")]
    public void A_key_without_its_size_is_told_the_sizes(string key, string says) =>
        Assert.StartsWith("it wants a size: " + says, Hint(key), StringComparison.Ordinal);

    /// <summary>Such a text was once answered with the first key of the table, its thinnest strand.</summary>
    [Theory]
    [InlineData("string")]
    [InlineData("steel cable")]
    [InlineData("rope")]
    [InlineData("strand")]
    [InlineData("")]
    [InlineData("1e400 mm")]
    public void Nothing_near_names_no_rope(string text)
    {
        var hint = Hint(text);
        Assert.Contains("'bridgeform list ropes' lists all", hint, StringComparison.Ordinal);
        Assert.DoesNotContain(RopeTable.Keys, key => Names(hint).Contains(key, StringComparer.Ordinal));
    }

    [Fact]
    public void Every_size_of_every_make_is_met_by_its_own_diameter()
    {
        foreach (var key in RopeTable.Keys)
        {
            Assert.True(RopeTable.TryFind(key, out var rope));
            var hint = Hint("x" + key);
            var named = RopeTable.Keys.Where(k => Names(hint).Contains(k, StringComparer.Ordinal)).ToList();
            Assert.Contains(key, named);
            Assert.All(named, k => Assert.Equal(rope.Diameter, RopeTable.TryFind(k, out var other) ? other.Diameter : 0, 1e-12));
        }
    }

    [Fact]
    public void Of_each_kind_those_that_are_zinc_coated()
    {
        foreach (var make in s_makes)
        {
            Assert.Contains($"{make}-3/8", Names(Hint("3/8 in")), StringComparer.Ordinal);
        }

        Assert.DoesNotContain("wire-16-bare", RopeHint.Message("16 mm", s_metric), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rope_in_a_file() => Told(
        "ropes: { type: 5/8 in }\n", "unknown-rope", "'5/8 in' is not a rope of the built-in table; of 5/8 in (15.9 mm) there are");

    [Theory]
    [InlineData("southern-pin", "did you mean southern-pine?")]
    [InlineData("Sothern Yellow Pine", "did you mean southern-pine?")]
    [InlineData("Alaska Ceder", "did you mean yellow-cedar?")]
    [InlineData("oak", "did you mean white-oak?")]
    [InlineData("cedar", "did you mean western-red-cedar or yellow-cedar?")]
    [InlineData("fir", "did you mean douglas-fir-larch, hem-fir or spruce-pine-fir?")]
    // Red oak rots where white oak lasts.
    [InlineData("red-oak", "known are southern-pine, ")]
    [InlineData("ironwood", "known are southern-pine, ")]
    public void A_species(string species, string says) => Told(
        "stock:\n" + Stock.Replace("southern-pine", species, StringComparison.Ordinal), "unknown-species",
        $"'{species}' is not a species; {says}", "'bridgeform list species' lists all");

    // In a metric file wood of EN 338 is meant, where its trade names have the word.
    [Theory]
    [InlineData("spruce", "did you mean en338-softwood?")]
    [InlineData("Larch", "did you mean en338-softwood?")]
    [InlineData("oak", "did you mean en338-hardwood?")]
    [InlineData("cedar", "did you mean western-red-cedar or yellow-cedar?")]
    public void A_species_of_a_metric_file(string species, string says) => Told(
        "units: metric\nstock:\n" + Stock.Replace("southern-pine", species, StringComparison.Ordinal), "unknown-species",
        $"'{species}' is not a species; {says}", "'bridgeform list species' lists all");

    // As near to no1 as to no3: the lowest.
    [Theory]
    [InlineData("no4", "did you mean no3?")]
    [InlineData("#4", "did you mean no3?")]
    [InlineData("Selct Structural", "did you mean ss?")]
    [InlineData("Stud", "there are ss, no1, no2, no3, C30, C24, C18, D30;")]
    // C16 is a letter from C18, and weaker.
    [InlineData("C16", "of EN 338 there are C18, C24, C30, D30; a lower class may stand in for a higher;")]
    [InlineData("C240", "of EN 338 there are C18, C24, C30, D30; a lower class may stand in for a higher;")]
    public void A_grade(string grade, string says) => Told(
        "stock:\n" + Stock.Replace("grade: no1", $"grade: '{grade}'", StringComparison.Ordinal), "unknown-grade",
        $"'{grade}' is not a grade of the built-in tables; {says}", "'bridgeform list grades' lists them by species");

    [Theory]
    [InlineData("4x7", "did you mean 4x6 or 4x8?")]
    [InlineData("89x89", "those are the actual millimeters of 4x4;")]
    public void A_section(string section, string says) => Told(
        $"frames: {{ base: {{ section: {section} }} }}\n", "not-a-section", $"'{section}' is not a nominal size of PS 20; {says}",
        "'bridgeform list lumber' lists all");

    [Theory]
    [InlineData("ceder", "did you mean cedar? there are treated, cedar")]
    [InlineData("southern-pine", "did you mean treated? there are treated, cedar")]
    [InlineData("WRC", "did you mean cedar? there are treated, cedar")]
    [InlineData("oak", "there are treated, cedar")]
    public void A_stock(string name, string says) => Told(
        $"deck: {{ board: {{ stock: {name} }} }}\nstock:\n" + Stock, "unknown-stock", $"'{name}' is not a name under stock; {says}");

    private static void Told(string keys, string code, params string[] says)
    {
        var reading = ProjectReader.Read("name: x\nsite: { span: 30 ft }\n" + keys, "bridge.yaml", RopeTable.Catalogue);
        var fault = Assert.Single(reading.Faults);
        Assert.Equal(code, fault.Code);
        Assert.All(says, text => Assert.Contains(text, fault.Message, StringComparison.Ordinal));
    }

    private static string Hint(string text)
    {
        var message = RopeHint.Message(text, RopeTable.Catalogue);
        const string Said = " is not a rope of the built-in table; ";
        return message[(message.IndexOf(Said, StringComparison.Ordinal) + Said.Length)..];
    }

    private static string[] Names(string hint) => hint.Split(' ', ';', ',', '?');

    private static RopeCatalogue Catalogue(params RopeProperties[] ropes) => new(
        [.. ropes.Select(r => r.Name)], key => ropes.FirstOrDefault(r => string.Equals(r.Name, key, StringComparison.Ordinal)));

    private static RopeProperties Own(string name, RopeKind kind, double diameter, double strength, bool galvanized) => new()
    {
        Name = name,
        Kind = kind,
        Diameter = diameter,
        MassPerLength = 1,
        BreakingStrength = strength,
        MetallicArea = 1e-4,
        Modulus = 100e9,
        Galvanized = galvanized,
        Source = "invented",
    };
}
