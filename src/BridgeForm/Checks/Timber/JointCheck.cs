using BridgeForm.Connections;
using BridgeForm.Project;

namespace BridgeForm.Checks.Timber;

/// <summary>A joint that the project file describes, against the pushes on its guard.</summary>
internal static class JointCheck
{
    /// <summary>What is compared, for the list of checks.</summary>
    public const string Compares = "Plates with bolts: under every push, a pressed brace's force in the middle of its contact and at its "
        + "lower edge, in the middle of its foot and on either edge of that, a pulled one's on its axis: what presses a "
        + "cut onto its carrier is left to the wood, the rest to the fasteners, "
        + "without friction; the joint is taken as pinned where the strut's axis meets the carrier's face, so that bolts on either side of "
        + "that take the force and its moment about their own middle, each its part (elastic); what moment the joint holds beside that is "
        + "not counted on. Compared are the worst bolt's yielding with CD, CM, Cg and CΔ, rows and group torn out, the net section, each "
        + "member split across its grain (a base by the whole of its shear beside bolts that pull across its grain, in the cases of "
        + "base-shear "
        + "and end-base-shear with the same push), the bolt's steel, "
        + " and of the plates bearing, whole and net "
        + "section and block shear. A bracket: pull / uplift + push along the face / shear of its maker's figures, at most 1. "
        + "Not compared: pushes along the bridge (guard-post-along). Demand is the force held; capacity what of it the joint would carry. "
        + "Whole joints are for a licensed engineer all the same.";

    /// <summary>Rules by which joints are reckoned.</summary>
    public const string Source = $"{YieldLimit.Source}; {DowelBearing.Source}; {WetService.Source}; {GroupAction.Source}; "
        + $"{DowelDistances.Source}; {LocalStresses.Source}; {LocalStresses.HungSource}; {SteelPlate.Source}";

    private const string Caution = "a licensed engineer confirms the joint";

    /// <summary>The result for a joint; what is only stated where the file describes none.</summary>
    /// <param name="context">The bridge.</param>
    /// <param name="place">Which joint.</param>
    /// <param name="stated">Its forces, for an engineer.</param>
    public static CheckResult Find(CheckContext context, JointPlace place, CheckResult stated) =>
        context.Parameters.Frames.JointAt(place) switch
        {
            { Plates: { } plates } => Plated(context, place, plates, stated),
            { Bracket: { } bracket } => Bracketed(context, place, bracket, stated),
            _ => stated,
        };

    private static CheckResult Plated(CheckContext context, JointPlace place, PlateJoint plates, CheckResult stated)
    {
        var layout = PlateLayout.Build(context.Parameters.Frames, place, plates);
        var (strut, carrier, missing) = JointMember.Build(context.Parameters, layout);
        if (strut is null || carrier is null)
        {
            return stated with { NotChecked = missing!.Wood, Detail = $"{stated.Detail}; {missing}" };
        }

        var capacity = new PlateCapacity(context.Words(), layout, strut, carrier)
        {
            Base = place == JointPlace.BraceHead ? null : JointShear.Of(context),
        };
        var worst = JointLoad.List(context.Layout, context.Parameters, place)
            .SelectMany(load => capacity.Limits(load).Select(limit => (load, limit)))
            .MaxBy(c => c.limit.Ratio);
        return Against(context, place, plates.Thickness, stated, worst.load, worst.limit);
    }

    private static CheckResult Bracketed(CheckContext context, JointPlace place, BracketCapacity bracket, CheckResult stated)
    {
        var words = context.Words();
        var worst = JointLoad.List(context.Layout, context.Parameters, place)
            .Select(load => (load, limit: Declared(words, bracket, load)))
            .MaxBy(c => c.limit.Ratio);
        return Against(context, place, null, stated, worst.load, worst.limit);
    }

    private static JointLimit Declared(CheckWords words, BracketCapacity bracket, JointLoad load)
    {
        var ratio = (load.Pull / bracket.Uplift) + (load.Shear / bracket.Shear);
        return new(
            ratio,
            () => $"bracket: {words.Pounds(load.Pull)} / {words.Pounds(bracket.Uplift)} + {words.Pounds(load.Shear)} / "
                + $"{words.Pounds(bracket.Shear)} = {TimberWords.Ratio(ratio)}",
            bracket.Source);
    }

    /// <summary>What no joint is looked at for: the same push along the bridge, which guard-post-along states.</summary>
    private static string Along(CheckContext context, JointPlace place, double? plate)
    {
        var (words, parameters) = (context.Words(), context.Parameters);
        if (place != JointPlace.PostFoot)
        {
            return "pushes along the bridge are not looked at (guard-post-along)";
        }

        var push = GuardPush.List(context).Max(p => p.Force);
        var moment = push * GuardFrame.Build(parameters).Top;
        return $"not looked at: the same push along the bridge, {words.Moment(moment)} at the foot of one post alone"
            + (plate is { } thick ? $", {words.Pounds(moment / (parameters.Frames.Post.Section.Thickness + thick))} in each plate" : "")
            + " (guard-post-along)";
    }

    private static CheckResult Against(
        CheckContext context, JointPlace place, double? plate, CheckResult stated, JointLoad load, JointLimit limit)
    {
        var words = context.Words();
        var (held, press) = (load.Held.Size, load.Pressed);
        return Outcome.AtMost(
            stated.Id,
            stated.Title,
            held,
            held / limit.Ratio,
            "N",
            TimberWords.Once($"{limit.Source}; {stated.Source}"),
            $"{load.Push.Name}, resultant {load.Frame.Where}{load.Frame.After}: the joint holds {words.Pounds(held)}"
                + (press > 0 ? $", the cut's wood {words.Pounds(press)}" : "")
                + $"; {limit.Text()}; {Along(context, place, plate)}; {Caution}") with
        { Parts = stated.Parts };
    }
}
