using System.Globalization;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Definition;

/// <summary>The range of a key as numbers.</summary>
public static class KeyRange
{
    /// <summary>Least and largest value allowed, in the SI unit of the key's first kind or as plain numbers; null for no range.</summary>
    public static (double Least, double Most)? InSi(KeySpec spec) =>
        spec is { Least: { } least, Most: { } most } ? (Read(spec, least), Read(spec, most)) : null;

    private static double Read(KeySpec spec, string text) => spec.Type != ValueForm.Quantity
        ? double.Parse(text, CultureInfo.InvariantCulture)
        : QuantityReader.Read(spec.Kinds[0], text) is { IsRead: true } reading ? reading.Value
        : throw new InvalidOperationException($"The definition's range '{text}' cannot be read.");
}
