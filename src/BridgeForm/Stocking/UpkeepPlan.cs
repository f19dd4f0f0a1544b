using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Stocking;

/// <summary>A part that is looked at again and again.</summary>
/// <param name="Number">As on the drawing.</param>
/// <param name="Part">Its name.</param>
/// <param name="Look">What is looked at and done.</param>
/// <param name="FirstYear">Months after opening at which it is due in the first year, 1 to 12.</param>
/// <param name="Later">Months of every later year.</param>
public sealed record UpkeepPart(int Number, string Part, string Look, ImmutableArray<int> FirstYear, ImmutableArray<int> Later);

/// <summary>Sag of the finished, empty bridge at a temperature.</summary>
/// <param name="Temperature">°C.</param>
/// <param name="Sag">Metres.</param>
/// <param name="BetweenMarks">
/// Along the rope from the mark of the first frame that hangs to that of the last one, as it is pulled, metres; 0 with fewer than two.
/// </param>
public sealed record SagAt(double Temperature, double Sag, double BetweenMarks);

/// <summary>What is looked at for ten years, by when, and when the bridge is closed.</summary>
public static class UpkeepPlan
{
    /// <summary>Years that the log has room for.</summary>
    public const int Years = 10;

    /// <summary>Where the criteria of <see cref="Close"/> come from.</summary>
    public const string CloseSource = "29 CFR 1926.1413 (a)(2), standing ropes, as a training page and 8 CCR 5036 print it";

    /// <summary>Of the nominal diameter; less closes the bridge (<see cref="CloseSource"/>).</summary>
    private const double LeastDiameter = 0.95;

    /// <summary>Any one of these closes the bridge until an engineer has looked.</summary>
    public static ImmutableArray<string> Close { get; } =
    [
        "more than two broken wires in one lay of a rope; of a strand any broken wire (own, stricter: it has few)",
        "more than one broken wire in one lay at an end",
        "a broken strand",
        "a diameter more than 5 % below nominal",
        "kinks, crushing, unstranding, a birdcage, core coming out",
        "pitting; any other corrosion that can be felt or does not wipe off (own, stricter)",
        "damage by heat or an electric arc",
        "an end that is corroded, cracked, bent, worn, or has slipped",
        "flood, ice on the deck, a tree on it, wind that moves it (own: see wind on the drawings' cover)",
    ];

    /// <summary>
    /// Parts in the order of the drawing. When: after the first weeks and months, then twice a year, before and after winter (common
    /// practice, no source).
    /// </summary>
    public static ImmutableArray<UpkeepPart> Parts(BridgeParameters parameters)
    {
        var words = new QuantityText(parameters.Units);
        var clip = Terminations.ClipsFor(parameters.Ropes);
        var ends = clip is null
            ? "slip, cracks, corrosion; to the maker's instructions"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"torque of all {clip.Count} clips, {new Checks.CheckWords(parameters.Units).Torque(clip.Torque)}; slip, corrosion");
        ImmutableArray<int> twice = [6, 12], often = [1, 3, 6, 12];
        return
        [
            new(
                1, "anchors, supports", "movement, cracks, decay, washed-out ground; trees: health and growth round what holds them", often,
                twice),
            new(2, "ropes' ends, turnbuckles, shackles", ends + "; turnbuckles and pins secured", often, twice),
            new(
                3, "ropes",
                "the whole length, by eye and by a gloved hand, tied on (fall protection as a competent person planned it): broken "
                    + "wires, rust; diameter, new "
                    + words.Size(parameters.Ropes.Rope.Diameter)
                    + $"; under {words.Caliper(LeastDiameter * parameters.Ropes.Rope.Diameter)} closes the bridge",
                often, twice),
            new(
                4, "saddles, channels, keepers", "rope sits in its groove, liners are whole, keepers tight, wood not worn by the rope",
                often, twice),
            new(
                5, "bases, feet of posts and braces", "decay: probe with an awl at channels, ends, cuts and under boards; cracks", [12],
                [12]),
            new(6, "deck", "boards fast, whole, not slippery; screws not standing up", [6, 12], twice),
            new(
                7, "rails and caps",
                "fast, whole, no gap wider than drawn; push every post from the deck, low and towards the middle, never outwards", [6, 12],
                twice),
            new(8, "sag and level", "both ropes and the temperature against the table; cross slope", often, twice),
        ];
    }

    /// <summary>From the coldest to the hottest temperature of the site, the file's own and whole degrees of its units between.</summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="design">Its ropes as drawn.</param>
    /// <param name="stretch">Share by which the ropes are longer than drawn; negative where they were set short.</param>
    public static ImmutableArray<SagAt> Sags(BridgeParameters parameters, RopeShape design, double stretch = 0)
    {
        var site = parameters.Site;
        var sags = ImmutableArray.CreateBuilder<SagAt>();
        foreach (var at in Temperatures([.. site.Temperatures, site.ReferenceTemperature], parameters.Units))
        {
            if (LoadCaseSolver.TryFind(
                LoadCaseRequest.At(design, at - site.ReferenceTemperature, Backstays.Of(site), stretch), LoadCaseSolver.DefaultAccuracy,
                LoadCaseSolver.DefaultMaxIterations, out var shape, out _))
            {
                sags.Add(new SagAt(at, shape!.Sag, shape.Segments[1..^1].Sum(s => s.StretchedLength)));
            }
        }

        return sags.ToImmutable();
    }

    // Degrees from row to row, and so many rows between the coldest and the hottest at the most.
    private static readonly double[] s_steps = [1, 2, 5, 10, 20, 50];
    private const int Rows = 10;

    private static IEnumerable<double> Temperatures(double[] told, UnitSystem units)
    {
        var (zero, degree) = units == UnitSystem.Imperial ? (-160.0 / 9, 5.0 / 9) : (0, 1);
        var (cold, hot) = (told.Min(), told.Max());
        var step = s_steps.FirstOrDefault(s => hot - cold <= Rows * s * degree, s_steps[^1]) * degree;
        var first = (int)Math.Ceiling((cold - zero) / step);
        var whole = Enumerable.Range(first, Math.Max(0, (int)Math.Floor((hot - zero) / step) - first + 1)).Select(k => zero + (k * step));
        var last = double.NegativeInfinity;
        foreach (var at in told.Concat(whole.Where(w => told.All(t => Math.Abs(t - w) > step / 2))).Order())
        {
            if (at > last + (step / 100))
            {
                yield return at;
                last = at;
            }
        }
    }
}
