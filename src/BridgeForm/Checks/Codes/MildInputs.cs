using BridgeForm.Checks.Timber;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Codes;

/// <summary>Values of the file that ask less of the bridge than is usual: each is the builder's to choose, and is named here.</summary>
internal static class MildInputs
{
    private const double Inch = Units.MetresPerInch;
    private const double PoundPerSquareFoot = Units.PoundForce / (Units.MetresPerFoot * Units.MetresPerFoot);
    private const double UsualEdge = 6 * Inch;
    private const double UsualPatch = 30 * Inch;

    // 16 psf at strength level, times 0.6.
    private const double LeastWind = 0.6 * 16 * PoundPerSquareFoot;

    // 60 degrees Fahrenheit, in kelvin.
    private const double UsualRange = 60 / 1.8;
    private const double UsualFromMarking = 20 / 1.8;

    // What catalogues print of wire rope at a safety factor of 5.
    private const double LeastStretch = 0.0025;
    private const double MostHardware = 20 * Units.KilogramsPerPound;

    // 200 lb every 2-1/2 ft, newtons a metre (own figure).
    private const double PeopleInARow = 80 * Units.PoundForce / Units.MetresPerFoot;

    private const string Source =
        "patch of 2-1/2 ft by 2-1/2 ft: ASCE 7 4.4; least wind 16 psf at strength level: ASCE 7-16 27.1.5, open buildings; stretch of "
            + "steel-cored wire rope 0.25 % at a safety factor of 5: docs/sources.md; density at 28 % moisture: NDS Supplement; edge, "
            + "temperatures, people in a row, ropes and values of wood: own figures";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "mild-inputs",
        "Inputs milder than usual",
        "Counts the values that ask less of the bridge than usual, none may be: the point load's resultant further than 6 in (150 mm) from "
            + "the guard, or its patch larger than 30 in (760 mm); an area load of your own above loads.live, with which all patterns are "
            + "made; wind across below 9.6 psf (0.46 kPa); temperatures less than 60 °F (33 °C) apart, or "
            + "either end of them less than 20 °F (11 °C) from that of marking; ropes that stretch by less than 0.25 % for "
            + "good at the most; a live load that over the clear width is less than people in a row bring, 80 plf (1.17 kN/m); hardware "
            + "of more than 20 lb (9 kg) a frame, which steadies it; an efficiency of the ropes' ends without its source; a rope of your "
            + "own that for its diameter is more than 15 % stronger than any of the built-in table, or more than 15 % stiffer than those "
            + "that wires fill alike; wood lighter than its species is without any water, or heavier than it is when wet (freshly treated "
            + "where it is treated); values of your own for wood more than 15 % above the built-in ones of the same species, grade and "
            + "size, or where there are none more than half as high again as the highest of the species, or of any, or where a piece takes "
            + "them with all factors more than 15 % above the built-in ones; values said to hold for wet service. Every check "
            + "that reads such a value is only as sure as the value.",
        Source,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>A look where there is any.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var mild = Mild(context.Parameters, context.Words()).Concat(StrongInUse.Find(context, context.Words())).ToList();
        return new CheckResult(
            Declared.Id, Declared.Title, mild.Count > 0 ? CheckStatus.Warn : CheckStatus.Pass, mild.Count, 0, "count", null, Source,
            mild.Count > 0
                ? string.Join("; ", mild)
                : "none of the point load's place and patch, area loads of your own, people in a row, wind, hardware, temperatures, "
                    + "stretch, ropes and their ends, density and values of wood is milder than usual; loads.live and "
                    + "loads.point.force: live-load, point-load");
    }

    private static IEnumerable<string> Mild(BridgeParameters of, CheckWords words)
    {
        var (loads, ropes, temperatures) = (of.Loads, of.Ropes, of.Site.Temperatures);
        if (loads.PointEdge > UsualEdge + Tolerances.RoundOff)
        {
            yield return $"loads.point.edge {words.Length(loads.PointEdge)}: people lean on the guard; usual {words.InInches(UsualEdge)}";
        }

        if (loads.PointPatch > UsualPatch + Tolerances.RoundOff)
        {
            yield return $"loads.point.patch {words.Length(loads.PointPatch)}: so wide it hardly bends a board; usual at most "
                + words.InInches(UsualPatch);
        }

        foreach (var own in loads.Cases.Where(c => c.Live > loads.Live * (1 + Tolerances.SameLimit)))
        {
            yield return $"loads.live {words.Pressure(loads.Live)} is less than {words.Pressure(own.Live)} in loads.cases, {own.Id}: what "
                + "fills a half, a side or the worst places is loads.live";
        }

        if (loads.Wind < LeastWind * (1 - Tolerances.SameLimit))
        {
            yield return $"loads.wind.pressure {words.Pressure(loads.Wind)}: below the least wind that a structure is designed for, "
                + words.Pressure(LeastWind);
        }

        if (of.Frames.LooseMass > MostHardware)
        {
            yield return $"frames.hardware {new QuantityText(of.Units).Mass(of.Frames.LooseMass)}: low weight on the ropes steadies the "
                + "bridge in roll and cross-slope; it must be there for good";
        }

        var reference = of.Site.ReferenceTemperature;
        if (reference - temperatures.Min() < UsualFromMarking - Tolerances.RoundOff
            || temperatures.Max() - reference < UsualFromMarking - Tolerances.RoundOff)
        {
            yield return $"site.temperatures less than {Range(of.Units, UsualFromMarking)} below or above site.reference_temperature";
        }

        if (temperatures.Max() - temperatures.Min() < UsualRange - Tolerances.RoundOff)
        {
            yield return $"site.temperatures {Range(of.Units, temperatures.Max() - temperatures.Min())} apart: steel in the sun and in a "
                + $"winter night lies at least {Range(of.Units, UsualRange)} apart nearly everywhere";
        }

        if (ropes.Stretch is { } stretch
            && stretch.High < LeastStretch * (1 - Tolerances.SameLimit))
        {
            yield return $"ropes.stretch up to {CheckWords.Share(stretch.High)}: rope that was not stretched beforehand gives up to "
                + $"{CheckWords.Share(LeastStretch)} and more";
        }

        // What clips hold at most stands in a table of its own.
        if (ropes.TerminationEfficiency is { } efficiency && ropes.TerminationSource is null && !Terminations.IsClips(ropes))
        {
            yield return $"ropes.termination.efficiency {CheckWords.Share(efficiency)} without a source";
        }

        var width = DeckWidth.BetweenPosts(of);
        var inRow = loads.Live * width;
        if (inRow < PeopleInARow * (1 - Tolerances.SameLimit))
        {
            yield return $"loads.live {words.Pressure(loads.Live)} on {words.Length(width)} is {words.PerFoot(inRow)}: "
                + $"people in a row, {(of.Units == UnitSystem.Metric ? "90 kg every 0.76 m" : "200 lb every 2-1/2 ft")}, bring "
                + words.PerFoot(PeopleInARow);
        }

        foreach (var own in StrongRope.Find(ropes.Rope, words)
            .Concat(StrongWood.Find(of.Values, words)).Concat(OddWood.Find(of)))
        {
            yield return own;
        }
    }

    private static string Range(UnitSystem units, double kelvin) =>
        units == UnitSystem.Metric ? $"{CheckWords.Plain(kelvin)} °C" : $"{CheckWords.Plain(kelvin * 1.8)} °F";
}
