using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Keys under <c>values</c>: design values of the user's own, how they are read, and whether species and size exist.</summary>
internal static class ValuesSection
{
    public static KeySpec Keys => Define.List(
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

    public static ImmutableArray<DesignValue> Read(FileValues v) => [.. v.Items("values").Select(path => Row(v, path))];

    public static void Check(CheckedFile f)
    {
        foreach (var row in f.Values.Items("values"))
        {
            Check(f, row);
        }
    }

    private static DesignValue Row(FileValues v, string path) => new()
    {
        Species = SpeciesOf(v, v.Text(path + ".species")),
        Grade = StampedWords.Grade(v.Text(path + ".grade")) ?? v.Text(path + ".grade"),
        Size = v.Text(path + ".size"),
        Bending = v.Number(path + ".bending"),
        Tension = v.Number(path + ".tension"),
        Shear = v.Number(path + ".shear"),
        CompressionAcross = v.Number(path + ".compression_across"),
        Compression = v.Number(path + ".compression"),
        Modulus = v.Number(path + ".modulus"),
        ModulusMin = v.NumberOrNull(path + ".modulus_min"),
        Wet = v.Flag(path + ".wet"),
        SizeAdjusted = v.Flag(path + ".size_adjusted"),
        Source = v.Text(path + ".source"),
    };

    // The user's own names go before those on stamps.
    private static string SpeciesOf(FileValues v, string written) =>
        v.Names("species").Contains(written, StringComparer.Ordinal) ? written : StampedWords.Species(written) ?? written;

    private static void Check(CheckedFile f, string row)
    {
        var (species, size) = (row + ".species", row + ".size");
        var known = f.Values.Names("species").Concat(SpeciesTable.All.Select(s => s.Key)).ToList();
        if (f.Values.TextOrNull(species) is { } key && !known.Contains(SpeciesOf(f.Values, key), StringComparer.Ordinal))
        {
            f.Stop(FaultCode.UnknownSpecies, species, SpeciesHint.Message(key, known, f.Parameters.Units == UnitSystem.Metric));
        }

        var words = new[] { SizeClass.Dimension, SizeClass.Beams, SizeClass.Posts, SizeClass.Timbers };
        if (f.Values.TextOrNull(size) is { } text && !words.Contains(text, StringComparer.Ordinal)
            && SectionReader.Read(text).Section is null)
        {
            var hint = NearestWord.Find(text, words.Concat(Lumber.Names)) is { } nearest ? $" did you mean {nearest}?" : "";
            f.Stop(FaultCode.UnknownSize, size, $"{QuantityReader.Quote(text)} is not a size;{hint} write {string.Join(", ", words)}, or a "
                + $"section such as 2x6; {ListedBy.Lumber} sections");
        }
    }

    private static KeySpec Strength(string name, string description) =>
        Define.Quantity(QuantityKind.Stress, name, description, "1 psi", "20000 psi");

    private static KeySpec Modulus(string name, string description) =>
        Define.Quantity(QuantityKind.Stress, name, description, "10000 psi", "5000000 psi");
}
