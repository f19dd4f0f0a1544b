using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Checks.Register;
using BridgeForm.Materials;
using BridgeForm.Output.Lists;
using BridgeForm.Tests.Project;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.Lists;

/// <summary>The lists against the program's tables, and rows of them against what is printed elsewhere.</summary>
public sealed class ListContentTests
{
    [Fact]
    public void The_committed_page_is_what_the_program_writes()
    {
        var path = Path.Combine(Sample.Root, "docs", "tables.md");
        if (Sample.Updating)
        {
            File.WriteAllText(path, ListPage.Markdown());
        }

        Assert.Equal(ListPage.Markdown(), File.ReadAllText(path));
    }

    [Fact]
    public void The_page_has_every_row_and_note_of_every_list_but_the_checks()
    {
        var page = ListPage.Markdown();
        foreach (var list in AllLists.Kinds.Where(k => k.Word is not "checks").Select(k => k.Make()))
        {
            Assert.All(list.Notes, note => Assert.Contains("\n" + note + "\n", page, StringComparison.Ordinal));
            foreach (var row in list.Tables.SelectMany(t => t.Rows))
            {
                Assert.Contains("\n| `" + row[0] + "` | " + string.Join(" | ", row.Skip(1)), page.Replace(
                    $"` | `{row[1]}`", $"` | {row[1]}", StringComparison.Ordinal), StringComparison.Ordinal);
            }
        }

        Assert.Contains("(checks.md)", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_row_has_a_cell_for_every_column() => Assert.All(
        AllLists.Kinds.SelectMany(k => k.Make().Tables), t => Assert.All(t.Rows, row => Assert.Equal(t.Columns.Length, row.Length)));

    [Fact]
    public void Ropes_are_those_of_the_table_make_by_make_thinnest_first()
    {
        var tables = Tables("ropes");
        Assert.Equal(RopeTable.Keys, tables.SelectMany(t => t.Rows).Select(r => r[0]));
        Assert.All(tables, t => Assert.Equal(t.Rows.Select(Millimetres).Order(), t.Rows.Select(Millimetres)));
        Assert.All(tables.Where(t => t.Title.Contains(", bare", StringComparison.Ordinal)), t => Assert.All(
            t.Rows, r => Assert.False(RopeTable.TryFind(r[0], out var rope) && rope.Galvanized)));

        static double Millimetres(ImmutableArray<string> row) => double.Parse(row[2], CultureInfo.InvariantCulture);
    }

    // Columns: in, mm, lbf, kN, in2, mm2, lb/ft, kg/m.
    // ASTM A475: 1/4 in breaks at 6650 lbf (29.58 kN), 121 lb per 1000 ft (0.180 kg/m), wires of 2.03 mm: 7·π/4·2.03² = 22.66 mm².
    // Wire rope: 29.4 short tons less a tenth, 52920 lbf (235.40 kN); 0.483·0.75² = 0.2717 in² (175.3 mm²); 1.04 lb/ft (1.548 kg/m).
    // FAA AC 43.13-1B, table 7-3: cord of 3/8 in breaks at 14,400 lbf (64.05 kN); 24.3 lb per 100 ft (0.3616 kg/m), from memory.
    [Theory]
    [InlineData("strand-ehs-1/4", "1/4 6.4 6650 29.6 0.0351 22.7 0.121 0.180")]
    [InlineData("rope-6x19-iwrc-eips-galvanized-3/4", "3/4 19.1 52920 235.4 0.2717 175.3 1.040 1.548")]
    [InlineData("cord-7x19-3/8", "3/8 9.5 14400 64.1 0.0649 41.9 0.243 0.362")]
    public void A_rope(string key, string numbers) => Assert.Equal(numbers, string.Join(' ', Row("ropes", key).Skip(1).Take(8)));

    // 23 000 ksi · 6.894757 MPa = 158.58 GPa; 13 500 ksi = 93.08 GPa.
    [Fact]
    public void Kinds_of_ropes_in_words_and_with_their_modulus()
    {
        var titles = Tables("ropes").Select(t => t.Title).ToList();
        Assert.Contains(
            "strand of 7 wires, of 19 from 3/4 in, extra high strength, zinc coated; modulus 23000 ksi, 158.6 GPa", titles);
        Assert.Contains("wire rope 6x19 with a steel core, improved plow steel, bare; modulus 13500 ksi, 93.1 GPa", titles);
        Assert.Equal(titles.Count, titles.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Species_are_those_of_the_table_by_key()
    {
        var keys = SpeciesTable.All.Select(s => s.Key).Order(StringComparer.Ordinal).ToList();
        Assert.All(Tables("species"), t => Assert.Equal(keys, t.Rows.Select(r => r[0])));
        Assert.All(Tables("species")[1].Rows, r => Assert.All(r[1].Split(", "), w => Assert.Equal(r[0], StampedWords.Species(w))));
    }

    // NDS Table 12.3.3A: G 0.55. 62.4·0.55/(1 + 0.009·0.55·M)·(1 + M/100): 36.28 lb/ft³ at 12 %, 37.33 at 19, 38.58 at 28; times
    // 16.0185: 581, 598, 618 kg/m³. Freshly treated 55 lb/ft³, 881 kg/m³, from memory.
    [Fact]
    public void A_species() => Assert.Equal(
        "Southern Pine|0.55|36.3/581|37.3/598|38.6/618|55.0/881|no", string.Join('|', Row("species", "southern-pine").Skip(1).Take(7)));

    [Fact]
    public void Grades_have_every_row_of_the_values_and_words_that_are_understood()
    {
        var tables = Tables("grades");
        Assert.Equal(StampedWords.Grades, tables[0].Rows.Select(r => r[0]));
        Assert.All(tables[0].Rows, r => Assert.All(r[1].Split(", "), w => Assert.Equal(r[0], StampedWords.Grade(w))));
        Assert.All(
            from row in tables[0].Rows from beside in StampedWords.Besides select (row[0], row[1].Split(", ")[0] + " " + beside),
            pair => Assert.Equal(pair.Item1, StampedWords.Grade(pair.Item2)));
        Assert.Equal(
            DesignValues.All.Select(v => $"{v.Species} {v.Grade} {v.Size}{(v.Wet ? ", wet" : "")}").Order(StringComparer.Ordinal),
            tables.Skip(2).SelectMany(t => t.Rows.Select(r => $"{t.Title.Split(':')[0]} {r[0]} {r[1]}")).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Species_have_the_grades_that_have_values()
    {
        var table = Tables("grades")[1];
        Assert.Equal(SpeciesTable.All.Select(s => s.Key).Order(StringComparer.Ordinal), table.Rows.Select(r => r[0]));
        foreach (var row in table.Rows)
        {
            Assert.All(StampedWords.Grades.Select((grade, i) => (grade, Cell: row[i + 1])), p => Assert.Equal(
                DesignValues.All.Any(v => v.Species == row[0] && v.Grade == p.grade) ? "yes" : "-", p.Cell));
        }
    }

    // Southern Pine Use Guide, metric edition 2018, prints for No. 2, 2x6: Fb 6.9, Ft 4.1, Fv 1.2, Fc⊥ 3.9, Fc 9.7 MPa, E 9.7, Emin
    // 3.5 GPa; in psi 1000, 600, 175, 565, 1400, E 1.4e6, Emin 510,000. NDS Supplement Table 4A, Douglas fir-larch No. 1: Fb 1000,
    // Ft 675, Fv 180, Fc⊥ 625, Fc 1500, E 1.7e6, Emin 620,000 psi, times 0.006894757.
    [Theory]
    [InlineData("southern-pine", "no2", "2x6", "1000/6.9 600/4.1 175/1.2 565/3.9 1400/9.7 1400/9.7 510/3.5")]
    [InlineData("douglas-fir-larch", "no1", "dimension", "1000/6.9 675/4.7 180/1.2 625/4.3 1500/10.3 1700/11.7 620/4.3")]
    public void Values_of_a_grade(string species, string grade, string size, string values)
    {
        var table = Tables("grades").Single(t => t.Title.StartsWith(species + ":", StringComparison.Ordinal));
        Assert.Equal(values, string.Join(' ', table.Rows.Single(r => (r[0], r[1]) == (grade, size)).Skip(2).Take(7)));
    }

    [Fact]
    public void Lumber_has_every_name_thinnest_first() => Assert.Equal(Lumber.Names, Tables("lumber")[0].Rows.Select(r => r[0]));

    // PS 20 as trade tables print it; green widths from memory.
    [Theory]
    [InlineData("1x4", "3/4 x 3-1/2", "19.1 x 88.9", "25/32 x 3-9/16", "19.8 x 90.5")]
    [InlineData("5/4x6", "1 x 5-1/2", "25.4 x 139.7", "1-1/32 x 5-5/8", "26.2 x 142.9")]
    [InlineData("2x4", "1-1/2 x 3-1/2", "38.1 x 88.9", "1-9/16 x 3-9/16", "39.7 x 90.5")]
    [InlineData("6x6", "5-1/2 x 5-1/2", "139.7 x 139.7", "5-1/2 x 5-1/2", "139.7 x 139.7")]
    public void A_size(string name, params string[] sides) => Assert.Equal(sides, Row("lumber", name).Skip(1));

    [Fact]
    public void Checks_are_those_declared_in_the_order_of_their_page()
    {
        var rows = Tables("checks")[0].Rows;
        Assert.Equal(AllChecks.Declared.Select(c => (c.Id, c.Title)), rows.Select(r => (r[0], r[2])));
        var page = File.ReadAllText(Path.Combine(Sample.Root, "docs", "checks.md"));
        Assert.All(rows, row => Assert.Equal(
            row[1].Split(' ').Where(l => l is not "-").Select(Word).Order(StringComparer.Ordinal),
            OnPage(page, row[0]).Order(StringComparer.Ordinal)));
    }

    // The guard's post is compared, or has no value of its wood: holds, fails, engineer (docs/checks.md).
    [Fact]
    public void A_check() => Assert.Equal("h - f e", Row("checks", "guard-post")[1]);

    [Fact]
    public void Papers_are_those_that_a_file_may_name()
    {
        var rows = Tables("papers")[0].Rows;
        Assert.All(rows, row => Assert.Equal(row[0], Examples.Good(Examples.With("paper: letter", "paper: " + row[0])).Shop.Paper));
        var fault = Assert.Single(Examples.Read(Examples.With("paper: letter", "paper: foolscap")).Faults);
        var named = fault.Message[(fault.Message.IndexOf("write ", StringComparison.Ordinal) + "write ".Length)..];
        Assert.Equal(named.Replace(" or ", ", ", StringComparison.Ordinal).Split(", "), rows.Select(r => r[0]));
    }

    // ISO 216: A4 210 x 297 mm; ANSI Y14.1: A is 8.5 x 11 in; Arch D 24 x 36 in.
    [Theory]
    [InlineData("a4", "8.27 x 11.69", "210 x 297")]
    [InlineData("letter", "8.5 x 11", "215.9 x 279.4")]
    [InlineData("arch-d", "24 x 36", "609.6 x 914.4")]
    public void A_paper(string key, string inches, string millimetres) =>
        Assert.Equal((inches, millimetres), (Row("papers", key)[1], Row("papers", key)[2]));

    [Theory]
    [InlineData("ropes", "ropes.type")]
    [InlineData("species", "stock.NAME.species")]
    [InlineData("grades", "stock.NAME.grade")]
    [InlineData("lumber", "section")]
    [InlineData("papers", "shop.paper")]
    public void The_key_is_named_below(string word, string key) =>
        Assert.Contains(List(word).Notes, n => n.Contains(" key " + key, StringComparison.Ordinal));

    /// <summary>A letter behind each row leads to its source, and no source is left over.</summary>
    [Theory]
    [InlineData("ropes")]
    [InlineData("species")]
    [InlineData("grades")]
    public void Every_row_says_where_it_is_from(string word)
    {
        var list = List(word);
        var letters = list.Tables.Where(t => t.Columns[^1].Name is "from").SelectMany(t => t.Rows).Select(r => r[^1]).ToHashSet(
            StringComparer.Ordinal);
        var told = list.Notes.Where(n => n.Length > 2 && n[1] == ':').Select(n => n[..1]).ToList();
        Assert.Equal(told, letters.Order(StringComparer.Ordinal));
        var strand = List("ropes").Tables[0].Rows[0];
        Assert.True(RopeTable.TryFind(strand[0], out var rope));
        Assert.Contains($"{strand[^1]}: {rope.Source}.", List("ropes").Notes);
    }

    private static string Word(string letter) => letter switch
    {
        "h" => "holds",
        "r" => "review",
        "f" => "fails",
        _ => "engineer",
    };

    private static string[] OnPage(string page, string id) =>
        page.Split('\n').Single(l => l.StartsWith($"`{id}` · ", StringComparison.Ordinal)).Split(" · ")[1].Split(", ");

    private static ReferenceList List(string word) => AllLists.Kinds.Single(k => k.Word == word).Make();

    private static ImmutableArray<ListTable> Tables(string word) => List(word).Tables;

    private static ImmutableArray<string> Row(string word, string key) =>
        Tables(word).SelectMany(t => t.Rows).First(r => string.Equals(r[0], key, StringComparison.Ordinal));
}
