using System.Globalization;
using BridgeForm.Quantities;

namespace BridgeForm.Materials;

/// <summary>A dressed rectangular section of lumber.</summary>
/// <param name="Name">As people write it: <c>2x6</c>, or <c>38 x 89 mm</c>.</param>
/// <param name="Width">The larger dressed size, metres.</param>
/// <param name="Thickness">The smaller dressed size, metres.</param>
public sealed record Section(string Name, double Width, double Thickness)
{
    /// <summary>Nominal width in inches for counting board feet; 0 for a section given by its dressed size.</summary>
    public double NominalWidth { get; init; }

    /// <summary>Nominal thickness in inches for counting board feet; 0 for a section given by its dressed size.</summary>
    public double NominalThickness { get; init; }

    /// <summary>Whether another is of the same dressed sizes: 4x6 is 89 x 140 mm.</summary>
    public bool IsSameSize(Section other) =>
        Math.Abs(Width - other.Width) <= Tolerances.DressedSize && Math.Abs(Thickness - other.Thickness) <= Tolerances.DressedSize;
}

/// <summary>Nominal sizes in inches, by which the NDS sorts its values and factors.</summary>
/// <param name="Thickness">The smaller one.</param>
/// <param name="Width">The larger one.</param>
internal readonly record struct NominalSize(double Thickness, double Width)
{
    private const double Inch = Quantities.Units.MetresPerInch;

    // Dimension lumber is dressed to 1-1/2 in at least; what is thinner is a board, whatever inch it rounds up to.
    private const double ThinnestDimension = 0.038 - Tolerances.DressedSize;

    /// <summary>
    /// Of a section: as it is named, or its dressed sizes rounded up to whole inches; a dressed thickness below 38 mm counts
    /// as a board of 1 in.
    /// </summary>
    public static NominalSize Of(Section section) => new(
        section.NominalThickness > 0 ? section.NominalThickness : section.Thickness < ThinnestDimension ? 1 : RoundedUp(section.Thickness),
        section.NominalWidth > 0 ? section.NominalWidth : RoundedUp(section.Width));

    /// <summary>5 in and thicker: Table 4D.</summary>
    public bool IsTimber => Thickness >= 5;

    /// <summary>Thinner than 2 in: no table of the NDS Supplement has values for it.</summary>
    public bool IsBoard => Thickness < 2;

    private static double RoundedUp(double dressed) => Math.Ceiling((dressed - Tolerances.DressedSize) / Inch);
}

/// <summary>A section read from a person's text, or what is wrong with the text and what would be right.</summary>
/// <param name="Section">Null when there is a problem.</param>
/// <param name="Problem">Null when the text was read.</param>
public readonly record struct SectionReading(Section? Section, string? Problem);

/// <summary>Round sticks, named by their diameter: <c>1-1/2 in round</c>.</summary>
public static class RoundSection
{
    private const string Word = " round";

    /// <summary>The square around it, by the name of the round.</summary>
    /// <param name="diameter">Diameter as people of the project write it.</param>
    /// <param name="metres">The same in metres.</param>
    public static Section Of(string diameter, double metres) => new(diameter + Word, metres, metres);

    /// <summary>The stick of a name; null for what names none.</summary>
    public static Section? Read(string text) => text.Trim() is var name && name.EndsWith(Word, StringComparison.Ordinal)
        && QuantityReader.Read(QuantityKind.Length, name[..^Word.Length]) is { IsRead: true, Value: > 0 } diameter
            ? new Section(name, diameter.Value, diameter.Value)
            : null;
}

/// <summary>Reads <c>2x4</c>, <c>5/4x6</c>, <c>6x6 green</c>, <c>38 x 89 mm</c>, <c>1-1/2 x 3-1/2 in</c>.</summary>
public static class SectionReader
{
    private const double Smallest = 0.005;
    private const double Largest = 0.6;
    private const string Green = "green";

    /// <summary>Reads one section.</summary>
    public static SectionReading Read(string text)
    {
        var plain = text.Replace('×', 'x').Replace('X', 'x').Trim();
        var parts = plain.Split('x', StringSplitOptions.TrimEntries);
        if (parts.Length != 2 || parts[0].Length == 0 || parts[1].Length == 0)
        {
            return Wrong($"{QuantityReader.Quote(text)} is not a section;{MeantName(text)} write a nominal size such as 2x4 or 5/4x6, or a "
                + $"dressed size such as 38 x 89 mm; {ListedBy.Lumber} nominal sizes");
        }

        return HasUnit(parts[1]) || HasUnit(parts[0]) ? Dressed(parts, text) : Nominal(parts, text);
    }

    private static SectionReading Nominal(string[] parts, string text)
    {
        var green = parts[1].EndsWith(Green, StringComparison.OrdinalIgnoreCase);
        var second = green ? parts[1][..^Green.Length].TrimEnd() : parts[1];
        var (a, b) = (Inches(parts[0]), Inches(second));
        if (a is { } one && b is { } other)
        {
            return Lumber.Nominal(one, other, green) is { } section ? new(section, null)
                : NoSize(text, SectionHint.Find(one, other) is { } hint ? $" {hint}" : "");
        }

        return NoSize(text, MeantName(text));
    }

    private static SectionReading NoSize(string text, string hint) => Wrong(
        $"{QuantityReader.Quote(text)} is not a nominal size of PS 20;{hint} write one such as 2x4, or a dressed size with its unit such "
        + $"as 38 x 89 mm; {ListedBy.Lumber} nominal sizes");

    private static string MeantName(string text) =>
        NearestWord.Find(text.Replace(" ", "", StringComparison.Ordinal), Lumber.Names) is { } nearest ? $" did you mean {nearest}?" : "";

    private static SectionReading Dressed(string[] parts, string text)
    {
        var second = QuantityReader.Read(QuantityKind.Length, parts[1]);
        var first = QuantityReader.Read(QuantityKind.Length, HasUnit(parts[0]) ? parts[0] : parts[0] + UnitOf(parts[1]));
        if (!first.IsRead || !second.IsRead)
        {
            return Wrong(first.Problem ?? second.Problem!);
        }

        if (!Fits(first.Value) || !Fits(second.Value))
        {
            return Wrong(string.Create(
                CultureInfo.InvariantCulture,
                $"{QuantityReader.Quote(text)} is out of range; a section's sides are {Smallest * 1000} mm to {Largest * 1000} mm (0.2 in "
                    + $"to 23.6 in)"));
        }

        return new(new Section(text.Trim(), Math.Max(first.Value, second.Value), Math.Min(first.Value, second.Value)), null);
    }

    private static bool Fits(double side) => side is >= Smallest and <= Largest;

    private static double? Inches(string text) =>
        NumberScanner.Scan(text, out var number) is var n && n > 0 && n == text.Length ? number : null;

    private static bool HasUnit(string text) =>
        UnitOf(text) is { Length: > 1 } unit && !unit.EndsWith(Green, StringComparison.OrdinalIgnoreCase);

    private static string UnitOf(string text)
    {
        var unsigned = text.TrimStart('-', '+', ' ');
        return " " + unsigned[NumberScanner.Scan(unsigned, out _)..].Trim();
    }

    private static SectionReading Wrong(string problem) => new(null, problem);
}
