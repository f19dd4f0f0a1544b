using BridgeForm.Output.Brep;
using BridgeForm.Solids;
using BridgeForm.Tests.Solids;

namespace BridgeForm.Tests.Output.StepSolids;

/// <summary>Holes as cylinders: what the body is made of, counted by hand, and what every body must be.</summary>
public sealed class RoundedSolidTests
{
    private const double Radius = 0.005;

    private static readonly CutStock s_stick =
        new(0.089, 0.038, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1));

    /// <summary>A hole right through: two walls, four half circles, two seams; twelve edges and eight corners of the stick.</summary>
    [Fact]
    public void A_hole_through_is_two_walls_between_two_rims()
    {
        var body = Drilled(new Hole(StockFace.PlusZ, 0.5, 0.01, 2 * Radius, null));
        Assert.Equal((12, 18, 8), (body.Corners.Length, body.Edges.Length, body.Faces.Length));
        Assert.All(Walls(body), w => Assert.Equal(Radius, w.Radius));
        Assert.Equal(2, Walls(body).Count());
        Assert.Equal(4, body.Edges.Count(e => e.Arc is { IsCircle: true }));
        Assert.Equal(2, body.Faces.Count(f => f.Loops.Length == 2));
    }

    /// <summary>A blind one has a bottom, round all about, in place of the second rim.</summary>
    [Fact]
    public void A_blind_hole_has_a_round_bottom_at_its_depth()
    {
        var body = Drilled(new Hole(StockFace.MinusY, 0.5, 0, 2 * Radius, 0.05));
        Assert.Equal((12, 18, 9), (body.Corners.Length, body.Edges.Length, body.Faces.Length));
        var bottom = Assert.Single(body.Faces, f => f.Loops is [{ Length: 2 }]);
        var flat = Assert.IsType<Surface.Flat>(bottom.Surface);
        Assert.Equal((0.089 / 2) - 0.05, -flat.Point.Y, 1e-12);
        Assert.True((flat.Normal + Vector3d.UnitY).Length < 1e-12, flat.Normal.ToString());
    }

    /// <summary>
    /// A cut at 45° through the hole's middle: the circle becomes an ellipse, of a long radius √2 times the short one, where the end
    /// lies, and arcs of a circle are left on the wide faces.
    /// </summary>
    [Fact]
    public void An_end_that_cuts_a_hole_slantwise_has_an_ellipse_for_its_rim()
    {
        var end = Plane.Through(new Vector3d(0.5, 0, 0), new Vector3d(1, 0, 1));
        var body = Body(s_stick with { Far = end, Holes = [new Hole(StockFace.PlusZ, 0.5, 0, 2 * Radius, null)] });
        var ellipses = body.Edges.Where(e => e.Arc is { IsCircle: false }).ToList();
        Assert.NotEmpty(ellipses);
        Assert.All(ellipses, e => Assert.Equal(Math.Sqrt(2) * Radius, e.Arc!.LongRadius, 1e-12));
        Assert.All(ellipses, e => Assert.Equal(Radius, e.Arc!.ShortRadius, 1e-12));
    }

    /// <summary>Half of the hole lies in a channel: below the floor it is whole, beside it the wall of the channel has two lines.</summary>
    [Fact]
    public void A_hole_at_a_channels_wall_stays_round()
    {
        var stick = s_stick with
        {
            Channels = [new Channel(StockFace.MinusY, 0.5, 0.02, 0.02, 0.1)],
            Holes = [new Hole(StockFace.MinusY, 0.51, 0, 2 * Radius, 0.05)],
        };
        var body = Body(stick);
        Assert.NotEmpty(Walls(body));
        Assert.Contains(body.Edges, e => e.Arc is { IsCircle: false } a && Math.Abs(a.LongRadius - (Radius * Math.Sqrt(1.01))) < 1e-9);
        Assert.DoesNotContain(body.Faces, f => f.Surface is Surface.Flat && f.Loops is [{ Length: 4 }] && IsSideOfPrism(body, f));
    }

    /// <summary>
    /// A round stick of 40 mm, 1 m along its axis, one end at 45°: two halves of a cylinder, a circle's two halves at the square end, at
    /// the other an ellipse whose long radius is √2 times its short one. Its corners there lie 20 mm before and behind the axis' end.
    /// </summary>
    [Fact]
    public void A_round_stick_is_a_cylinder_between_its_ends()
    {
        var end = Plane.Through(Vector3d.UnitX, new Vector3d(1, 1, 0));
        var stick = RoundStock.Cut(0.04, new Plane(-Vector3d.UnitX, 0), end);
        var body = Body(stick);
        Assert.Equal((4, 6, 4), (body.Corners.Length, body.Edges.Length, body.Faces.Length));
        Assert.All(Walls(body), w => Assert.Equal((0.02, false), (w.Radius, w.IsHole)));
        Assert.Equal(2, body.Edges.Count(e => e.Arc is { IsCircle: true }));
        Assert.All(body.Edges.Where(e => e.Arc is { IsCircle: false }), e => Assert.Equal(Math.Sqrt(2) * 0.02, e.Arc!.LongRadius, 1e-12));
        Assert.Equal([0, 0, 0.98, 1.02], body.Corners.Select(c => Math.Round(c.X, 9)).Order());
        Assert.Empty(Faults(body));

        // A hole through it, or ends that meet in it, leave the sixteen sides.
        Assert.True(Body(stick with { Holes = [new Hole(StockFace.PlusZ, 0.5, 0, 0.01, null)] }).Faces.Length > 16);
        Assert.True(Body(RoundStock.Cut(0.04, Plane.Through(0.99 * Vector3d.UnitX, new Vector3d(-1, 1, 0)), end)).Faces.Length > 5);
    }

    /// <summary>Two that cross keep flat sides; a third, apart from them, is round all the same.</summary>
    [Fact]
    public void Holes_that_meet_keep_their_sides_and_others_do_not()
    {
        var body = Drilled(
            new Hole(StockFace.PlusZ, 0.5, 0, 2 * Radius, null), new Hole(StockFace.PlusY, 0.5, 0, 2 * Radius, null),
            new Hole(StockFace.PlusZ, 0.7, 0, 2 * Radius, null));
        Assert.Equal(2, Walls(body).Count());
        Assert.True(body.Faces.Length > 6 + 2 + StockCutters.HoleSides);
    }

    /// <summary>
    /// The circle reaches 8 µm through a wall that the prism's flat side, 16 µm further in, does not: round it would stick out of the
    /// wood.
    /// </summary>
    [Fact]
    public void A_hole_that_grazes_a_wall_keeps_its_sides()
    {
        var stick = s_stick with { Channels = [new Channel(StockFace.MinusZ, 0.5, 0.02, 0.019, 0)] };
        Assert.Empty(Walls(Body(stick with { Holes = [new Hole(StockFace.MinusZ, 0.51 + 0.01 - 8e-6, 0, 0.02, 0.03)] })));
        Assert.Equal(2, Walls(Body(stick with { Holes = [new Hole(StockFace.MinusZ, 0.51 + 0.01 + 8e-6, 0, 0.02, 0.03)] })).Count());
    }

    /// <summary>Of random sticks whose channels, ends and holes meet as they like.</summary>
    [Fact]
    public void Every_body_is_closed_and_its_corners_lie_on_its_curves_and_faces()
    {
        var walls = 0;
        for (var seed = 0; seed < 1500; seed++)
        {
            var stock = RandomMember.Make(seed, withinRoundOff: false).Stock;
            if (stock.Holes.IsEmpty || stock.ToSolid().OrNull is not { } solid)
            {
                continue;
            }

            var body = RoundedSolid.Build(stock, solid);
            var fault = Faults(body).FirstOrDefault();
            Assert.True(fault is null, $"seed {seed}: {fault}");
            walls += Walls(body).Count();
        }

        Assert.True(walls > 250, $"only {walls} walls");
    }

    /// <summary>Whether no hole of a stick keeps flat sides; its floor and what else is flat may stay.</summary>
    internal static bool IsRound(CutStock stock, Solid solid) =>
        RoundedSolid.Build(stock, solid) is var body && Walls(body).Any()
        && body.Faces.Length < solid.Faces.Length - (StockCutters.HoleSides / 4);

    private static IEnumerable<string> Faults(ExactBody body)
    {
        var uses = body.Faces.SelectMany(f => f.Loops).SelectMany(l => l).ToLookup(u => u.Edge, u => u.Forward);
        for (var e = 0; e < body.Edges.Length; e++)
        {
            if (uses[e].Count() != 2 || uses[e].Distinct().Count() != 2)
            {
                yield return $"edge {e} is used {uses[e].Count()} times";
            }

            var (from, to) = (body.Corners[body.Edges[e].From], body.Corners[body.Edges[e].To]);
            if (body.Edges[e].Arc is { } arc && (OffCurve(arc, from) || OffCurve(arc, to)))
            {
                yield return $"edge {e} ends beside its arc";
            }
        }

        foreach (var face in body.Faces)
        {
            foreach (var loop in face.Loops)
            {
                for (var i = 0; i < loop.Length; i++)
                {
                    var (_, end) = Ends(body, loop[i]);
                    var (start, _) = Ends(body, loop[(i + 1) % loop.Length]);
                    if (end != start)
                    {
                        yield return "a loop is open";
                    }

                    if (OffSurface(face.Surface, body.Corners[start]))
                    {
                        yield return $"corner {start} lies off {face.Surface}";
                    }
                }
            }
        }
    }

    private static (int From, int To) Ends(ExactBody body, EdgeUse use) =>
        body.Edges[use.Edge] is var e && use.Forward ? (e.From, e.To) : (e.To, e.From);

    // Corners of the solid lie within four microns of their planes (Tolerances.Planarity).
    private static bool OffSurface(Surface surface, Vector3d place) => surface switch
    {
        Surface.Flat flat => Math.Abs((place - flat.Point).Dot(flat.Normal)) > 1e-5,
        Surface.Round round => Math.Abs((place - round.Point).Cross(round.Axis).Length - round.Radius) > 1e-9,
        _ => true,
    };

    private static bool OffCurve(Ellipse arc, Vector3d place)
    {
        var from = place - arc.Center;
        var (x, y) = (from.Dot(arc.Major) / arc.LongRadius, from.Dot(arc.Normal.Cross(arc.Major)) / arc.ShortRadius);
        return Math.Abs((x * x) + (y * y) - 1) > 1e-3 || Math.Abs(from.Dot(arc.Normal)) > 1e-5;
    }

    private static bool IsSideOfPrism(ExactBody body, ExactFace face) => face.Loops[0].All(
        u => (body.Corners[body.Edges[u.Edge].From] - new Vector3d(0.51, 0, 0)) is var p
            && Math.Abs(Math.Sqrt((p.X * p.X) + (p.Z * p.Z)) - Radius) < 0.01 * Radius);

    private static IEnumerable<Surface.Round> Walls(ExactBody body) => body.Faces.Select(f => f.Surface).OfType<Surface.Round>();

    private static ExactBody Drilled(params Hole[] holes) => Body(s_stick with { Holes = [.. holes] });

    private static ExactBody Body(CutStock stock) => RoundedSolid.Build(stock, stock.ToSolid().Value);
}
