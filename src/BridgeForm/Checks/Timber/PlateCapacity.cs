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
    private PlateJoint Plates => Layout.Plates;

    private SteelPlate Plate => new(Plates.Width, Plates.Thickness);

    private double Hole => Plates.Bolt + BoltSizes.Oversize;

    /// <summary>All of them; none where the load asks nothing of the fasteners.</summary>
    public IEnumerable<JointLimit> Limits(JointLoad load)
    {
        var held = load.Held;
        if (held.Size < Tolerances.RoundOff)
        {
            yield break;
        }

        var back = new PlaneForce(-held.Z, -held.N);
        foreach (var (member, force) in ((JointMember, PlaneForce)[])[(Strut, back), (Carrier, held)])
        {
            var shares = BoltGroup.Share(member.Bolts, force, load.At);
            yield return Yielding(member, shares);
            yield return Steel(member, shares);
            yield return Torn(member, force);
            yield return NetSection(member, force);
        }

        foreach (var limit in Hung(load))
        {
            yield return limit;
        }

        yield return Pulled(load);
    }

    /// <summary>The bolt that is nearest to yielding, its wood or itself.</summary>
    private JointLimit Yielding(JointMember member, ImmutableArray<PlaneForce> shares)
    {
        var geometry = shares.Select((force, i) => Geometry(member, force, i)).Min();
        var duration = AdjustmentFactors.Duration(LoadDuration.Guard).Value;
        var wet = WetService.Factor(1, Plates.Bolt);
        var group = GroupAction.Factor(
            member.Row.Count, member.Row.Spacing, Plates.Bolt,
            member.Wood.Modulus().Value * member.Stick.Thickness * member.Stick.Width,
            GroupAction.SteelModulus * 2 * Plates.Thickness * Plates.Width);
        var factors = duration * wet * group * geometry;
        var worst = shares.Where(s => s.Size > Tolerances.RoundOff)
            .Select(s => (Force: s, Angle: Angle(member, s)))
            .Select(s => (s.Force, s.Angle, Limit: Bolt(member, s.Angle)))
            .MaxBy(s => s.Force.Size / s.Limit.Value);
        var allowed = worst.Limit.Value * factors;
        var ratio = allowed > 0 ? worst.Force.Size / allowed : double.PositiveInfinity;
        return new(
            ratio,
            $"worst bolt of the {member.Name}: {Words.Pounds(worst.Force.Size)} at {CheckWords.Angle(worst.Angle)} to its grain; Z = "
                + $"{Words.Pounds(worst.Limit.Value)} (mode {worst.Limit.Governing}, D {Words.Length(Plates.Bolt)}, lm "
                + $"{Words.Length(member.Stick.Thickness)}, ls {Words.Length(Plates.Thickness)}, Fem "
                + $"{Words.Stress(worst.Limit.MainBearing)}, Fes {Words.Stress(worst.Limit.SideBearing)}, Fyb "
                + $"{Words.Stress(BoltSizes.Yield)}) × CD {TimberWords.Ratio(duration)} × CM {TimberWords.Ratio(wet)} × "
                + $"Cg {TimberWords.Ratio(group)} × CΔ {TimberWords.Ratio(geometry)} = {Words.Pounds(allowed)}",
            $"{YieldLimit.Source}; {DowelBearing.Source}; CM one row along the grain in each member, wet in service, "
                + $"{WetService.Source}; Cg {GroupAction.Source}; CΔ {DowelDistances.Source}");
    }

    private YieldLimit Bolt(JointMember member, double angle) => new(
        Plates.Bolt, BoltSizes.Yield, member.Stick.Thickness, DowelBearing.Wood(member.Gravity, Plates.Bolt, angle), Plates.Thickness,
        DowelBearing.Steel(Plates.Thickness), angle, IsDouble: true);

    /// <summary>CΔ of one bolt under its share: ends it pulls towards, ends it leaves, the row's spacing.</summary>
    private double Geometry(JointMember member, PlaneForce force, int index)
    {
        var (d, along) = (Plates.Bolt, force.Along(member.Grain));
        var (behind, before) = (
            member.Low + (index * member.Row.Spacing), member.High + ((member.Row.Count - 1 - index) * member.Row.Spacing));
        double End(double had, bool isLoaded) => isLoaded
            ? DowelDistances.Factor(had, DowelDistances.LeastEnd * d, DowelDistances.FullEnd * d)
            : DowelDistances.Factor(had, DowelDistances.LeastIdleEnd * d, DowelDistances.FullIdleEnd * d);
        return Math.Min(
            DowelDistances.Factor(member.Row.Spacing, DowelDistances.LeastSpacing * d, DowelDistances.FullSpacing * d),
            Math.Min(End(behind, along < 0), End(before, along > 0)));
    }

    /// <summary>Steel of the bolt and of the plate around it; half of a bolt's load goes into each plate.</summary>
    private JointLimit Steel(JointMember member, ImmutableArray<PlaneForce> shares)
    {
        var most = shares.Max(s => s.Size) / 2;
        var edge = member.Bolts.Min(ToEdge) - (Hole / 2);
        var clear = Math.Min(edge, member.Row.Spacing - Hole);
        var (bolt, bearing) = (SteelPlate.Bolt(Plates.Bolt), Plate.Bearing(Plates.Bolt, clear));
        return new(
            most / Math.Min(bolt, bearing),
            $"bolts of the {member.Name} in the steel: {Words.Pounds(most)} on each plate; a bolt's shear {Words.Pounds(bolt)}, bearing "
                + $"with {Words.Length(clear)} clear {Words.Pounds(bearing)}",
            SteelPlate.Source);
    }

    private double ToEdge(PlanePoint bolt) => Math.Min(
        (Plates.Length / 2) - Math.Abs(bolt.From(Layout.Middle, Layout.Along)),
        (Plates.Width / 2) - Math.Abs(bolt.From(Layout.Middle, Layout.Across)));

    /// <summary>The row pulled out of the member's end.</summary>
    private JointLimit Torn(JointMember member, PlaneForce force)
    {
        var along = force.Along(member.Grain);
        var end = along < 0 ? member.Low : member.High;
        var critical = Math.Min(end, member.Row.Spacing);
        var shear = member.Wood.Shear(LoadDuration.Guard);
        var allowed = LocalStresses.Row(shear.Value, member.Stick.Thickness, member.Row.Count, critical);
        return new(
            Math.Abs(along) / allowed,
            $"row torn out of the {member.Name}: {Words.Pounds(Math.Abs(along))} along its grain; {member.Row.Count} × "
                + $"{Words.Stress(shear.Value)} × {Words.Length(member.Stick.Thickness)} × {Words.Length(critical)} = "
                + $"{Words.Pounds(allowed)}; {shear.Text(Words)}",
            $"{LocalStresses.Source}; {shear.Sources}");
    }

    /// <summary>The section that the row's holes leave, pulled along the grain.</summary>
    private JointLimit NetSection(JointMember member, PlaneForce force)
    {
        var along = Math.Abs(force.Along(member.Grain));
        var tension = member.Wood.Tension(LoadDuration.Guard);
        var allowed = LocalStresses.NetSection(tension.Value, member.NetArea(Hole));
        return new(
            along / allowed,
            $"net section of the {member.Name}: {Words.Pounds(along)} along its grain; {Words.Stress(tension.Value)} × "
                + $"{Words.Area(member.NetArea(Hole))} = {Words.Pounds(allowed)}; {tension.Text(Words)}",
            $"{LocalStresses.Source}; {tension.Sources}");
    }

    /// <summary>
    /// Split across the grain: the carrier by what pulls on it, the strut by the shear that it has at its end, contact included.
    /// </summary>
    private IEnumerable<JointLimit> Hung(JointLoad load)
    {
        var (held, whole) = (load.Held.Along(Carrier.Grain.Turned), load.Whole.Along(Strut.Grain.Turned));
        yield return Split(Carrier, Math.Abs(held), held > 0 ? Carrier.Loaded.Above : Carrier.Loaded.Below);
        yield return Split(Strut, Math.Abs(whole), whole > 0 ? Strut.Loaded.Below : Strut.Loaded.Above);
    }

    private JointLimit Split(JointMember member, double force, double effective)
    {
        var shear = member.Wood.Shear(LoadDuration.Guard);
        var (depth, end) = (member.Stick.Width, Math.Min(member.Low, member.High));
        var allowed = LocalStresses.Hung(shear.Value, member.Stick.Thickness, depth, effective, end);
        var near = end < LocalStresses.NearEnd * depth
            ? $" × ({Words.Length(effective)} / {Words.Length(depth)})², {Words.Length(end)} from its end"
            : "";
        return new(
            force / allowed,
            $"{member.Name} pulled across its grain: {Words.Pounds(force)}; 2/3 × {Words.Stress(shear.Value)} × "
                + $"{Words.Length(member.Stick.Thickness)} × {Words.Length(effective)}{near} = {Words.Pounds(allowed)}; "
                + shear.Text(Words),
            $"{LocalStresses.HungSource}; {shear.Sources}");
    }

    /// <summary>A plate's own section at the first bolt of the strut, and where it takes hold of the carrier.</summary>
    private JointLimit Pulled(JointLoad load)
    {
        var held = load.Held;
        var pull = Math.Abs(held.Along(Layout.Along)) / 2;
        var carrier = BoltGroup.Middle(Layout.Carrier);

        // A row in the base lies across the plate, one up a post along it.
        var across = Layout.Place == JointPlace.BraceHead ? 1 : Plates.Carrier.Count;
        var (first, last) = (
            Plate.Share(pull, BoltGroup.Moment(Layout.Strut[0], held, load.At) / 2, Hole, 1),
            Plate.Share(pull, BoltGroup.Moment(carrier, held, load.At) / 2, Hole, across));
        return new(
            Math.Max(first, last),
            $"plate {Words.Length(Plates.Width)} × {Words.Length(Plates.Thickness)}: {Words.Pounds(pull)} along each, and "
                + $"{Words.Moment(Math.Abs(BoltGroup.Moment(carrier, held, load.At)) / 2)} at the {Carrier.Name}'s bolts, "
                + $"{Words.Moment(Math.Abs(BoltGroup.Moment(Layout.Strut[0], held, load.At)) / 2)} at the {Strut.Name}'s first: "
                + $"{TimberWords.Ratio(Math.Max(first, last))} of what its sections are allowed",
            SteelPlate.Source);
    }

    private static double Angle(JointMember member, PlaneForce force) => Elementary.Atan2(
        Math.Abs(force.Along(member.Grain.Turned)), Math.Abs(force.Along(member.Grain)));
}
