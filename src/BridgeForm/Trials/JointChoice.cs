using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Connections;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Trials;

/// <summary>
/// The lightest plates and bolts that pass in a joint, out of a small list: bolts of four sizes in one or two lines, in the strut and
/// in the carrier by turns, for what one side carries does not hang on the other. What is found was looked at whole.
/// </summary>
public static class JointChoice
{
    // Few that are light enough of each side are joined; the plate of both must find its place too.
    private const int OfStrut = 5;
    private const int OfCarrier = 150;

    private static readonly ImmutableArray<double> s_inches = [1.0 / 4, 5.0 / 16, 3.0 / 8, 1.0 / 2];
    private static readonly ImmutableArray<double> s_millimetres = [8, 10, 12];

    /// <summary>
    /// Null where none of the list passes, or the members are not equally thick, or a table lacks their wood. Other joints of the
    /// bridge stay as they are, and clear of this one.
    /// </summary>
    /// <param name="layout">Where all lies, for how far apart posts stand.</param>
    /// <param name="parameters">The bridge.</param>
    /// <param name="place">Which joint.</param>
    /// <param name="base">What loads its bases.</param>
    internal static JointParameters? Find(BridgeLayout layout, BridgeParameters parameters, JointPlace place, BaseLoads? @base)
    {
        var frames = parameters.Frames;
        var sticks = JointSticks.Of(frames, place);
        if (Math.Abs(sticks.Strut.Thickness - sticks.Carrier.Thickness) > Tolerances.Seating || frames.Brace.Length <= 0)
        {
            return null;
        }

        var trial = new JointTrial(layout, parameters, place, [.. JointLoad.List(layout, parameters, place)], @base);
        var start = Start(trial, sticks);
        var struts = Struts(trial, start, sticks).Where(trial.StrutPasses).Take(OfStrut).ToList();
        if (struts.Count == 0)
        {
            return null;
        }

        var carriers = Carriers(trial, struts[0], sticks).Where(trial.CarrierPasses).Take(OfCarrier).ToList();
        return struts
            .SelectMany(s => carriers.Select(c => trial.Sized(
                s with { Carrier = c.Carrier, Depth = c.Depth, Shift = c.Shift })))
            .OrderBy(trial.Steel)
            .FirstOrDefault(trial.Passes) is { } found ? new JointParameters(place) { Plates = found } : null;
    }

    private static PlateJoint Start(JointTrial trial, JointSticks sticks)
    {
        var bolt = trial.Sizes[0];
        var one = new BoltPattern(bolt, 2, trial.Up(JointSection.RowApart * bolt), 1, 0);
        var thickness = trial.IsMetric ? 8 * Rounding.Millimetre : Units.MetresPerInch / 4;
        return new(one, trial.Up(DowelDistances.FullEnd * bolt), one, JointSection.Middle(sticks, one), 0, thickness, 0, 0);
    }

    /// <summary>Bolts of the strut, lightest first: as near as they may lie, and further apart, which turns less.</summary>
    private static IEnumerable<PlateJoint> Struts(JointTrial trial, PlateJoint start, JointSticks sticks) => trial.Sizes
        .SelectMany(d => Lines(trial, d, [JointSection.BetweenEdges(sticks.Strut, d)]))
        .SelectMany(line => Rows(trial, line, 5))
        .Select(row => trial.Sized(start with
        {
            Strut = row,
            End = trial.Up(Math.Max(
                (DowelDistances.FullEnd * row.Bolt) + (row.Half * Slant),
                JointSection.EndFor(trial.Parameters.Frames, trial.Place, row))),
        }))
        .OrderBy(trial.Steel);

    // Tangent of the steepest cut of usual braces and posts, 20°: the nearer line of two keeps its end distance too.
    private const double Slant = 0.36;

    private static IEnumerable<PlateJoint> Carriers(JointTrial trial, PlateJoint strut, JointSticks sticks) => trial.Sizes
        .SelectMany(d => Lines(
            trial, d,
            sticks.CarrierIsPost
                ? [JointSection.BetweenEdges(sticks.Carrier, d)]
                : [DowelDistances.FullSpacing * d, sticks.Carrier.Width * 0.3, sticks.Carrier.Width * 0.45]))
        .SelectMany(line => Rows(trial, line, 4))
        .SelectMany(row => Depths(trial, sticks, row).SelectMany(depth => Shifts(trial, sticks).Select(shift =>
            trial.Sized(strut with { Carrier = row, Depth = depth, Shift = shift }))))
        .OrderBy(trial.Steel).ThenBy(c => Math.Abs(c.Shift));

    private static IEnumerable<BoltPattern> Lines(JointTrial trial, double bolt, ImmutableArray<double> apart) =>
    [
        new BoltPattern(bolt, 0, 0, 1, 0),
        .. apart.Select(trial.Down).Where(a => a >= DowelDistances.LeastSpacing * bolt - Tolerances.RoundOff).Distinct()
            .Select(a => new BoltPattern(bolt, 0, 0, 2, a)),
    ];

    private static IEnumerable<BoltPattern> Rows(JointTrial trial, BoltPattern line, int most) =>
        from count in Enumerable.Range(2, most - 1)
        from times in (double[])[1, 1.25, 1.5, 2]
        select line with { Count = count, Spacing = trial.Up(JointSection.RowApart * line.Bolt * times) };

    // Deep in a base, for what is pulled splits off above; the plate stays half a step of its length above the base's bottom.
    private static IEnumerable<double> Depths(JointTrial trial, JointSticks sticks, BoltPattern row)
    {
        var usual = JointSection.Middle(sticks, row);
        var deep = sticks.Carrier.Width - (DowelDistances.IdleEdge * row.Bolt) - row.Half - (trial.Inch / 8);
        return sticks.CarrierIsPost ? [trial.Down(usual)]
            : ((double[])[usual * 0.9, usual, (usual + deep) / 2, deep]).Select(trial.Down).Distinct();
    }

    private static double[] Shifts(JointTrial trial, JointSticks sticks) =>
    [
        .. (sticks.CarrierIsPost ? (double[])[0, -1, -2, -3, -4, -6, -8, 1] : [0, -0.5, 0.5, -1, 1, -1.5, 1.5])
            .Select(i => trial.Down(i * trial.Inch)),
    ];

    internal static ImmutableArray<double> Sizes(UnitSystem units) => units == UnitSystem.Metric
        ? [.. s_millimetres.Select(d => d * Rounding.Millimetre)]
        : [.. s_inches.Select(d => d * Units.MetresPerInch)];
}

/// <summary>Looks at plates in one joint of a bridge.</summary>
internal sealed record JointTrial(
    BridgeLayout Layout, BridgeParameters Parameters, JointPlace Place, ImmutableArray<JointLoad> Loads, BaseLoads? Base)
{
    // Bases and ropes of what is tried weigh a little more than those that were weighed (own figure).
    private const double Heavier = 1.02;

    private readonly JointShear? _shear = Place == JointPlace.BraceHead ? null : Shear(Layout, Parameters, Base);

    private FrameParameters Frames => Parameters.Frames;

    public bool IsMetric => Parameters.Units == UnitSystem.Metric;

    /// <summary>Diameters to try, thinnest first.</summary>
    public ImmutableArray<double> Sizes { get; } = JointChoice.Sizes(Parameters.Units);

    /// <summary>An inch, or 25 mm.</summary>
    public double Inch => IsMetric ? 25 * Rounding.Millimetre : Units.MetresPerInch;

    // What a hand sets out: 1/8 in or 1 mm.
    private double Step => IsMetric ? Rounding.Millimetre : 2 * Rounding.Sixteenth;

    public double Up(double length) => Rounding.Up(length, Step);

    public double Down(double length) => Rounding.Down(length, Step);

    /// <summary>With plates as large as the bolts ask for.</summary>
    public PlateJoint Sized(PlateJoint plates) => plates.Sized(Frames, Place, Parameters.Units);

    /// <summary>Mass of both plates and all bolts, kilograms.</summary>
    public double Steel(PlateJoint plates)
    {
        var wood = JointSticks.Of(Frames, Place).Carrier.Thickness;
        double Bolts(BoltPattern p) =>
            p.Total * Math.PI / 4 * p.Bolt * p.Bolt * BoltSizes.Fit(BoltSizes.Find(p.Bolt)!, wood, plates.Thickness).Length;
        return SteelPlate.Density
            * ((2 * plates.Length * plates.Width * plates.Thickness) + Bolts(plates.Strut) + Bolts(plates.Carrier));
    }

    public bool StrutPasses(PlateJoint plates) => Capacity(plates, null) is { } c && Loads.All(l => c.OfStrut(l).All(Holds));

    public bool CarrierPasses(PlateJoint plates) => Capacity(plates, _shear) is { } c && Loads.All(l => c.OfCarrier(l).All(Holds));

    /// <summary>
    /// Fits in its place, leaves the base its strength beside the ropes' channels, and carries every load, plates and all.
    /// </summary>
    public bool Passes(PlateJoint plates)
    {
        var bridge = With(Parameters, new JointParameters(Place) { Plates = plates });
        return IsClear(bridge, plates) && JointRules.Fits(bridge)
            && Capacity(plates, _shear is null ? null : Shear(Layout, bridge, Base)) is { } c
            && Loads.All(l => c.Limits(l).All(Holds));
    }

    /// <summary>
    /// The bridge with one joint more, or another one; where a rule lays the ropes they make way for it, and the base grows with them.
    /// </summary>
    public static BridgeParameters With(BridgeParameters parameters, JointParameters joint)
    {
        var bridge = parameters with
        {
            Frames = parameters.Frames with
            {
                Joints = [.. parameters.Frames.Joints.Where(j => j.Place != joint.Place).Append(joint).OrderBy(j => j.Place)],
            },
        };
        if (joint is not { Place: JointPlace.BraceFoot, Plates: { } plates } || !ByRule(parameters, "ropes.spacing"))
        {
            return bridge;
        }

        var outermost = PlateLayout.Build(bridge.Frames, joint.Place, plates).Carrier.Max(b => b.Z);
        var spacing = Math.Max(parameters.Ropes.Spacing, 2 * JointSection.RopeBeyond(outermost, plates.Carrier.Bolt));
        var made = bridge.Frames.Base;
        return bridge with
        {
            Ropes = bridge.Ropes with { Spacing = spacing },
            Frames = bridge.Frames with
            {
                Base = ByRule(parameters, "frames.base.length")
                    ? made with { Length = made.Length + spacing - parameters.Ropes.Spacing } : made,
            },
        };
    }

    private static bool ByRule(BridgeParameters parameters, string path) =>
        parameters.Chosen.Any(c => string.Equals(c.Path, path, StringComparison.Ordinal));

    // Nearer than four diameters a hole counts in the section of the channel, and such a base does not carry its shear.
    private bool IsClear(BridgeParameters bridge, PlateJoint plates)
    {
        var room = (bridge.Frames.Channel.Width / 2) + (4 * plates.Carrier.Hole);
        return Place == JointPlace.BraceHead || PlateLayout.Build(Frames, Place, plates).Carrier
            .All(b => Math.Abs(b.Z - (bridge.Ropes.Spacing / 2)) >= room);
    }

    private static bool Holds(JointLimit limit) => limit.Ratio <= 1;

    private static JointShear Shear(BridgeLayout layout, BridgeParameters parameters, BaseLoads? loads)
    {
        var shear = JointShear.Of(layout with { Parameters = parameters }, loads);
        return shear with { Times = Heavier };
    }

    private PlateCapacity? Capacity(PlateJoint plates, JointShear? shear)
    {
        var layout = PlateLayout.Build(Frames, Place, plates);
        var (strut, carrier, _) = JointMember.Build(Parameters, layout);
        return strut is null || carrier is null ? null : new PlateCapacity(new CheckWords(Parameters.Units), layout, strut, carrier)
        {
            Base = shear,
        };
    }
}
