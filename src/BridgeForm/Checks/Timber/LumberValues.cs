using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project;

namespace BridgeForm.Checks.Timber;

/// <summary>Design values of a stock in a section, adjusted for where it is used. Pascals.</summary>
/// <param name="Stock">Species, grade, treatment.</param>
/// <param name="Section">The stick.</param>
/// <param name="Row">Row of the table.</param>
internal sealed record LumberValues(StockParameters Stock, Section Section, DesignValue Row)
{
    // Emin = 1.03·E·(1 − 1.645·COV)/1.66 with COV 0.25 for visually graded lumber (NDS Appendix D, from memory).
    private const double LeastShareOfModulus = 1.03 * (1 - (1.645 * 0.25)) / 1.66;

    private NominalSize Size => NominalSize.Of(Section);

    /// <summary>Values for a stock and section; null when no table has them.</summary>
    public static LumberValues? Find(BridgeParameters parameters, string stockName, Section section)
    {
        var stock = parameters.StockNamed(stockName);
        var rows = parameters.Values.Concat(DesignValues.All);

        // The file's own rows go first, however general they are.
        return (DesignValues.Find(parameters.Values, stock.Species, stock.Grade, section)
            ?? DesignValues.Find(rows, stock.Species, stock.Grade, section)) is { } row
            ? new LumberValues(stock, section, row) { Note = NoteOf(row, section) }
            : NominalSize.Of(section).IsBoard && DesignValues.ForBoard(rows, stock.Species, section) is { } third
            ? new LumberValues(stock, section, third) { Note = Unrated }
            : null;
    }

    /// <summary>What must be said of the values; empty for nothing.</summary>
    public string Note { get; init; } = "";

    private static string NoteOf(DesignValue row, Section section) => !row.IsCharacteristic ? ""
        : NominalSize.Of(section).IsBoard ? EuropeanFactors.BoardNote : EuropeanFactors.Note;

    private const string Unrated = " (No. 3 of the species: 1x lumber is stress-rated only if so stamped)";

    /// <summary>Why there are none.</summary>
    public static MissingValue Missing(BridgeParameters parameters, string stockName, Section section)
    {
        var stock = parameters.StockNamed(stockName);
        var why = NominalSize.Of(section).IsBoard
            ? "the built-in tables have no No. 3 values of it for lumber thinner than 2 in"
            : "the built-in tables have no values";
        return new($"{section.Name} {stock.Species} {stock.Grade}", why);
    }

    /// <summary>Fb' without beam stability.</summary>
    public AdjustedValue Bending(LoadDuration load, bool flat)
    {
        if (Row.IsCharacteristic)
        {
            return Incised(Converted("Fb", Row.Bending, load));
        }

        var size = AdjustmentFactors.SizeBending(Size, Row, Section.Width);
        var wet = AdjustmentFactors.WetBending(Size, Row.Bending * size.Value);
        var value = Start("Fb", Row.Bending, load, wet, size);
        value = flat ? value.Times(AdjustmentFactors.FlatUse(Size)) : value;
        return Incised(value).Times(AdjustmentFactors.Repetitive);
    }

    /// <summary>Fv'.</summary>
    public AdjustedValue Shear(LoadDuration load) => Row.IsCharacteristic
        ? Incised(Converted("Fv", Row.Shear, load).Times(EuropeanFactors.Crack))
        : Incised(Start("Fv", Row.Shear, load, AdjustmentFactors.WetShear(Size), null));

    /// <summary>Ft'.</summary>
    public AdjustedValue Tension(LoadDuration load) => Row.IsCharacteristic
        ? Incised(Converted("Ft", Row.Tension, load))
        : Incised(Start("Ft", Row.Tension, load, AdjustmentFactors.WetTension(Size), AdjustmentFactors.SizeTension(Size, Row)));

    /// <summary>Fc' without column stability.</summary>
    public AdjustedValue Compression(LoadDuration load)
    {
        if (Row.IsCharacteristic)
        {
            return Incised(Converted("Fc", Row.Compression, load));
        }

        var size = AdjustmentFactors.SizeCompression(Size, Row);
        return Incised(Start(
            "Fc", Row.Compression, load, AdjustmentFactors.WetCompression(Size, Row.Compression * size.Value), size));
    }

    /// <summary>Fc⊥': neither duration nor incising; k_mod where it is of a strength class.</summary>
    public AdjustedValue Across(LoadDuration load) => Row.IsCharacteristic
        ? Converted("Fc⊥", Row.CompressionAcross, load)
        : Start("Fc⊥", Row.CompressionAcross, null, AdjustmentFactors.WetAcross(Size), null);

    /// <summary>E'.</summary>
    public AdjustedValue Modulus() => IncisedModulus(Row.IsCharacteristic
        ? new AdjustedValue("E", Row.Modulus, [], $"{Row.Source}; {EuropeanFactors.Deflection}") { Note = Note }
        : Start("E", Row.Modulus, null, AdjustmentFactors.WetModulus(Size), null));

    /// <summary>Emin'.</summary>
    /// <param name="load">The same as of the strength that it is compared with; only a strength class asks.</param>
    public AdjustedValue ModulusMin(LoadDuration load) => IncisedModulus(Row.IsCharacteristic
        ? Converted("Emin", Row.ModulusMin!.Value, load, EuropeanFactors.Buckling)
        : Start("Emin", Row.ModulusMin ?? (Row.Modulus * LeastShareOfModulus), null, AdjustmentFactors.WetModulus(Size), null));

    private AdjustedValue Start(string symbol, double reference, LoadDuration? load, Factor wet, Factor? size)
    {
        var factors = ImmutableArray.CreateBuilder<Factor>();
        if (load is { } duration)
        {
            factors.Add(AdjustmentFactors.Duration(duration));
        }

        factors.Add(Row.Wet ? AdjustmentFactors.WetInTable : wet);
        if (size is { } sized)
        {
            factors.Add(sized);
        }

        return new AdjustedValue(symbol, reference, factors.ToImmutable(), Row.Source) { Note = Note };
    }

    /// <summary>A characteristic value brought to an allowable one.</summary>
    private AdjustedValue Converted(string symbol, double characteristic, LoadDuration load, string? also = null) => new(
        symbol,
        characteristic,
        [EuropeanFactors.Modification(load), EuropeanFactors.Safety],
        $"{Row.Source}, converted, a licensed engineer confirms; {also ?? EuropeanFactors.NoOthers}")
    { Note = Note };

    private AdjustedValue Incised(AdjustedValue value) =>
        Stock.Incised ? value.Times(AdjustmentFactors.IncisedStrength(Size)) : value;

    private AdjustedValue IncisedModulus(AdjustedValue value) =>
        Stock.Incised ? value.Times(AdjustmentFactors.IncisedModulus(Size)) : value;
}

/// <summary>Beams that tip sideways and columns that bow: NDS 3.3.3 and 3.7.1 (from memory).</summary>
internal static class Stability
{
    private const double ColumnConstant = 0.8;

    /// <summary>Greatest RB of a beam (NDS 3.3.3.7) and greatest le/d of a column (NDS 3.7.1.4); both from memory.</summary>
    public const double Limit = 50;

    /// <summary>
    /// CL of a beam: 1 when not deeper than broad, else from the slenderness RB = √(le·d/b²) and FbE = 1.20·Emin'/RB².
    /// </summary>
    /// <param name="section">b and d, metres.</param>
    /// <param name="unsupported">Length between places where the pressed edge is held sideways, metres.</param>
    /// <param name="cantilever">Held at one end, loaded at the other.</param>
    /// <param name="strength">Fb' without CL and Cfu, pascals.</param>
    /// <param name="modulus">Emin', pascals.</param>
    public static Factor Beam(RectangularSection section, double unsupported, bool cantilever, double strength, double modulus)
    {
        if (section.Depth <= section.Breadth)
        {
            return new("CL", 1, "not deeper than broad, NDS 3.3.3.1");
        }

        var effective = Effective(unsupported, section.Depth, cantilever);
        var slenderness = effective * section.Depth / (section.Breadth * section.Breadth);
        var ratio = 1.2 * modulus / slenderness / strength;
        var half = (1 + ratio) / 1.9;
        return new(
            "CL",
            half - Math.Sqrt((half * half) - (ratio / 0.95)),
            "NDS 3.3.3.8, held at the ends only",
            Math.Sqrt(slenderness) / Limit);
    }

    /// <summary>CP of a solid column with pinned ends: FcE = 0.822·Emin'/(le/d)², c = 0.8.</summary>
    /// <param name="length">Metres.</param>
    /// <param name="thickness">Size in the direction it bows, metres.</param>
    /// <param name="strength">Fc' without CP, pascals.</param>
    /// <param name="modulus">Emin', pascals.</param>
    public static Factor Column(double length, double thickness, double strength, double modulus)
    {
        var ratio = Buckling(length, thickness, modulus) / strength;
        var half = (1 + ratio) / (2 * ColumnConstant);
        return new(
            "CP",
            half - Math.Sqrt((half * half) - (ratio / ColumnConstant)),
            "NDS 3.7.1.5, pinned ends",
            length / thickness / Limit);
    }

    /// <summary>FcE, pascals.</summary>
    public static double Buckling(double length, double thickness, double modulus) =>
        0.822 * modulus / (length / thickness * (length / thickness));

    // NDS Table 3.3.3: cantilever with its load at the end; any other span with any load.
    private static double Effective(double length, double depth, bool cantilever) => (length / depth, cantilever) switch
    {
        ( < 7, true) => 1.87 * length,
        (_, true) => (1.44 * length) + (3 * depth),
        ( < 7, false) => 2.06 * length,
        ( <= 14.3, false) => (1.63 * length) + (3 * depth),
        _ => 1.84 * length,
    };
}
