using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>One value of the project: read from the file, or its default.</summary>
/// <param name="Place">Of the value; of the nearest key above for one that the file leaves out.</param>
/// <param name="Given">Stands in the file.</param>
/// <param name="Good">Was read without a fault; otherwise the default or an example stands in.</param>
internal sealed record Entry(Place Place, bool Given, bool Good)
{
    /// <summary>As written.</summary>
    public string Text { get; init; } = "";

    /// <summary>SI value, number, or 1 for true.</summary>
    public double Number { get; init; }

    /// <summary>Which kind of quantity was written.</summary>
    public QuantityKind? Kind { get; init; }

    /// <summary>The section that was written.</summary>
    public Section? Section { get; init; }

    /// <summary>Names under a named mapping, or indices of a list's entries.</summary>
    public IReadOnlyList<string> Items { get; init; } = [];
}
