using BridgeForm.Connections;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>Ends of rails, caps, boards and stringers, and what holds them where they lie.</summary>
internal static class HeldJoints
{
    private const string Common = " Screws go into side grain; in end grain they never count. Without joints in the project file it is for "
        + "an engineer, with the force.";

    private const string Screws = $"{ScrewPull.Source}; {YieldLimit.Source}; {DowelBearing.Source}; {WetService.Source}; "
        + $"{ScrewSizes.Source}";

    private const string RailSource = $"{RailSpan.Source}, taken as pulled inward too; 200 lbf (890 N) of somebody who stands on a rail: "
        + "own figure";

    private const string UpliftSource = "loads.uplift of the project file, nothing taken off for weight; ASCE 7 2.4.1: loads.uplift is "
        + "taken as W of allowable stress design, 0.6 already in it";

    // Somebody stands on a rail beside a post: own figure, as much as a guard's top takes.
    private const double Climber = 200 * Units.PoundForce;

    /// <summary>Rails.</summary>
    public static DeclaredCheck DeclaredRail { get; } = Declare(
        "joint-rail", "Joint of rail and post",
        "At one end of a rail 50 lbf pulling it inward off the post, and by itself 200 lbf of somebody standing on it: the screws pulled "
            + "out of the post (thread, head) and pushed sideways, by the yield limit with CD 1.6 and CM 0.7, less where they go less "
            + "deep than ten diameters (lag screws: eight), lag screws with CΔ for half of a post's half as end distance. Outward it "
            + "presses on the post; along the bridge nothing is looked at. Splitting is prevented by drilling first." + Common,
        $"{RailSource}; {Screws}; {DowelDistances.Source}");

    /// <summary>Caps.</summary>
    public static DeclaredCheck DeclaredCap { get; } = Declare(
        "joint-cap", "Joint of cap and post",
        "200 lbf at one end of a cap, on a public bridge 50 plf on half a bay as well (by itself), in the direction that is worst for a "
            + "bracket: force × √(1/uplift² + 1/shear²) of its maker's figures, at most 1." + Common,
        GuardPush.Source);

    /// <summary>Boards along the bridge.</summary>
    public static DeclaredCheck DeclaredBoard { get; } = Declare(
        "joint-board", "Joint of board and base",
        "Wind under the deck, loads.uplift on the board's share of the width and half its bay: the screws pulled out of the base "
            + "(thread, less what a tapered shim takes up; head) with CD 1.6 and CM 0.7. Without loads.uplift only stated." + Common,
        $"{UpliftSource}; {Screws}");

    /// <summary>Stringers under treads.</summary>
    public static DeclaredCheck DeclaredStringer { get; } = Declare(
        "joint-stringer", "Joint of stringer and base",
        "Wind under the deck, loads.uplift on the widest strip that a stringer carries and half its bay, against a bracket's uplift by its "
            + "maker's figures. Without loads.uplift only stated." + Common,
        UpliftSource);

    /// <summary>Those that the bridge has.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var (guard, deck) = (context.Parameters.Guard, context.Parameters.Deck);
        if (guard.RailCount > 0 || !guard.RailHeights.IsEmpty)
        {
            yield return Rail(context);
        }

        yield return Cap(context);
        yield return deck.Stringer is { } stringer ? Stringer(context, stringer) : Board(context);
    }

    private static HeldJoint? Joint(CheckContext context, string name) =>
        context.Parameters.HeldJoints.FirstOrDefault(j => string.Equals(j.Name, name, StringComparison.Ordinal));

    private static CheckResult Rail(CheckContext context)
    {
        var (parameters, words) = (context.Parameters, context.Words());
        var asks = $"{words.Pounds(RailSpan.Infill)} pulling one end inward, {words.Pounds(Climber)} on it";
        var parts = context.InBay(1, Role.Rail);
        return Joint(context, "rail") switch
        {
            { Screws: { } screws } => Screwed(context, DeclaredRail, RailSource, screws, Ends(parameters)).On(parts),
            { Bracket: { } bracket } => Worse(
                Bracketed(words, DeclaredRail, RailSource, RailSpan.Infill, bracket.Uplift, bracket, "pulled inward"),
                Bracketed(words, DeclaredRail, RailSource, Climber, bracket.Shear, bracket, "stood on")).On(parts),
            _ => Outcome.ForEngineer(DeclaredRail, Climber, "N", RailSource, $"{asks}: what holds it is not in the file (joints.rail)")
                .On(parts),
        };
    }

    private static IEnumerable<ScrewLoad> Ends(BridgeParameters parameters)
    {
        var guard = parameters.Guard;
        var (post, rail) = (parameters.Frames.Post, guard.Rail);
        yield return new("pulled inward", RailSpan.Infill, IsPull: true, guard.RailStock, rail, post.Stock, 0);

        // Level rails lie across the load, posts along it; a rail butts on half of the post's face.
        yield return new("stood on", Climber, IsPull: false, guard.RailStock, rail, post.Stock, 0)
        {
            End = post.Section.Thickness / 4,
        };
    }

    private static CheckResult Cap(CheckContext context)
    {
        var (parameters, words) = (context.Parameters, context.Words());
        var (span, where, bay) = CapSpans.Longest(context.Layout);
        var line = parameters.Use == BridgeUse.Public ? GuardPush.Line * span / 2 : 0;
        var force = Math.Max(GuardPush.Point, line);
        var asks = line > GuardPush.Point
            ? $"{words.PerFoot(GuardPush.Line)} × {words.Length(span)} / 2 ({where}) = {words.Pounds(force)}"
            : words.Pounds(force);
        if (Joint(context, "cap")?.Bracket is not { } bracket)
        {
            return Outcome.ForEngineer(
                DeclaredCap, force, "N", GuardPush.Source,
                $"{asks} at one end, any way: what holds it is not in the file (joints.cap). Screws down into a post's head never count")
                .On(context.InBay(bay, Role.Cap));
        }

        var (up, along) = (1 / bracket.Uplift, 1 / bracket.Shear);
        var holds = 1 / Math.Sqrt((up * up) + (along * along));
        return Outcome.AtMost(
            DeclaredCap, force, holds, "N", $"{GuardPush.Source}; {bracket.Source}",
            $"{asks}, in the worst direction; bracket: 1 / √(1 / {words.Pounds(bracket.Uplift)}² + 1 / {words.Pounds(bracket.Shear)}²) = "
                + words.Pounds(holds))
            .On(context.InBay(bay, Role.Cap));
    }

    private static CheckResult Board(CheckContext context)
    {
        var (parameters, words) = (context.Parameters, context.Words());
        var bay = BaseCases.Longest(context.Layout);
        var strip = DeckWidth.BetweenPosts(parameters) / Math.Max(1, DeckWidth.BoardCount(parameters));
        var parts = context.InBay(bay, Role.Board);
        if (parameters.Loads.Uplift is not { } pressure)
        {
            return NoWind(DeclaredBoard, Joint(context, "board")?.Screws is { } held
                ? $"; {Counted(words, held)} would hold "
                    + words.Pounds(held.Count * Pulled(context, held, OnBase(context, 0)).Value)
                : "").On(parts);
        }

        var force = pressure * strip * Length(context, bay) / 2;
        return Joint(context, "board") switch
        {
            { Screws: { } screws } => Screwed(context, DeclaredBoard, UpliftSource, screws, [OnBase(context, force)]).On(parts),
            { Bracket: { } bracket } => Bracketed(words, DeclaredBoard, UpliftSource, force, bracket.Uplift, bracket, "lifted").On(parts),
            _ => Outcome.ForEngineer(
                DeclaredBoard, force, "N", UpliftSource,
                $"{words.Pounds(force)} up at one end: what holds it is not in the file (joints.board)").On(parts),
        };
    }

    private static ScrewLoad OnBase(CheckContext context, double force)
    {
        var (deck, made) = (context.Parameters.Deck, context.Parameters.Frames.Base);
        var shims = context.Pieces.Where(p => p.Role == Role.Packer).Select(p => p.Shape.Thickness).DefaultIfEmpty(0).Max();
        return new("lifted by the wind", force, IsPull: true, deck.BoardStock, deck.Board, made.Stock, shims);
    }

    private static CheckResult Stringer(CheckContext context, StringerParameters stringer)
    {
        var words = context.Words();
        var bay = BaseCases.Longest(context.Layout);
        var parts = context.InBay(bay, Role.Stringer);
        if (context.Parameters.Loads.Uplift is not { } pressure)
        {
            return NoWind(DeclaredStringer, "").On(parts);
        }

        var force = pressure * StringerShares.LargestWidth(context.Parameters, stringer) * Length(context, bay) / 2;
        return Joint(context, "stringer")?.Bracket is { } bracket
            ? Bracketed(words, DeclaredStringer, UpliftSource, force, bracket.Uplift, bracket, "lifted").On(parts)
            : Outcome.ForEngineer(
                DeclaredStringer, force, "N", UpliftSource,
                $"{words.Pounds(force)} up at one end: what holds it is not in the file (joints.stringer)").On(parts);
    }

    private static double Length(CheckContext context, int bay) =>
        (context.Layout.Poses[bay].Node - context.Layout.Poses[bay - 1].Node).Length;

    private static CheckResult NoWind(DeclaredCheck declared, string more) => Outcome.ForEngineer(
        declared, 0, "N", UpliftSource, "loads.uplift is not given: wind under the deck is not looked at" + more);

    private static CheckResult Bracketed(
        CheckWords words, DeclaredCheck declared, string source, double force, double holds, BracketCapacity bracket, string how) =>
        Outcome.AtMost(
            declared, force, holds, "N", $"{source}; {bracket.Source}",
            $"{how}: {words.Pounds(force)}; bracket, by its maker: {words.Pounds(holds)}");

    private static CheckResult Worse(CheckResult one, CheckResult other) => one.Ratio >= other.Ratio ? one : other;

    private static CheckResult Screwed(
        CheckContext context, DeclaredCheck declared, string source, ScrewSet screws, IEnumerable<ScrewLoad> loads)
    {
        var words = context.Words();
        var (load, holds) = loads
            .Select(l => (Load: l, Holds: l.IsPull ? Pulled(context, screws, l) : Pushed(context, screws, l)))
            .MaxBy(c => c.Load.Force / c.Holds.Value);
        var all = screws.Count * holds.Value;
        return Outcome.AtMost(
            declared, load.Force, all, "N", $"{source}; {holds.Source}",
            $"{load.How}: {words.Pounds(load.Force)} on {Counted(words, screws)}; each {holds.Text(words)} = {words.Pounds(holds.Value)}, "
                + $"together {words.Pounds(all)}; a licensed engineer confirms the joint");
    }

    private static string Counted(CheckWords words, ScrewSet screws) =>
        $"{NumberText.By("0", screws.Count)} × {screws.Size.Words} {words.Length(screws.Length)} long";

    private static ScrewHold Pulled(CheckContext context, ScrewSet screws, ScrewLoad load)
    {
        var (size, factors) = (screws.Size, Factors());
        var (side, main) = (Gravity(context, load.SideStock), Gravity(context, load.MainStock));
        var inWood = screws.Length - load.Side.Thickness - load.Between - (size.IsLag ? size.Tip : 0);
        var thread = Math.Max(0, Math.Min(size.Thread(screws.Length), inWood));
        var (pulled, through) = (ScrewPull.Out(size, main, thread), ScrewPull.Through(size, side, load.Side.Thickness));
        return new(
            Math.Min(pulled, through) * factors,
            words => (pulled <= through
                ? $"W × thread {words.Length(thread)} in wood of G {CheckWords.Plain(main)} = {words.Pounds(pulled)}"
                : $"head {words.Length(size.Head)} through {words.Length(load.Side.Thickness)} of G {CheckWords.Plain(side)} = "
                    + words.Pounds(through)) + FactorText,
            $"{ScrewPull.Source}; {WetService.Source}; {ScrewSizes.Source}");
    }

    private static ScrewHold Pushed(CheckContext context, ScrewSet screws, ScrewLoad load)
    {
        var size = screws.Size;
        var isThin = size.Diameter < DowelBearing.ThinFastener - Tolerances.RoundOff;
        var (side, main) = (Gravity(context, load.SideStock), Gravity(context, load.MainStock));
        var deep = Math.Max(0, screws.Length - load.Side.Thickness - load.Between);
        var limit = new YieldLimit(
            size.Root, size.Yield, Math.Max(Tolerances.RoundOff, deep - (size.Tip / 2)), DowelBearing.Wood(main, size.Diameter, 0),
            load.Side.Thickness, DowelBearing.Wood(side, size.Diameter, Math.PI / 2), isThin ? 0 : Math.PI / 2, IsDouble: false);
        var depth = Math.Min(1, deep / size.Full);
        var geometry = isThin ? 1 : DowelDistances.Factor(
            load.End, DowelDistances.LeastIdleEnd * size.Diameter, DowelDistances.FullIdleEnd * size.Diameter);
        return new(
            limit.Value * depth * geometry * Factors(),
            words => $"Z = {words.Pounds(limit.Value)} (mode {limit.Governing}, Dr {words.Length(size.Root)}, lm "
                + $"{words.Length(limit.Main)}, ls {words.Length(limit.Side)}, Fem {words.Stress(limit.MainBearing)}, Fes "
                + $"{words.Stress(limit.SideBearing)}, Fyb {words.Stress(size.Yield)})"
                + (depth < 1 ? $" × p {words.Length(deep)} / {words.Length(size.Full)}" : "")
                + (geometry < 1 ? $" × CΔ {TimberWords.Ratio(geometry)}" : "") + FactorText,
            $"{YieldLimit.Source}; {DowelBearing.Source}; {WetService.Source}; {ScrewSizes.Source}");
    }

    // One line of screws: nothing shrinks between two.
    private static double Factors() => AdjustmentFactors.Duration(LoadDuration.Guard).Value * WetService.Factor(1, 0);

    private static string FactorText => $" × CD {TimberWords.Ratio(AdjustmentFactors.Duration(LoadDuration.Guard).Value)} × CM "
        + TimberWords.Ratio(WetService.Factor(1, 0));

    private static double Gravity(CheckContext context, string stock) => JointMember.GravityOf(context.Parameters, stock);

    private static DeclaredCheck Declare(string id, string title, string compares, string source) =>
        new(id, title, compares, source, [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>What one screw holds, newtons, and how it comes about.</summary>
    private sealed record ScrewHold(double Value, Func<CheckWords, string> Text, string Source);

    /// <summary>What one end asks of its screws.</summary>
    /// <param name="How">In a person's words.</param>
    /// <param name="Force">Newtons.</param>
    /// <param name="IsPull">Along the screws; else square to them.</param>
    /// <param name="SideStock">Of the part that they go through.</param>
    /// <param name="Side">Its section.</param>
    /// <param name="MainStock">Of what holds their thread.</param>
    /// <param name="Between">Between the two, metres.</param>
    private sealed record ScrewLoad(
        string How, double Force, bool IsPull, string SideStock, Section Side, string MainStock, double Between)
    {
        /// <summary>From the screws to the part's end, metres.</summary>
        public double End { get; init; }
    }
}
