using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Project;

/// <summary>One kind of lumber the builder buys.</summary>
public sealed record StockParameters
{
    /// <summary>Its name in the project file.</summary>
    public required string Name { get; init; }

    /// <summary>Key of the species.</summary>
    public required string Species { get; init; }

    /// <summary>Grade, by the word of the tables: <c>no1</c> for <c>No. 1</c>; as written where only <c>values</c> has it.</summary>
    public required string Grade { get; init; }

    /// <summary>Pressure-treated: its cuts are brushed with field preservative.</summary>
    public required bool Treated { get; init; }

    /// <summary>Heartwood of a naturally durable species: cuts need no preservative.</summary>
    public bool Durable { get; init; }

    /// <summary>Incised for treatment.</summary>
    public required bool Incised { get; init; }

    /// <summary>Lengths on sale, metres, shortest first.</summary>
    public required ImmutableArray<double> Lengths { get; init; }

    /// <summary>Sections on sale, as the file lists them, else those that are common in its units.</summary>
    public ImmutableArray<Section> Sections { get; init; } = [];

    /// <summary>Boards bought beside those of the plan, for culls and mistakes, as a share of theirs; 0 for none.</summary>
    public double Spare { get; init; }

    /// <summary>Densities, dry to freshly treated.</summary>
    public required DensityRange Density { get; init; }

    /// <summary>Whether the yard sells a section: by its dressed sizes, so that 4x6 is 89 x 140 mm.</summary>
    public bool Sells(Section section) => Sections.Any(s => s.IsSameSize(section));
}

/// <summary>Keys under <c>stock</c>, how they are read, and whether the names of stock exist.</summary>
internal static class StockSection
{
    private const string ImperialStock = """
        treated: { species: southern-pine, grade: no1, treated: true, lengths: [8 ft, 10 ft, 12 ft, 16 ft] }
        cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft, 10 ft, 12 ft] }
        """;

    // Strength-graded spruce or pine, treated, in steps of 0.6 m (common practice, no source; EN 1313-1 lists no lengths). Western red
    // cedar is sold in Europe too; its select grade is C18 (EN 1912, from memory).
    private const string MetricStock = """
        treated: { species: en338-softwood, grade: C24, treated: true, lengths: [2.4 m, 3 m, 3.6 m, 4.2 m, 4.8 m] }
        cedar: { species: western-red-cedar, grade: C18, treated: false, lengths: [2.4 m, 3 m, 3.6 m] }
        """;

    private static readonly string[] Users =
    [
        "frames.base.stock",
        "frames.post.stock",
        "frames.brace.stock",
        "deck.board.stock",
        "deck.stringer.stock",
        "deck.cleats.stock",
        "guard.rails.stock",
        "guard.cap.stock",
        "guard.pickets.stock",
        "guard.handrail.stock",
        "guard.newels.stock",
    ];

    public static KeySpec Keys => Define.Named(
        "stock",
        "Lumber to buy, by names of your own",
        Define.Map(
            "",
            "One kind of lumber",
            [
                Define.Text("species", "Species, as stamped or by its key, built in or under species").Needed("southern-pine"),
                Define.Text("grade", "Grade, as stamped: no1, No. 1, #1, Select Structural; another one that stands under values", "no2"),
                Define.Flag("treated", "Pressure-treated with preservative", "false"),
                Define.Flag("incised", "Incised for treatment", "false"),
                Define.List("lengths", "Lengths on sale", Define.Length("", "Length", "1 ft", "100 ft"), 1, 100)
                    .Needed("[8 ft]", "[2.4 m]"),
                Define.List("sections", "Sections on sale", SectionItem, 1, 200) with
                {
                    Default = "[" + string.Join(", ", CommonSections.Imperial) + "]",
                    MetricDefault = "[" + string.Join(", ", CommonSections.Metric) + "]",
                },
                Define.Quantity(
                    QuantityKind.Share, "spare", "Boards to buy beside those of the plan, for culls and mistakes, as a share of theirs",
                    "0 %", "100 %", "0 %"),
                DensitySection.Keys,
            ])) with
    { Default = ImperialStock, MetricDefault = MetricStock, InStarter = true };

    private static KeySpec SectionItem =>
        new("", KeyShape.Value, "Section") { Type = ValueForm.Section, Example = "2x6", MetricExample = "45 x 145 mm" };

    public static ImmutableArray<StockParameters> Read(FileValues v, ImmutableArray<Species> own, FaultList faults) =>
        [.. v.Names("stock").Select(name => One(v, name, own, faults))];

    /// <summary>Names of stock that exist, grades that some table has.</summary>
    public static void Check(CheckedFile f)
    {
        foreach (var stock in f.Parameters.Stock)
        {
            Grade(f, stock);
        }

        if (f.Good("stock"))
        {
            foreach (var path in Users.Where(p => IsUnknown(f, p) && (f.Values.Given(p) || !f.Values.Given("stock"))))
            {
                Named(f, path);
            }

            var leftOut = Users.Where(p => IsUnknown(f, p) && !f.Values.Given(p) && f.Values.Given("stock"));
            foreach (var left in leftOut.GroupBy(f.Written, StringComparer.Ordinal))
            {
                LeftOut(f, left.Key, [.. left]);
            }
        }
    }

    private static StockParameters One(FileValues v, string name, ImmutableArray<Species> own, FaultList faults)
    {
        var path = "stock." + name;
        var species = SpeciesOf(v, path + ".species", own, faults);
        var treated = v.Flag(path + ".treated");
        var grade = GradeOf(v, path);
        return new StockParameters
        {
            Name = name,
            Species = species.Key,
            Grade = grade,
            Treated = treated,
            // What the built-in table knows to rot does so whatever a file says.
            Durable = species.Durable && SpeciesTable.Find(species.Key) is not { Durable: false },
            Incised = v.Flag(path + ".incised"),
            Lengths = [.. v.Items(path + ".lengths").Select(v.Number).Order()],
            Sections = [.. v.Items(path + ".sections").Select(v.Section)],
            Spare = v.Number(path + ".spare"),
            Density = DensitySection.Read(v, path + ".density", DensityOf(species, grade, treated)),
        };
    }

    // Spruce C24 under species says the grade too.
    private static string GradeOf(FileValues v, string path)
    {
        var named = v.Given(path + ".grade") ? null : StrengthClass.NamedIn(v.Text(path + ".species"));
        return named ?? StampedWords.Grade(v.Text(path + ".grade")) ?? v.Text(path + ".grade");
    }

    // A species of the file's own goes before the built-in strength class.
    private static DensityRange DensityOf(Species species, string grade, bool treated) =>
        ReferenceEquals(species, SpeciesTable.Find(species.Key)) && StrengthClass.Find(species.Key, grade) is { } wood
            ? WoodDensity.OfClass(wood, treated)
            : WoodDensity.Of(species, treated);

    private static bool IsMetric(FileValues v) => string.Equals(v.TextOrNull("units"), "metric", StringComparison.Ordinal);

    private static Species SpeciesOf(FileValues v, string path, ImmutableArray<Species> own, FaultList faults)
    {
        var key = v.Text(path);
        var found = own.FirstOrDefault(s => string.Equals(s.Key, key, StringComparison.Ordinal))
            ?? SpeciesTable.Find(StampedWords.Species(key) ?? key);
        if (found is not null)
        {
            return found;
        }

        var known = own.Concat(SpeciesTable.All).Select(s => s.Key).Distinct(StringComparer.Ordinal).ToList();
        faults.Add(FaultCode.UnknownSpecies, v.Place(path), SpeciesHint.Message(key, known, IsMetric(v)));
        return SpeciesTable.All[0];
    }

    private static void Grade(CheckedFile f, StockParameters stock)
    {
        var path = $"stock.{stock.Name}.grade";
        var own = f.Parameters.Values.Any(row => string.Equals(row.Species, stock.Species, StringComparison.OrdinalIgnoreCase)
            && string.Equals(row.Grade, stock.Grade, StringComparison.OrdinalIgnoreCase));
        if (!f.Good(path) || own || StampedWords.Grade(stock.Grade) is not null)
        {
            return;
        }

        f.Stop(FaultCode.UnknownGrade, path, GradeHint.Message(stock.Grade));
    }

    // A part that the file does not ask for has no stock.
    private static bool IsUnknown(CheckedFile f, string path) => f.Good(path) && f.Values.Find(path) is not null
        && (f.Parameters.Deck.Cleats is not null || !path.StartsWith("deck.cleats", StringComparison.Ordinal))
        && (f.Parameters.Deck.Layout != DeckLayout.Along || !path.StartsWith("deck.stringer", StringComparison.Ordinal))
        && !f.Values.Names("stock").Contains(f.Written(path), StringComparer.Ordinal);

    // The file's own stock has taken the place of the usual one, which these keys mean where they are left out.
    private static void LeftOut(CheckedFile f, string name, IReadOnlyCollection<string> paths)
    {
        var usual = (f.Parameters.Units == UnitSystem.Metric ? MetricStock : ImperialStock).ReplaceLineEndings("\n").Split('\n')
            .FirstOrDefault(l => l.StartsWith(name + ":", StringComparison.Ordinal)) ?? name;
        var names = f.Values.Names("stock");
        var own = names.Count == 0 ? "" : $"name {Alternatives.Text(names)} for {(paths.Count > 1 ? "each of them" : "it")}, or ";
        f.Stop(FaultCode.UnknownStock, "stock", $"the file's own stock has no {QuantityReader.Quote(name)}, which "
            + $"{string.Join(", ", paths)} {(paths.Count > 1 ? "mean" : "means")} where left out; {own}add under stock: {usual}");
    }

    private static void Named(CheckedFile f, string path)
    {
        var names = f.Values.Names("stock");
        var name = f.Written(path);
        var meant = NearestWord.Find(name, names) is { } nearest ? [nearest] : OfWood(f.Parameters.Stock, name);
        var hint = meant.Count > 0 ? $" did you mean {Alternatives.Text(meant)}?" : "";
        var there = names.Count == 0 ? "none" : string.Join(", ", names);
        f.Stop(FaultCode.UnknownStock, path, $"{QuantityReader.Quote(name)} is not a name under stock;{hint} there are {there}", "stock");
    }

    // A species in the place of the name that the file has given its lumber.
    private static List<string> OfWood(IEnumerable<StockParameters> stock, string name)
    {
        var species = StampedWords.Species(name) ?? name;
        return [.. stock.Where(s => string.Equals(s.Species, species, StringComparison.Ordinal)).Select(s => s.Name)];
    }
}

/// <summary>Which stock the parts of a role are cut from.</summary>
internal static class ChosenStock
{
    /// <summary>Its name; null where the project chooses none, as for stringers of a deck without them.</summary>
    public static string? FindStock(this BridgeParameters parameters, Role role) => RoleTable.Of(role).Wood switch
    {
        WoodKey.Base => parameters.Frames.Base.Stock,
        WoodKey.Post => parameters.Frames.Post.Stock,
        WoodKey.Brace => parameters.Frames.Brace.Stock,
        WoodKey.Board => parameters.Deck.BoardStock,
        WoodKey.Stringer => parameters.Deck.Stringer?.Stock,
        WoodKey.Rail => parameters.Guard.RailStock,
        WoodKey.Cap => parameters.Guard.CapStock,
        WoodKey.Cleat => parameters.Deck.Cleats?.Stock,
        WoodKey.Picket => parameters.Guard.Pickets?.Stock,
        WoodKey.Handrail => parameters.Guard.Handrail?.Stock,
        WoodKey.Newel => parameters.Guard.Newels?.Stock,
        WoodKey.LikeBaseButTreated => LikeBaseButTreated(parameters),
        var key => throw new ArgumentOutOfRangeException(nameof(role), key, "No such key."),
    };

    /// <summary>Its name, of a part that the bridge has.</summary>
    public static string StockOf(this BridgeParameters parameters, Role role) =>
        parameters.FindStock(role) ?? throw new InvalidOperationException($"The project chooses no wood for a {RoleTable.Of(role).Name}.");

    /// <summary>The bases' if treated, else the first treated stock of the file, else the bases'.</summary>
    private static string LikeBaseButTreated(BridgeParameters parameters)
    {
        var named = parameters.StockNamed(parameters.Frames.Base.Stock);
        return named.Treated
            ? named.Name
            : (parameters.Stock.FirstOrDefault(s => s.Treated) ?? named).Name;
    }
}
