using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>A post.</summary>
/// <param name="Section">Its section; the wide face lies in the plane of the frame.</param>
/// <param name="Length">Along its axis, metres.</param>
/// <param name="Lean">Outward from n, radians (α).</param>
/// <param name="Foot">z of the inner face at the base's top, metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record PostParameters(Section Section, double Length, double Lean, double Foot, string Stock);

/// <summary>A brace; foot and length both known, whichever was given.</summary>
/// <param name="Section">Its section; the wide face lies in the plane of the frame.</param>
/// <param name="Lean">Inward from n, radians (β).</param>
/// <param name="Foot">z of the outer face at the base's top, metres.</param>
/// <param name="Length">Long point to long point, metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record BraceParameters(Section Section, double Lean, double Foot, double Length, string Stock);

/// <summary>Keys under <c>frames.post</c> and <c>frames.brace</c>, how they are read, and how both stand on the base.</summary>
internal static class UprightSection
{
    private const string PostFoot = "frames.post.foot";

    /// <summary>Leans that add up to less never meet within reach: a tenth of a degree.</summary>
    private const double SmallestAngle = TenthOfADegree;

    private const double TenthOfADegree = Math.PI / 1800;

    // The largest lean that the definition allows, 75 deg.
    private const int MostTenths = 750;

    public static KeySpec PostKeys => Define.Map(
        "post",
        "The posts",
        [
            Define.Section("section", "Its wide face lies in the plane of the frame", "4x4", "95 x 95 mm"),
            Define.Length("length", "Length along the axis of the post", "6 in", "12 ft").ByRule(
                "use",
                "the guard of this use (36 in private, 42 in public) and 3-1/2 in (89 mm) more over the deck, less the cap, along the "
                    + "leaning post; up to 1/2 in (10 mm)",
                "40 in", "1020 mm"),
            Define.Quantity(QuantityKind.Angle, "lean", "Lean outward, from square to the base", "0 deg", "44.9 deg", "8 deg"),
            Define.Length("foot", "From the middle of the base to the post's inner face", "1 in", "20 ft", "18-1/2 in", "470 mm"),
            Define.StockName("treated"),
        ]);

    public static KeySpec BraceKeys => Define.Map(
        "brace",
        "The braces outside the posts",
        [
            Define.Section("section", "Its wide face lies in the plane of the frame", "2x4", "70 x 120 mm"),
            Define.Quantity(QuantityKind.Angle, "lean", "Lean inward, from square to the base", "0 deg", "75 deg", "12 deg"),
            Define.Length("foot", "From the middle of the base to the brace's outer face", "1 in", "20 ft").ByRule(
                "frames.post.foot",
                "frames.post.foot and 9-3/4 in (260 mm)", "28-1/4 in", "730 mm"),
            Define.Length(
                "length", "Long point to long point, in place of foot", "3 in",
                "12 ft") with { DefaultNote = "from foot", Example = "18 in", MetricExample = "460 mm" },
            Define.StockName("treated"),
        ]) with
    { OneOf = ["foot", "length"] };

    public static PostParameters Post(FileValues v) => new(
        v.Section("frames.post.section"),
        v.Number("frames.post.length"),
        v.Number("frames.post.lean"),
        v.Number("frames.post.foot"),
        v.Text("frames.post.stock"));

    public static BraceParameters Brace(FileValues v, PostParameters post)
    {
        var section = v.Section("frames.brace.section");
        var lean = v.Number("frames.brace.lean");
        var length = v.NumberOrNull("frames.brace.length");
        var foot = v.NumberOrNull("frames.brace.foot");
        var geometry = length is { } l && foot is null
            ? BraceGeometry.FromLength(post, lean, l)
            : BraceGeometry.FromFoot(post, lean, foot ?? 0);
        return new BraceParameters(section, lean, geometry.Foot, geometry.LongEdge, v.Text("frames.brace.stock"));
    }

    public static void Check(CheckedFile f)
    {
        if (!f.Good("frames.base.length", "frames.post.section", "frames.post.length", "frames.post.lean", PostFoot))
        {
            return;
        }

        var post = f.Parameters.Frames.Post;
        var half = f.Parameters.Frames.Base.Length / 2;
        var outer = BraceGeometry.PostOuterFoot(post);
        if (outer > half + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.PostOverEnd, PostFoot, $"foot: with '{f.Written(PostFoot)}' the post stands out over the base's end; write at "
                + $"most {f.AtMost(half - (outer - post.Foot))}, or a base at least {f.AtLeast(2 * outer)} long", "frames.base.length",
                "frames.post.lean", "frames.post.section");
        }
        else if (f.Good("frames.brace.section", "frames.brace.lean", "frames.brace.foot", "frames.brace.length"))
        {
            Brace(f, post, half);
        }
    }

    private static void Brace(CheckedFile f, PostParameters post, double half)
    {
        var brace = f.Parameters.Frames.Brace;
        var between = post.Lean + brace.Lean;
        if (between < SmallestAngle)
        {
            f.Stop(FaultCode.BraceNeverMeets, "frames.brace.lean", "lean: post and brace both stand upright and never meet; lean the brace "
                + "inward, 10 deg to 20 deg is usual", "frames.post.lean");
            return;
        }

        var (least, most) = LongEdges(post, brace, half);
        var byBase = BraceGeometry.FromFoot(post, brace.Lean, half).LongEdge;
        var byLength = f.Values.Given("frames.brace.length");
        var path = byLength ? "frames.brace.length" : "frames.brace.foot";
        var reason = brace.Length <= least + Tolerances.RoundOff ? "stands too near the post: its inner edge would be cut away"
            : brace.Length > byBase + Tolerances.RoundOff ? "stands out over the base's end"
            : brace.Length > ByHead(post, brace) + Tolerances.RoundOff ? "meets the post above its head"
            : null;
        if (reason is not null && !HasPlace(f, post, brace, (least, most), byLength))
        {
            NoPlace(f, post, brace, half);
        }
        else if (reason is not null)
        {
            f.Stop(FaultCode.BraceOutOfPlace, path, $"{(byLength ? "length" : "foot")}: with '{f.Written(path)}' the brace {reason}; write "
                + $"more than {f.AtLeast(Value(post, brace, least, byLength))} and at most {f.AtMost(Value(post, brace, most, byLength))}",
                "frames.brace.lean", PostFoot, "frames.post.lean", "frames.post.length", "frames.base.length");
        }
    }

    // No foot and no length stands at this lean: it is the lean that is told, with the nearest at which the brace does.
    private static void NoPlace(CheckedFile f, PostParameters post, BraceParameters brace, double half)
    {
        var kept = f.Values.Given("frames.brace.length") ? "length" : "foot";
        var advice = NearestLean(f, post, brace, half, any: false) is { } lean ? $"with this {kept} write {lean}"
            : NearestLean(f, post, brace, half, any: true) is { } other ? $"write {other}, and another {kept}"
            : "no lean has one either: make base or post longer, or lean the post less";
        f.Stop(FaultCode.NoPlaceForBrace, "frames.brace.lean", $"lean: with '{f.Written("frames.brace.lean")}' there is no place for the "
            + $"brace between post and base's end; {advice}", "frames.brace.foot", "frames.brace.length", PostFoot, "frames.post.length",
            "frames.base.length");
    }

    /// <summary>
    /// The lean in tenths of a degree, nearest to the file's, at which the brace's own foot or length (or any) stands; null for
    /// none.
    /// </summary>
    private static string? NearestLean(CheckedFile f, PostParameters post, BraceParameters brace, double half, bool any)
    {
        var byLength = f.Values.Given("frames.brace.length");
        var tenths = Enumerable.Range(0, MostTenths + 1)
            .OrderBy(t => Math.Abs((t * TenthOfADegree) - brace.Lean))
            .Select(t => (int?)t)
            .FirstOrDefault(t => Stands(t!.Value * TenthOfADegree));
        return tenths is not { } found ? null
            : (found * TenthOfADegree < brace.Lean ? "at most " : "at least ") + QuantityText.Degrees(found * TenthOfADegree);

        bool Stands(double lean)
        {
            if (post.Lean + lean < SmallestAngle)
            {
                return false;
            }

            var trial = brace with { Lean = lean };
            var (least, most) = LongEdges(post, trial, half);
            var edge = byLength ? brace.Length : BraceGeometry.FromFoot(post, lean, brace.Foot).LongEdge;
            return any ? HasPlace(f, post, trial, (least, most), byLength) : edge > least
                + Tolerances.RoundOff && edge <= most + Tolerances.RoundOff;
        }
    }

    /// <summary>
    /// Long edges: least, so that the inner edge is not cut away; most, so that the brace meets the post below its head and
    /// stands on the base.
    /// </summary>
    private static (double Least, double Most) LongEdges(PostParameters post, BraceParameters brace, double half) => (
        brace.Section.Width * (Elementary.Tan(brace.Lean) + (1 / Elementary.Tan(post.Lean + brace.Lean))),
        Math.Min(ByHead(post, brace), BraceGeometry.FromFoot(post, brace.Lean, half).LongEdge));

    private static double ByHead(PostParameters post, BraceParameters brace) =>
        post.Length * Elementary.Cos(post.Lean) / Elementary.Cos(brace.Lean);

    // Room for at least one value that can be written.
    private static bool HasPlace(
        CheckedFile f, PostParameters post, BraceParameters brace, (double Least, double Most) edges, bool byLength) =>
        f.Down(Value(post, brace, edges.Most, byLength)) > f.Up(Value(post, brace, edges.Least, byLength)) + Tolerances.RoundOff;

    private static double Value(PostParameters post, BraceParameters brace, double edge, bool byLength) =>
        byLength ? edge : BraceGeometry.FromLength(post, brace.Lean, edge).Foot;
}
