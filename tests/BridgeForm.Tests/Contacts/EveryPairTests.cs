using System.Collections.Immutable;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Contacts;

/// <summary>The sweep against trying every pair of parts, and every part with every piece of rope.</summary>
public class EveryPairTests
{
    // Posts three and a half metres tall on frames a foot apart: their heads lean across a dozen frames.
    private const string Tall = """
        name: Tall and close (invented)
        units: metric
        site: { span: 12 m, rise: 0.5 m }
        ropes: { type: rope-6x19-iwrc-eips-3/4, spacing: 1200 mm, sag: 22 % }
        frames:
          spacing: 310 mm
          base: { section: 89 x 140 mm, length: 2900 mm }
          channel: { clearance: 3 mm, depth: 40 mm, end_depth: 60 mm }
          post: { section: 64 x 89 mm, length: 3500 mm, lean: 2 deg, foot: 470 mm }
          brace: { section: 38 x 89 mm, lean: 12 deg, foot: 725 mm }
        """;

    private const string Across = "\ndeck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n";

    private const string Coarse = "\nshop: { tolerance: 6 mm }\n";

    private static readonly Lazy<Tried> s_tall = new(() => Tried.Of(Tall));

    public static TheoryData<string> Texts => [Tall, Bridges.Garden, Bridges.Inclined + Coarse, Bridges.Garden + Across];

    [Theory]
    [MemberData(nameof(Texts))]
    public void The_survey_finds_what_trying_every_pair_finds(string text)
    {
        var (model, parts, wood) = string.Equals(text, Tall, StringComparison.Ordinal) ? s_tall.Value : Tried.Of(text);
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        var found = ContactSweep.Sweep(layout, model.Pieces, model.RopeLines);
        var rope = RopePairs(parts, model.RopeLines);
        Assert.Equal(wood.Count + rope.Count, found.Pairs);
        Assert.Equal(Math.Max(0, wood.Max(w => w.Depth)), found.DeepestOverlap, 1e-12);
        const double Roundings = 1e-6;
        var overlaps = wood.Where(w => w.Depth > Tolerances.Seating + Roundings).ToList();
        Assert.Equal(overlaps.Count, found.OverlapCount);
        Assert.All(
            found.Overlaps,
            o => Assert.Contains(
                overlaps, w => w.Names.Contains(o.First) && w.Names.Contains(o.Second) && Math.Abs(w.Depth - o.Amount) < 1e-12));
        Assert.Equal(rope.Where(r => r.OnBase).Max(r => r.Depth), found.DeepestRope, 1e-12);
        Assert.Equal(rope.Count(r => r.Depth > (r.OnBase ? Tolerances.Seating + Roundings : 0)), found.RopeContactCount);
    }

    [Fact]
    public void Tall_frames_reach_parts_further_off_than_two_frames() =>
        Assert.Contains(s_tall.Value.Wood, w => Math.Abs(Number(w.Names[0]) - Number(w.Names[1])) > 3);

    [Fact]
    public void A_part_that_nothing_near_carries_is_told_with_its_finite_gap()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden));
        const double Lifted = 0.25;
        var parts = Members.Lay(layout).SelectMany(g => g.Members).Select(SweptPart.Of)
            .Select(
                p => p.Id == "F03/post-left"
                    ? p with { Placement = p.Placement with { Origin = p.Placement.Origin + (Lifted * layout.Poses[3].Up) } }
                    : p);
        var found = ContactSweep.Sweep(layout, [.. parts], []);
        var gap = Assert.Single(found.Gaps, g => g.First == "F03/post-left" && g.Second == "F03/base");

        // The foot is cut by the base's top, so lifting it square to that opens a gap as wide.
        Assert.Equal(Lifted, gap.Amount, 1e-9);
        Assert.True(double.IsFinite(found.WidestGap));
    }

    [Fact]
    public void A_part_whose_carrier_is_missing_stops_the_survey()
    {
        var layout = Bridges.Layout(Bridges.Read(Bridges.Garden));
        var parts = Members.Lay(layout).SelectMany(g => g.Members).Where(m => m.Id != "F03/base").Select(SweptPart.Of);
        Assert.Throws<InvalidOperationException>(() => ContactSweep.Sweep(layout, [.. parts], []));
    }

    private static int Number(string id) =>
        int.Parse(id.AsSpan(1, id.IndexOf('/', StringComparison.Ordinal) - 1), System.Globalization.CultureInfo.InvariantCulture);

    private static List<(string[] Names, double Depth)> WoodPairs(List<Part> parts)
    {
        var near = 2 * Tolerances.Seating;
        var found = new List<(string[], double)>();
        for (var i = 0; i < parts.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (Near(parts[i].Min, parts[i].Max, parts[j].Min, parts[j].Max, near))
                {
                    found.Add(([parts[i].Id, parts[j].Id], Deepest(parts[i], parts[j])));
                }
            }
        }

        return found;
    }

    private static List<(double Depth, bool OnBase)> RopePairs(List<Part> parts, ImmutableArray<RopeLine> ropes) =>
    [
        .. from part in parts
           from rope in ropes
           from k in Enumerable.Range(1, rope.Points.Length - 1)
           let rod = new Capsule(rope.Points[k - 1], rope.Points[k], rope.Radius)
           let reach = new Vector3d(rope.Radius, rope.Radius, rope.Radius)
           let min = Least(rod.From, rod.To) - reach
           let max = -Least(-rod.From, -rod.To) + reach
           where Near(part.Min, part.Max, min, max, 0)
           select (part.Cells.Max(c => Contact.Overlap(rod, c)), part.Id.EndsWith("/base", StringComparison.Ordinal)),
    ];

    private static double Deepest(Part a, Part b) => a.Cells.Max(x => b.Cells.Max(y => Contact.Overlap(x, y)));

    private static Vector3d Least(Vector3d a, Vector3d b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    /// <summary>
    /// Whether two boxes come as near each other as a margin along every axis; written so that a gap of just the margin counts.
    /// </summary>
    private static bool Near(Vector3d min, Vector3d max, Vector3d otherMin, Vector3d otherMax, double margin)
    {
        var (grownMax, otherGrown) = (max + (margin * One), otherMax + (margin * One));
        return min.X <= otherGrown.X && min.Y <= otherGrown.Y && min.Z <= otherGrown.Z
            && otherMin.X <= grownMax.X && otherMin.Y <= grownMax.Y && otherMin.Z <= grownMax.Z;
    }

    private static Vector3d One => new(1, 1, 1);

    /// <summary>A bridge, its parts as cut, and every pair of these that come near each other.</summary>
    private sealed record Tried(BridgeModel Model, List<Part> Parts, List<(string[] Names, double Depth)> Wood)
    {
        public static Tried Of(string text)
        {
            var model = Bridges.Build(text);
            var parts = model.Pieces.SelectMany(p => p.Occurrences.Select(o => new Part(
                o.Id, [.. p.Shape.ConvexCells().Select(c => c.Placed(o.Placement))]))).ToList();
            return new Tried(model, parts, WoodPairs(parts));
        }
    }

    private sealed record Part(string Id, ImmutableArray<ConvexBody> Cells)
    {
        public Vector3d Min { get; } = Cells.SelectMany(c => c.Vertices).Aggregate(Least);

        public Vector3d Max { get; } = -Cells.SelectMany(c => c.Vertices).Select(v => -v).Aggregate(Least);
    }
}
