using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>Wood that the user's own holes keep around them, against splitting.</summary>
internal static class HoleDistances
{
    // What is told beside the worst one.
    private const int MostOthers = 5;

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "hole-distance",
        "Holes of your own near ends, edges, channels and each other",
        "From the middle of every hole of your own, D its diameter. Along the grain to the piece's cut ends, where these lie nearest to "
            + "the hole, and in a base to the walls of rope channels that it reaches: below 7 D to review, below 3.5 D it fails. To the "
            + "piece's edges, square to a slanting end, and to a channel that it passes: below 4 D to review, below 1.5 D it fails. To any "
            + "other hole, 4 D of the larger one: to review. What a bolt in it pulls, and which way, is not known: full distances are "
            + "those "
            + "of a bolt in softwood that pulls towards the end, and of one that pulls towards the edge. Absent without holes of your own.",
        "NDS 2018 Tables 12.5.1A to 12.5.1C: end distance of bolts in softwood 7 D, at least 3.5 D; edge distance 4 D where loaded, else "
            + "1.5 D; 4 D between bolts; taken for every hole, and for a channel's wall as an end (own reading)",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>None without holes of the user's own.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var words = context.Words();
        var all = HoleMargin.List(context);
        if (all.IsEmpty)
        {
            yield break;
        }

        var tooNear = all.Where(m => !Keeps(m, m.Least)).OrderBy(m => m.Had / m.Least).ToList();
        var near = all.Where(m => Keeps(m, m.Least) && !Keeps(m, m.Full)).OrderBy(m => m.Had / m.Full).ToList();
        var worst = Ties.FirstLeast(all.Where(m => !Keeps(m, m.Least)), m => m.Had / m.Least)
            ?? Ties.FirstLeast(all, m => m.Had / m.Full)!;
        var (limit, otherwise) = tooNear.Count > 0 ? (worst.Least, CheckStatus.Fail) : (worst.Full, CheckStatus.Warn);
        yield return Outcome.AtLeast(
            Declared,
            worst.Had,
            limit,
            "m",
            Declared.Source,
            Text(words, worst, [.. tooNear, .. near]) + "; what a bolt pulls, and which way, is not known",
            otherwise).On(CheckParts.OnBothSides(worst.Part));
    }

    private static bool Keeps(HoleMargin margin, double limit) => margin.Had >= limit * (1 - Tolerances.SameLimit);

    // Frames are much alike: what reads alike is told once.
    private static string Text(CheckWords words, HoleMargin worst, ImmutableArray<HoleMargin> wanting)
    {
        var first = worst.Text(words);
        var others = wanting.Select(m => m.Text(words)).Distinct(StringComparer.Ordinal)
            .Where(t => !string.Equals(t, first, StringComparison.Ordinal)).ToList();
        return string.Join("; ", (string[])
        [
            first,
            .. others.Take(MostOthers),
            .. others.Count > MostOthers ? [NumberText.By("0", others.Count - MostOthers) + " more"] : Array.Empty<string>(),
        ]);
    }
}

/// <summary>Wood between a hole's middle and something else. Metres.</summary>
/// <param name="Part">Id of the part it is in.</param>
/// <param name="Role">What that is for.</param>
/// <param name="At">Along the part from the long point of its foot, or the left end of a base: as a project file says it.</param>
/// <param name="Diameter">What diameters are counted in.</param>
/// <param name="Had">Wood there is; 0 where there is none.</param>
/// <param name="Kind">What it is measured to, and how much of it is wanted.</param>
/// <param name="To">The same in words.</param>
internal sealed record HoleMargin(string Part, Role Role, double At, double Diameter, double Had, MarginKind Kind, string To)
{
    // NDS 2018 Tables 12.5.1A, 12.5.1C, 12.5.1B.
    private const double FullEnd = 7;
    private const double LeastEnd = 3.5;
    private const double FullEdge = 4;
    private const double LeastEdge = 1.5;
    private const double FullSpacing = 4;

    /// <summary>Below it the check fails; 0 where nothing does.</summary>
    public double Least => Diameter * (Kind switch
    {
        MarginKind.End => LeastEnd,
        MarginKind.Edge => LeastEdge,
        _ => 0,
    });

    /// <summary>Below it a look.</summary>
    public double Full => Diameter * (Kind switch
    {
        MarginKind.End => FullEnd,
        MarginKind.Edge => FullEdge,
        _ => FullSpacing,
    });

    /// <summary>Numbers, for a pocket calculator.</summary>
    public string Text(CheckWords words) =>
        $"{words.Length(Diameter)} hole of a {RoleTable.Of(Role).Name}, {words.Length(At)} from its {RoleTable.Of(Role).Ends.ShopNear}: "
            + $"{words.Length(Had)} {To}, "
            + Kind switch
            {
                MarginKind.End => $"7 D = {words.Length(Full)}, 3.5 D = {words.Length(Least)}",
                MarginKind.Edge => $"4 D = {words.Length(Full)}, 1.5 D = {words.Length(Least)}",
                _ => $"4 D = {words.Length(Full)}",
            };

    /// <summary>All there are. Left and right are mirror images: the right one stands for both.</summary>
    public static ImmutableArray<HoleMargin> List(CheckContext context) => context.Parameters.Frames.Holes.IsEmpty
        ? []
        :
        [
            .. Enumerable.Range(0, context.Layout.Bays + 1)
                .SelectMany(i => BoredStick.OfFrame(context.Layout, i))
                .SelectMany(s => s.Margins()),
        ];
}

/// <summary>What wood beside a hole is measured to.</summary>
internal enum MarginKind
{
    /// <summary>Along the grain to where it ends.</summary>
    End,

    /// <summary>To where the wood ends in any other direction.</summary>
    Edge,

    /// <summary>To another hole.</summary>
    Hole,
}
