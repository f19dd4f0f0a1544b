using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// What must hold an end frame on its landing when people push its guard: it stands loose on the landing, and nothing of the
/// ropes holds it.
/// </summary>
internal static class EndFrames
{
    private const string Source = "statics of the end frame on its landing, 0.6 D at light densities (own figure for people, as ASCE 7 has "
        + $"for wind); {GuardPush.Source}";

    /// <summary>Against turning over sideways.</summary>
    public static DeclaredCheck DeclaredDown { get; } = new(
        "end-frame-down",
        "End frame: held down on its landing",
        "A push of guard-post outward at the cap's top turns the end frame about the end of its base: push × height above the landing, "
            + "less 0.6 of its own weight and of half of what hangs in its bay (dry wood, the lighter end) × half the base, over the "
            + "base's length, must hold the other end down; and the push itself must be held sideways. Only stated: hold-down and landing "
            + "are for an engineer.",
        Source,
        [CheckStatus.Engineer]);

    /// <summary>Against tipping along the bridge.</summary>
    public static DeclaredCheck DeclaredAlong { get; } = new(
        "end-frame-along",
        "End frame: held along the bridge",
        "A push of guard-post along the bridge at the cap's top tips the end frame about the edge of its base: push × height above the "
            + "landing, less 0.6 of its weight × half of what the base measures along the bridge. The landing must hold the base down "
            + "within that width and take the push; or the deck of the first bay, fixed to both bases, hands it as a pair of forces to "
            + "landing and ropes. Only stated.",
        Source,
        [CheckStatus.Engineer]);

    /// <summary>Both.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var words = context.Words();
        var (layout, made) = (context.Layout, context.Parameters.Frames.Base);
        var (weight, frame, bay) = Lighter(layout);
        var height = GuardFrame.Build(context.Parameters).Top + made.Depth;
        var push = GuardPush.List(context).MaxBy(p => p.Force)!;
        var moment = push.Force * height;
        var lever = $"{words.Pounds(push.Force)} × {words.Length(height)} above the landing";

        var sure = LoadCases.SureDead * weight;
        var dead = $"{TimberWords.Ratio(LoadCases.SureDead)} × {words.Pounds(weight)}";

        var down = Math.Max(0, (moment - (sure * made.Length / 2)) / made.Length);
        yield return Outcome.ForEngineer(
            DeclaredDown, down, "N", Source,
            $"{push.Name}: ({lever} − {dead} × {words.Length(made.Length)} / 2) / {words.Length(made.Length)} = "
                + $"{words.Pounds(down)} to hold down at one end of the base; "
            + $"{words.Pounds(push.Force)} to hold sideways").OnBase(context, frame);

        var tips = Math.Max(0, moment - (sure * made.Along / 2));
        var chord = (layout.Poses[bay].Node - layout.Poses[bay - 1].Node).Length;
        yield return Outcome.ForEngineer(
            DeclaredAlong, tips / made.Along, "N", Source,
            $"{Level(push)} along the bridge: {lever} − {dead} × {words.Length(made.Along)} / 2 = {words.Moment(tips)}; "
            + $"held by the landing alone {words.Moment(tips)} / {words.Length(made.Along)} = {words.Pounds(tips / made.Along)} to hold "
            + "down at one edge of the base; "
            + $"by the deck of the first bay {words.Moment(tips)} / {words.Length(chord)} = {words.Pounds(tips / chord)}, up on one of its "
            + $"bases and down on the other; {words.Pounds(push.Force)} to hold along").OnBase(context, frame);
    }

    // Its name says outward; here it goes along the bridge.
    private static string Level(GuardPush push) => push.Name.Replace(" outward", "", StringComparison.Ordinal);

    /// <summary>Weight of the lighter end frame with half its bay, newtons, with both.</summary>
    private static (double Weight, int Frame, int Bay) Lighter(BridgeLayout layout)
    {
        var ends = new[] { (Frame: 0, Bay: 1), (Frame: layout.Bays, Bay: layout.Bays) };
        return Ties.FirstLeast(ends.Select(e => (Weight(layout, e.Frame, e.Bay), e.Frame, e.Bay)), e => e.Item1);
    }

    private static double Weight(BridgeLayout layout, int frame, int bay)
    {
        var asked = layout.Parameters.Frames.Holes;
        double Mass(IEnumerable<Member> members) => members.Where(m => !RoleTable.Of(m.Role).StandsOnLanding).Sum(m =>
            MemberVolume.Measure(m.Shape, MemberVolume.IsDrilled(asked, m.Role)) * layout.Parameters.StockNamed(m.Stock).Density.Low);
        var mass = Mass(Members.Frame(layout, frame).Members)
            + ((Mass(Members.Bay(layout, bay).Members) + GuardNet.Mass(layout, bay)) / 2) + layout.Parameters.Frames.HardwareMass;
        return mass * BridgeMasses.Gravity;
    }
}
