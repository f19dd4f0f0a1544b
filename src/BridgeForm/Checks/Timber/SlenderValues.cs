using BridgeForm.Materials;
using BridgeForm.Project;

namespace BridgeForm.Checks.Timber;

/// <summary>Design values of handrails and pickets.</summary>
internal static class SlenderValues
{
    private const double Narrow = 4;

    /// <summary>
    /// As <see cref="LumberValues.Find"/>; dimension lumber narrower than 4 in by the row of 4 in, since tables print 4 in and narrower
    /// as one width (NDS Supplement Tables 4A and 4B, from memory).
    /// </summary>
    public static LumberValues? Find(BridgeParameters parameters, string stock, Section section) =>
        LumberValues.Find(parameters, stock, section) ?? LumberValues.Find(parameters, stock, AsTabled(section));

    private static Section AsTabled(Section section) => NominalSize.Of(section) is { IsBoard: false, Width: < Narrow }
        ? section with { NominalThickness = 2, NominalWidth = Narrow }
        : section;
}
