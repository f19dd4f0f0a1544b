using System.Collections.Immutable;
using BridgeForm.Connections;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>Everything that a joint of plates and bolts can fail by, under one load.</summary>
/// <param name="Words">Units.</param>
/// <param name="Layout">Where bolts and plates lie.</param>
/// <param name="Strut">The member that ends in the joint.</param>
/// <param name="Carrier">The member it ends on.</param>
internal sealed record PlateCapacity(CheckWords Words, PlateLayout Layout, JointMember Strut, JointMember Carrier)
{
    /// <summary>What shears the base beside the bolts; null where nothing is known of it.</summary>
    public JointShear? Base { get; init; }

    private PlateJoint Plates => Layout.Plates;

    private SteelPlate Plate => new(Plates.Width, Plates.Thickness);

    /// <summary>All of them; none where the load asks nothing of the fasteners.</summary>
    public IEnumerable<JointLimit> Limits(JointLoad load) => [.. OfStrut(load), .. OfCarrier(load), .. OfPlate(load)];

    /// <summary>What the strut and its bolts can fail by.</summary>
    public IEnumerable<JointLimit> OfStrut(JointLoad load) => load.Held.Size < Tolerances.RoundOff
        ? []
        : Of(Strut, new(-load.Held.Z, -load.Held.N), load.At).Append(Sheared(load));

    /// <summary>What the carrier and its bolts can fail by.</summary>
    public IEnumerable<JointLimit> OfCarrier(JointLoad load) => load.Held.Size < Tolerances.RoundOff
        ? []
        : Of(Carrier, load.Held, load.At).Append(Hung(load));

    /// <summary>What the plates can fail by, but for the holes' edges.</summary>
    public IEnumerable<JointLimit> OfPlate(JointLoad load) => load.Held.Size < Tolerances.RoundOff ? [] : [Pulled(load), Block(load)];

    private IEnumerable<JointLimit> Of(JointMember member, PlaneForce force, PlanePoint at)
    {
        var shares = BoltGroup.Share(member.Bolts, force, at);
        yield return Yielding(member, shares);
        yield return Steel(member, shares);
        yield return Torn(member, force, shares);
        yield return NetSection(member, force);
    }

    /// <summary>The bolt that is nearest to yielding, its wood or itself.</summary>
    private JointLimit Yielding(JointMember member, ImmutableArray<PlaneForce> shares)
    {
        var row = member.Row;
        var geometry = shares.Select((force, i) => Geometry(member, force, i)).Min();
        var duration = AdjustmentFactors.Duration(LoadDuration.Guard).Value;
        var wet = WetService.Factor(row.Lines, row.Bolt);
        var group = GroupAction.Factor(
            row.Count, row.Spacing, row.Bolt,
            member.Wood.Modulus().Value * member.Stick.Thickness * member.Stick.Width,
            GroupAction.SteelModulus * 2 * Plates.Thickness * Plates.Width);
        var factors = duration * wet * group * geometry;
        var worst = shares.Where(s => s.Size > Tolerances.RoundOff)
            .Select(s => (Force: s, Angle: Angle(member, s)))
            .Select(s => (s.Force, s.Angle, Limit: Bolt(member, s.Angle)))
            .MaxBy(s => s.Force.Size / s.Limit.Value);
        var allowed = worst.Limit.Value * factors;
        var isThreaded = worst.Limit.Diameter < row.Bolt - Tolerances.RoundOff;
        var ratio = allowed > 0 ? worst.Force.Size / allowed : double.PositiveInfinity;
        return new(
            ratio,
            () => $"worst bolt of the {member.Name}: {Words.Pounds(worst.Force.Size)} at {CheckWords.Angle(worst.Angle)} to its grain, its "
                + $"part of the moment about the bolts' middle in it; Z = {Words.Pounds(worst.Limit.Value)} (mode "
                + $"{worst.Limit.Governing}, D {Words.Length(row.Bolt)}"
                + (isThreaded ? $", Dr {Words.Length(worst.Limit.Diameter)} for threads in the nut's plate" : "")
                + $", lm {Words.Length(member.Stick.Thickness)}, ls "
                + $"{Words.Length(Plates.Thickness)}, Fem {Words.Stress(worst.Limit.MainBearing)}, Fes "
                + $"{Words.Stress(worst.Limit.SideBearing)}, Fyb {Words.Stress(BoltSizes.Yield)}) × CD {TimberWords.Ratio(duration)} × CM "
                + $"{TimberWords.Ratio(wet)} × Cg {TimberWords.Ratio(group)} × CΔ {TimberWords.Ratio(geometry)} = {Words.Pounds(allowed)}",
            $"{YieldLimit.Source}; {DowelBearing.Source}; CM "
                + $"{(row.Lines > 1 ? "two rows along the grain under one plate, which shrinks" : "one row along the grain")}, "
                + $"wet in service, {WetService.Source}; Cg {GroupAction.Source}; CΔ {DowelDistances.Source}");
    }

    private YieldLimit Bolt(JointMember member, double angle) => new(
        BoltSizes.Fit(BoltSizes.Find(member.Row.Bolt)!, member.Stick.Thickness, Plates.Thickness).Counts, BoltSizes.Yield,
        member.Stick.Thickness, DowelBearing.Wood(member.Gravity, member.Row.Bolt, angle),
        Plates.Thickness,
        DowelBearing.Steel(Plates.Thickness), angle, IsDouble: true);

    /// <summary>
    /// CΔ of one bolt under its share: ends it pulls towards, ends it leaves, the spacing along the grain and, between two lines, that
    /// across it.
    /// </summary>
    private static double Geometry(JointMember member, PlaneForce force, int index)
    {
        var (d, along) = (member.Row.Bolt, force.Along(member.Grain));
        var (behind, before) = member.Ends[index];
        double End(double had, bool isLoaded) => isLoaded
            ? DowelDistances.Factor(had, DowelDistances.LeastEnd * d, DowelDistances.FullEnd * d)
            : DowelDistances.Factor(had, DowelDistances.LeastIdleEnd * d, DowelDistances.FullIdleEnd * d);
        double Apart(double had) => DowelDistances.Factor(had, DowelDistances.LeastSpacing * d, DowelDistances.FullSpacing * d);
        return Math.Min(
            Math.Min(Apart(member.Row.Spacing), member.Row.Lines > 1 ? Apart(member.Row.Apart) : 1),
            Math.Min(End(behind, along < 0), End(before, along > 0)));
    }

    /// <summary>Steel of the bolt and of the plate around it; half of a bolt's load goes into each plate.</summary>
    private JointLimit Steel(JointMember member, ImmutableArray<PlaneForce> shares)
    {
        var (row, most) = (member.Row, shares.Max(s => s.Size) / 2);
        var edge = member.Bolts.Min(ToEdge) - (row.Hole / 2);
        var clear = Math.Min(edge, (row.Lines > 1 ? Math.Min(row.Spacing, row.Apart) : row.Spacing) - row.Hole);
        var (bolt, bearing) = (SteelPlate.Bolt(row.Bolt), Plate.Bearing(row.Bolt, clear));
        return new(
            most / Math.Min(bolt, bearing),
            () => $"bolts of the {member.Name} in the steel: {Words.Pounds(most)} on each plate; a bolt's shear {Words.Pounds(bolt)}, "
                + $"bearing with {Words.Length(clear)} clear {Words.Pounds(bearing)}",
            SteelPlate.Source);
    }

    private double ToEdge(PlanePoint bolt) => Math.Min(
        (Plates.Length / 2) - Math.Abs(bolt.From(Layout.Middle, Layout.Along)),
        (Plates.Width / 2) - Math.Abs(bolt.From(Layout.Middle, Layout.Across)));

    /// <summary>
    /// Rows pulled out of the member's end, the one that its part of the moment pulls hardest, or two with the wood between them.
    /// </summary>
    private JointLimit Torn(JointMember member, PlaneForce force, ImmutableArray<PlaneForce> shares)
    {
        var (row, whole) = (member.Row, force.Along(member.Grain));
        var (shear, tension) = (member.Wood.Shear(LoadDuration.Guard), member.Wood.Tension(LoadDuration.Guard));
        double Critical(double along) => Math.Min(member.Ends.Min(e => along < 0 ? e.Behind : e.Before), row.Spacing);
        double Holds(double along) => LocalStresses.Row(shear.Value, member.Stick.Thickness, row.Count, Critical(along));

        // Bolts that lie side by side follow each other.
        var pull = Enumerable.Range(0, row.Lines)
            .Select(line => shares.Where((_, i) => i % row.Lines == line).Sum(s => s.Along(member.Grain)))
            .MaxBy(along => Math.Abs(along) / Holds(along));
        var (one, two) = (Holds(pull), row.Lines * Holds(whole));
        var between = Math.Max(0, row.Apart - row.Hole) * member.Stick.Thickness;
        var group = LocalStresses.Group(two, tension.Value, between);
        var (ofRow, ofGroup) = (Math.Abs(pull) / one, row.Lines > 1 ? Math.Abs(whole) / group : 0);
        string Planes(double along) => $"{row.Count} × {Words.Stress(shear.Value)} × {Words.Length(member.Stick.Thickness)} × "
            + Words.Length(Critical(along));
        return new(
            Math.Max(ofRow, ofGroup),
            () => (ofGroup > ofRow
                ? $"group torn out of the {member.Name}: {Words.Pounds(Math.Abs(whole))} along its grain; half of {row.Lines} × "
                    + $"{Planes(whole)} = {Words.Pounds(two)}, and {Words.Stress(tension.Value)} × {Words.Area(between)} = "
                    + Words.Pounds(group)
                : $"row torn out of the {member.Name}: {Words.Pounds(Math.Abs(pull))} along its grain"
                    + (row.Lines > 1 ? ", its part of the moment in it" : "") + $"; {Planes(pull)} = {Words.Pounds(one)}")
                + $"; {shear.Text(Words)}",
            $"{LocalStresses.Source}; {shear.Sources}");
    }

    /// <summary>The section that the row's holes leave, pulled along the grain.</summary>
    private JointLimit NetSection(JointMember member, PlaneForce force)
    {
        var along = Math.Abs(force.Along(member.Grain));
        var tension = member.Wood.Tension(LoadDuration.Guard);
        var allowed = LocalStresses.NetSection(tension.Value, member.NetArea);
        return new(
            along / allowed,
            () => $"net section of the {member.Name}: {Words.Pounds(along)} along its grain; {Words.Stress(tension.Value)} × "
                + $"{Words.Area(member.NetArea)} = {Words.Pounds(allowed)}; {tension.Text(Words)}",
            $"{LocalStresses.Source}; {tension.Sources}");
    }

    /// <summary>The strut split by the shear that it has at its end, contact included.</summary>
    private JointLimit Sheared(JointLoad load)
    {
        var whole = load.Whole.Along(Strut.Grain.Turned);
        return Split(Strut, Math.Abs(whole), null, whole > 0 ? Strut.Loaded.Below : Strut.Loaded.Above);
    }

    /// <summary>
    /// The carrier split by what pulls on it across its grain: a base by all that shears it there, a post, of which both sides of the
    /// joint have a part, by the whole of the joint's force. What nothing pulls across the grain is sheared only; others look at that.
    /// </summary>
    private JointLimit Hung(JointLoad load)
    {
        var held = load.Held.Along(Carrier.Grain.Turned);
        var beside = Layout.Place == JointPlace.BraceHead || Math.Abs(held) <= Tolerances.RoundOff * load.Whole.Size
            ? null
            : Base?.Beside(load, Layout);
        return Split(Carrier, Math.Abs(held), beside, held > 0 ? Carrier.Loaded.Above : Carrier.Loaded.Below);
    }

    private JointLimit Split(JointMember member, double own, (double Value, string Case)? beside, double effective)
    {
        var force = Math.Max(own, beside?.Value ?? 0);
        var how = force > own
            ? $"sheared beside the bolts by {Words.Pounds(force)}, {beside!.Value.Case}, of which they pull {Words.Pounds(own)} across its "
                + "grain"
            : $"pulled across its grain: {Words.Pounds(force)}";
        var shear = member.Wood.Shear(LoadDuration.Guard);
        var (depth, end) = (member.Stick.Width, member.NearestEnd);
        var allowed = LocalStresses.Hung(shear.Value, member.Stick.Thickness, depth, effective, end);
        return new(
            force / allowed,
            () => $"{member.Name} {how}; 2/3 × {Words.Stress(shear.Value)} × "
                + $"{Words.Length(member.Stick.Thickness)} × {Words.Length(effective)}"
                + (end < LocalStresses.NearEnd * depth
                    ? $" × ({Words.Length(effective)} / {Words.Length(depth)})², {Words.Length(end)} from its end" : "")
                + $" = {Words.Pounds(allowed)}, of its {Words.Length(depth)} the {Words.Length(effective)} from the pressed edge to the "
                + $"bolts furthest from it; {shear.Text(Words)}",
            $"{LocalStresses.HungSource}; {shear.Sources}");
    }

    /// <summary>A plate's own section at the first bolts of the strut, and where it takes hold of the carrier.</summary>
    private JointLimit Pulled(JointLoad load)
    {
        var held = load.Held;
        var pull = Math.Abs(held.Along(Layout.Along)) / 2;
        var (near, far) = (
            Math.Abs(BoltGroup.Moment(BoltGroup.Middle([.. Layout.Strut.Take(Plates.Strut.Lines)]), held, load.At)) / 2,
            Math.Abs(BoltGroup.Moment(BoltGroup.Middle(Layout.Carrier), held, load.At)) / 2);
        var ratio = Math.Max(
            Plate.Share(pull, near, Plates.Strut.Hole, Plates.Strut.Lines), Plate.Share(pull, far, Plates.Carrier.Hole, SideBySide));
        return new(
            ratio,
            () => $"plate {Words.Length(Plates.Width)} × {Words.Length(Plates.Thickness)}: {Words.Pounds(pull)} along each, and "
                + $"{Words.Moment(far)} at the {Carrier.Name}'s bolts, {Words.Moment(near)} at the {Strut.Name}'s first: "
                + $"{TimberWords.Ratio(ratio)} of what its sections are allowed",
            SteelPlate.Source);
    }

    // A row in the base lies across the plate, one up a post along it.
    private int SideBySide => Layout.Place == JointPlace.BraceHead ? Plates.Carrier.Lines : Plates.Carrier.Count;

    /// <summary>The steel between a member's bolts torn out of the plate's end.</summary>
    private JointLimit Block(JointLoad load)
    {
        var pull = Math.Abs(load.Held.Along(Layout.Along)) / 2;
        var (strut, carrier) = (Plates.Strut, Plates.Carrier);
        var isPost = Layout.Place == JointPlace.BraceHead;
        var (ofStrut, ofCarrier) = (
            Torn(strut, strut.Lines, strut.Apart, strut.Count, strut.Spacing, Layout.Strut),
            isPost
                ? Torn(carrier, carrier.Lines, carrier.Apart, carrier.Count, carrier.Spacing, Layout.Carrier)
                : Torn(carrier, carrier.Count, carrier.Spacing, carrier.Lines, carrier.Apart, Layout.Carrier));
        return new(
            pull / Math.Min(ofStrut, ofCarrier),
            () => $"block of each plate torn out of its end: {Words.Pounds(pull)}; at the {Strut.Name} {Words.Pounds(ofStrut)}, at the "
                + $"{Carrier.Name} {Words.Pounds(ofCarrier)}",
            SteelPlate.Source);
    }

    // Lines along the plate; of one alone the steel beside it to the plate's edge breaks.
    private double Torn(BoltPattern bolts, int lines, double apart, int count, double spacing, ImmutableArray<PlanePoint> places)
    {
        var edge = places.Min(ToEdge);
        return Plate.Block(
            (count - 1) * spacing + edge, count, lines > 1 ? 2 : 1, lines > 1 ? (lines - 1) * apart : edge, bolts.Hole,
            lines > 1 ? lines - 1 : 0.5);
    }

    private static double Angle(JointMember member, PlaneForce force) => Elementary.Atan2(
        Math.Abs(force.Along(member.Grain.Turned)), Math.Abs(force.Along(member.Grain)));
}
