using BridgeForm.Quantities;

namespace BridgeForm.Project.Definition;

/// <summary>Keys under <c>stock</c>, <c>species</c> and <c>values</c>.</summary>
internal static class StockKeys
{
    private const string ImperialStock = """
        treated: { species: southern-pine, grade: no1, treated: true, lengths: [8 ft, 10 ft, 12 ft, 16 ft] }
        cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft, 10 ft, 12 ft] }
        """;

    private const string MetricStock = """
        treated: { species: southern-pine, grade: no1, treated: true, lengths: [2.4 m, 3 m, 3.6 m, 4.8 m] }
        cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [2.4 m, 3 m, 3.6 m] }
        """;

    public static KeySpec Stock => Define.Named(
        "stock",
        "Lumber to buy, by names of your own",
        Define.Map(
            "",
            "One kind of lumber",
            [
                Define.Text("species", "Key of a species, built in or under species").Needed("southern-pine"),
                Define.Text("grade", "Grade", "no2"),
                Define.Flag("treated", "Pressure-treated with preservative", "false"),
                Define.Flag("incised", "Incised for treatment", "false"),
                Define.List("lengths", "Lengths on sale", Define.Length("", "Length", "1 ft", "100 ft"), 1, 100).Needed("[8 ft]", "[2.4 m]"),
                Density,
            ])) with
    { Default = ImperialStock, MetricDefault = MetricStock, InStarter = true };

    public static KeySpec Species => Define.Named(
        "species",
        "Species of your own, or other numbers for a built-in one",
        Define.Map(
            "",
            "A species",
            [
                Define.Number("specific_gravity", "Specific gravity, oven-dry weight and volume", "0.1", "1.4").Needed("0.5"),
                Define.Flag("durable", "Naturally durable: its cuts need no preservative", "false"),
                Density,
                Define.Text("source", "Where the numbers come from").Needed("my own weighing"),
            ]));

    public static KeySpec Values => Define.List(
        "values",
        "Design values of your own; they go before the built-in ones",
        Define.Map(
            "",
            "Values of a species, grade and size",
            [
                Define.Text("species", "Key of the species").Needed("southern-pine"),
                Define.Text("grade", "Grade as in stock").Needed("no1"),
                Define.Text("size", "dimension, beams, posts, timbers, or a section such as 2x6").Needed("dimension"),
                Strength("bending", "Fb").Needed("1000 psi", "6.9 MPa"),
                Strength("tension", "Ft").Needed("600 psi", "4.1 MPa"),
                Strength("shear", "Fv").Needed("175 psi", "1.2 MPa"),
                Strength("compression_across", "Fc across the grain").Needed("565 psi", "3.9 MPa"),
                Strength("compression", "Fc along the grain").Needed("1400 psi", "9.6 MPa"),
                Modulus("modulus", "E").Needed("1400000 psi", "9.6 GPa"),
                Modulus("modulus_min", "Emin"),
                Define.Flag("wet", "Values hold for wet service already", "false"),
                Define.Flag("size_adjusted", "Bending, tension and compression include the size factor", "false"),
                Define.Text("source", "Where the numbers come from").Needed("grading report"),
            ]));

    private static KeySpec Density => Define.OptionalMap(
        "density",
        "Densities in place of those of the species",
        [
            DensityOf("low", "Dry").Needed("33 lb/ft3", "530 kg/m3"),
            DensityOf("in_service", "At moisture in service") with { DefaultNote = "the species' own, kept between low and high" },
            DensityOf("high", "Freshly treated or green").Needed("55 lb/ft3", "880 kg/m3"),
            Define.Text("source", "Where the numbers come from", "the project file"),
        ]);

    private static KeySpec DensityOf(string name, string description) =>
        Define.Quantity(QuantityKind.Density, name, description, "5 lb/ft3", "100 lb/ft3");

    private static KeySpec Strength(string name, string description) =>
        Define.Quantity(QuantityKind.Stress, name, description, "1 psi", "20000 psi");

    private static KeySpec Modulus(string name, string description) =>
        Define.Quantity(QuantityKind.Stress, name, description, "10000 psi", "5000000 psi");
}
