using System.Collections.Immutable;

namespace BridgeForm.Materials;

/// <summary>
/// A strength class of EN 338:2016: what nineteen of twenty pieces bear in a short test, megapascals; E_0 in gigapascals; densities at
/// 12 % moisture in kg/m³. No stress that may be carried for years: <see cref="DesignValue.IsCharacteristic"/>.
/// </summary>
/// <param name="Grade">Such as <c>C24</c>.</param>
/// <param name="Species">Key of the kind of wood.</param>
/// <param name="Bending">f_m,k.</param>
/// <param name="Tension">f_t,0,k.</param>
/// <param name="Compression">f_c,0,k.</param>
/// <param name="Across">f_c,90,k.</param>
/// <param name="Shear">f_v,k.</param>
/// <param name="Modulus">E_0,mean.</param>
/// <param name="ModulusLow">E_0,05.</param>
/// <param name="DensityLow">ρ_k.</param>
/// <param name="DensityMean">ρ_mean.</param>
public sealed record StrengthClass(
    string Grade, string Species, double Bending, double Tension, double Compression, double Across, double Shear, double Modulus,
    double ModulusLow, double DensityLow, double DensityMean)
{
    /// <summary>Key of strength-graded softwood, spruce or pine.</summary>
    public const string Softwood = "en338-softwood";

    /// <summary>Key of strength-graded hardwood.</summary>
    public const string Hardwood = "en338-hardwood";

    /// <summary>Where the numbers come from.</summary>
    public const string Source = "EN 338:2016, Table 1 (softwood) and Table 3 (hardwood), as transcribed in public";

    /// <summary>The classes, softwood first, strongest first.</summary>
    public static ImmutableArray<StrengthClass> All { get; } =
    [
        new("C30", Softwood, 30, 19, 24, 2.7, 4.0, 12.0, 8.0, 380, 460),
        new("C24", Softwood, 24, 14.5, 21, 2.5, 4.0, 11.0, 7.4, 350, 420),
        new("C18", Softwood, 18, 10, 18, 2.2, 3.4, 9.0, 6.0, 320, 380),
        new("D30", Hardwood, 30, 18, 24, 5.3, 3.9, 11.0, 9.2, 530, 640),
    ];

    /// <summary>The class of a species and grade; null for every other wood.</summary>
    public static StrengthClass? Find(string species, string grade) => All.FirstOrDefault(
        c => string.Equals(c.Species, species, StringComparison.Ordinal) && string.Equals(c.Grade, grade, StringComparison.Ordinal));

    /// <summary>
    /// Whether wood of a species can be of a class of softwood or of hardwood: of the built-in ones white oak alone is a hardwood; of the
    /// file's own nobody knows.
    /// </summary>
    /// <param name="kind"><see cref="Softwood"/> or <see cref="Hardwood"/>.</param>
    /// <param name="species">Key of the species.</param>
    public static bool Suits(string kind, string species) => SpeciesTable.Find(species) is null
        || (species is Hardwood or "white-oak") == (kind is Hardwood);

    /// <summary>The class that words for a species name besides it, such as <c>spruce C24</c> or <c>C24</c>; null for none.</summary>
    /// <param name="written">As in the project file.</param>
    public static string? NamedIn(string written) => StampedWords.Species(written) is Softwood or Hardwood
        ? All.FirstOrDefault(c => written.TrimEnd().EndsWith(c.Grade, StringComparison.OrdinalIgnoreCase))?.Grade
        : null;

    /// <summary>Its row among the design values, of every size.</summary>
    internal DesignValue Row => new()
    {
        Species = Species,
        Grade = Grade,
        Size = SizeClass.Any,
        Bending = Bending * 1e6,
        Tension = Tension * 1e6,
        Shear = Shear * 1e6,
        CompressionAcross = Across * 1e6,
        Compression = Compression * 1e6,
        Modulus = Modulus * 1e9,
        ModulusMin = ModulusLow * 1e9,
        IsCharacteristic = true,
        Source = Source,
    };
}
