using BridgeForm.Materials;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// About how hard the fuller rope will be pulled, before the bridge is laid out: a parabola under an even load that stretches and
/// shrinks as its rope does. Metres, newtons, pascals. It chooses a default and nothing else; what holds, rope-strength says.
/// </summary>
/// <param name="Span">Support to support.</param>
/// <param name="Rise">B above A.</param>
/// <param name="Sag">Of the empty bridge.</param>
/// <param name="Dead">Of the bridge without its ropes on one rope, in service, N/m of span.</param>
/// <param name="Wet">The same freshly treated, N/m of span: what is loaded is looked at so heavy.</param>
/// <param name="Live">Of people or snow on the fuller rope, N/m of span.</param>
/// <param name="Colder">Degrees below the temperature of the design shape, at most.</param>
/// <param name="Factor">Breaking strength over the largest tension allowed: safety factor / efficiency of the ends.</param>
internal sealed record RopeEstimate(
    double Span, double Rise, double Sag, double Dead, double Wet, double Live, double Colder, double Factor)
{
    // What frames, deck and guards weigh on the clear width, Pa: 580 to 810 were counted on bridges of 10 to 60 ft, and the wood of
    // stock that is freshly treated weighs 1.4 to 1.8 times as much as in service (Materials/WoodDensity). Sections of metric yards are
    // a little thicker.
    private const double DeadPressure = 740;
    private const double WetPressure = 1050;
    private const double MetricWetPressure = 1260;

    /// <summary>
    /// What a parabola and the round weights leave out: 804 whole bridges of 10 to 60 ft (3 to 18 m), level, private and public, in both
    /// units, were pulled 0.95 to 1.039 times as hard, and none failed on the rope that this chose.
    /// </summary>
    private const double Margin = 1.035;

    // Ends whose efficiency is not known: as clips.
    private const double Efficiency = 0.8;

    // Halvings that leave less than a millionth of the sag.
    private const int Halvings = 60;

    /// <summary>From the values in force.</summary>
    public static RopeEstimate From(FileValues v)
    {
        var use = v.Text("use") is "public" ? BridgeUse.Public : BridgeUse.Private;
        var loads = LoadSection.Read(v, use);
        var width = FrameRules.ClearWidth(v);
        var steel = JointSection.SteelGuess(v) * Units.StandardGravity / v.Number("frames.spacing") / 2;
        var reference = v.Number("site.reference_temperature");
        return new RopeEstimate(
            v.Number("site.span"),
            v.Number("site.rise"),
            RopeSection.Sag(v),
            (DeadPressure * width / 2) + steel,
            ((v.Units == UnitSystem.Metric ? MetricWetPressure : WetPressure) * width / 2) + steel,
            Math.Max(loads.Live, loads.Snow ?? 0) * width * loads.Eccentricity,
            Math.Max(0, reference - v.Items("site.temperatures").Select(v.Number).Append(reference).Min()),
            v.Number("ropes.safety_factor") / (v.NumberOrNull("ropes.termination.efficiency") ?? Efficiency));
    }

    /// <summary>Whether that rope is strong enough by this estimate.</summary>
    public bool IsCarriedBy(RopeProperties rope) => Margin * Tension(rope) * Factor <= rope.BreakingStrength;

    /// <summary>Largest tension of that rope, at the higher support, loaded and cold; newtons.</summary>
    public double Tension(RopeProperties rope)
    {
        var own = rope.MassPerLength * Units.StandardGravity;
        var (before, loaded) = (Level(Dead + own, Sag), Wet + own + Live);
        var (flat, deep) = (Sag / 10, Sag + Span);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (flat + deep) / 2;
            var stretch = ((Level(loaded, middle) - before) * Chord / Span / rope.AxialStiffness)
                - (SteelRope.ThermalExpansion * Colder);
            (flat, deep) = Length(middle) < Length(Sag) * (1 + stretch) ? (middle, deep) : (flat, middle);
        }

        var steepest = (Math.Abs(Rise) + (4 * deep)) / Span;
        return Level(loaded, deep) * Math.Sqrt(1 + (steepest * steepest));
    }

    private double Chord => Math.Sqrt((Span * Span) + (Rise * Rise));

    // H = w · l² / 8f.
    private double Level(double load, double sag) => load * Span * Span / (8 * sag);

    // Of a parabola between supports that do not lie level, to the second order of its sag.
    private double Length(double sag) => Chord + (8.0 / 3 * sag * sag * Span * Span / (Chord * Chord * Chord));
}
