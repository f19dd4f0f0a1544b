using System.Text.Json;
using BridgeForm.Pieces;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.StepSolids;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>Two builds of OpenCASCADE read what is written, and find every solid sound and of the volume that its cuts leave.</summary>
[Trait("Category", "Referee")]
public sealed class StepRefereeTests
{
    private const double RelativeDifference = 1e-6;

    // The reader keeps all it has read.
    private const int FilesAtOnce = 20;

    private static readonly BridgeModel s_pieces = StepCase.Pieces();

    private static readonly Lazy<JsonElement[]> s_seen = new(Read);

    /// <summary>
    /// OpenCASCADE mends what does not meet by widening edges and corners, up to a millimetre: where it had to, beyond what a solid's
    /// corners may lie off its planes, curves and surfaces were not right.
    /// </summary>
    [Fact]
    public void Every_solid_is_valid_and_closed_and_nothing_was_mended() => Assert.All(s_seen.Value, file =>
    {
        Assert.Equal("IFSelect_RetDone", file.GetProperty("status").GetString());
        Assert.All(Solids(file), s => AssertSound(s, ""));
    });

    private static void AssertSound(JsonElement solid, string name) => Assert.True(
        solid.GetProperty("valid").GetBoolean() && solid.GetProperty("closed").GetBoolean()
            && solid.GetProperty("tolerance").GetDouble() <= 1000 * BridgeForm.Quantities.Tolerances.Planarity,
        name + solid.GetRawText());

    [Fact]
    public void A_whole_bridge_has_its_parts_in_their_places()
    {
        var (model, file) = (StepCase.Whole, s_seen.Value[0]);
        var segments = model.RopeLines.Sum(r => r.Points.Length - 1);
        Assert.Equal(model.Pieces.Length + segments, Solids(file).Count);
        Assert.Equal(model.Pieces.Sum(p => p.Occurrences.Length) + segments, file.GetProperty("shown").GetInt32());
        var corners = model.Pieces.SelectMany(p => p.Occurrences.SelectMany(o => p.Solid.Vertices.Select(o.Placement.ToWorld)))
            .Concat(model.RopeLines.SelectMany(r => r.Points)).ToList();

        // Millimetres, in the bridge's own axes; ropes reach further than their axes by no more than a radius.
        var reach = model.RopeLines[0].Radius * 1000;
        var (low, high) = (Numbers(file, "low"), Numbers(file, "high"));
        foreach (var (at, axis) in ((Func<Vector3d, double>[])[v => v.X, v => v.Y, v => v.Z]).Select((f, i) => (i, f)))
        {
            Assert.InRange(low[at], (1000 * corners.Min(axis)) - reach - 1e-3, (1000 * corners.Min(axis)) + 1e-3);
            Assert.InRange(high[at], (1000 * corners.Max(axis)) - 1e-3, (1000 * corners.Max(axis)) + reach + 1e-3);
        }
    }

    [Fact]
    public void The_second_reader_sees_names_and_colours()
    {
        var seen = s_seen.Value[0].GetProperty("second");
        Assert.True(seen.GetProperty("success").GetBoolean());
        var names = seen.GetProperty("names").EnumerateArray().Select(n => n.GetString()!).ToList();
        Assert.All(StepCase.Whole.Pieces, p => Assert.Equal(p.Occurrences.Length, names.Count(n => n == p.Mark)));
        Assert.Contains("rope-left", names);
        Assert.Contains("rope-right", names);
        Assert.Equal(s_seen.Value[0].GetProperty("shown").GetInt32(), seen.GetProperty("meshes").GetInt32());

        // Treated wood, durable wood, rope.
        Assert.Equal(3, seen.GetProperty("colours").EnumerateArray().Count(c => c.ValueKind is JsonValueKind.String));
        Assert.DoesNotContain(seen.GetProperty("colours").EnumerateArray(), c => c.ValueKind is JsonValueKind.Null);
    }

    /// <summary>Bolts and ropes are of many bodies; both have the colour of steel, and what lies about them that of wood.</summary>
    [Fact]
    public void The_second_reader_sees_the_colours_of_bolts()
    {
        var (name, model) = StepCase.Others[0];
        var seen = Read([model])[0].GetProperty("second");
        Assert.Equal("joined", name);
        var bodies = ShownPart.Of(model).Sum(p => p.Bodies.Length) + model.RopeLines.Sum(r => r.Points.Length - 1);
        Assert.Equal(bodies, seen.GetProperty("meshes").GetInt32());
        var colours = seen.GetProperty("colours").EnumerateArray().ToList();
        Assert.All(colours, c => Assert.Equal(JsonValueKind.String, c.ValueKind));
        Assert.InRange(colours.Count, 2, 3);
        var names = seen.GetProperty("names").EnumerateArray().Select(n => n.GetString()!).ToList();
        Assert.All(model.Steel(), s => Assert.Equal(s.Places.Length, names.Count(n => n == s.Name)));
    }

    [Fact]
    public void Volumes_are_those_of_the_sticks_less_exact_cylinders()
    {
        Judge(StepCase.Whole, Solids(s_seen.Value[0]));
        Judge(s_pieces, Solids(s_seen.Value[1]));
        Assert.Contains(s_pieces.Pieces, p => LooseHoles.Any(p.Shape) && !p.Shape.Holes.IsEmpty && !p.Shape.Channels.IsEmpty);
    }

    [Fact]
    public void A_hole_is_two_walls_of_its_own_radius()
    {
        var solids = Solids(s_seen.Value[0]);
        var holes = 0;
        foreach (var (piece, seen) in StepCase.Whole.Pieces.Zip(solids))
        {
            var expected = piece.Shape.Holes.GroupBy(h => Text(h.Diameter / 2)).ToDictionary(g => g.Key, g => 2 * g.Count());
            Assert.Equal(
                expected.OrderBy(r => r.Key), seen.GetProperty("round").EnumerateObject().ToDictionary(r => r.Name, r => r.Value.GetInt32())
                    .OrderBy(r => r.Key));
            holes += piece.Shape.Holes.Length;
        }

        Assert.True(holes > 10, $"only {holes} holes");
    }

    /// <summary>Where a hole meets an end, a taper or a channel, OpenCASCADE drills the same stick itself.</summary>
    [Fact]
    public void Holes_that_meet_other_cuts_take_what_the_outside_drill_takes()
    {
        var (drilled, undrilled) = (Solids(s_seen.Value[2]), Solids(s_seen.Value[3]));
        Assert.Equal(StepCase.MeetingHoles.Count, drilled.Count);
        Assert.All(drilled.Zip(undrilled, StepCase.MeetingHoles), x => AssertSame(
            x.Second.GetProperty("cut").GetDouble(), x.First.GetProperty("volume").GetDouble(), x.Third.Mark));
    }

    /// <summary>Every kind of part that a bridge has, and bridges that nobody chose: none is missing, each is sound.</summary>
    [Fact]
    public void Other_bridges_have_all_their_parts()
    {
        foreach (var batch in StepCase.Others.Chunk(FilesAtOnce))
        {
            var read = Read([.. batch.Select(c => c.Model)]);
            foreach (var (seen, (name, model)) in read.Zip(batch))
            {
                var stretches = model.RopeLines.Sum(r => r.Points.Length - 1);
                var shown = ShownPart.Of(model).Sum(p => p.Bodies.Length) + stretches;
                Assert.True(shown == seen.GetProperty("shown").GetInt32(), $"{name}: {seen.GetProperty("shown")} solids, not {shown}");
                Assert.All(Solids(seen), s => AssertSound(s, name));
                Judge(model, Solids(seen), name);
            }
        }
    }

    private static void Judge(BridgeModel model, List<JsonElement> solids, string name = "")
    {
        var stretches = model.RopeLines.SelectMany(
            r => r.Points.Zip(r.Points.Skip(1), (a, b) => (double?)(Math.PI * r.Radius * r.Radius * (b - a).Length)));
        double?[] expected =
        [
            .. model.Pieces.Select(p => Exact(p.Shape)), .. stretches, .. model.Steel().SelectMany(s => s.Bodies).Select(Exact),
            .. model.Landings().Concat(model.Nets()).Select(s => Exact(s.Body)),
        ];
        Assert.Equal(expected.Length, solids.Count);
        for (var i = 0; i < expected.Length; i++)
        {
            if (expected[i] is { } volume)
            {
                AssertSame(volume, solids[i].GetProperty("volume").GetDouble(), $"{name} solid {i}");
            }
        }
    }

    // Null where holes meet something: the outside drill judges such. Two planes cut a length out of a cylinder that is measured along its
    // axis, whatever their slope.
    private static double? Exact(CutStock shape) => shape.IsRound
        ? Math.PI / 4 * shape.Width * shape.Width * (shape.Far.XAt(0, 0) - shape.Near.XAt(0, 0))
        : shape.Holes.IsEmpty || LooseHoles.Any(shape)
        ? (shape with { Holes = [] }).ToSolid().Value.Volume - shape.Holes.Sum(h =>
            Math.PI / 4 * h.Diameter * h.Diameter * (shape.HoleAxis(h) is var (entry, bottom) ? (bottom - entry).Length : 0))
        : null;

    private static void AssertSame(double expected, double seen, string what) => Assert.True(
        Math.Abs((seen / expected) - 1) <= RelativeDifference, $"{what}: {seen:g12} m3, not {expected:g12}");

    private static string Text(double radius) => (1000 * radius).ToString("0.000000", System.Globalization.CultureInfo.InvariantCulture);

    private static List<JsonElement> Solids(JsonElement file) => [.. file.GetProperty("solids").EnumerateArray()];

    private static double[] Numbers(JsonElement file, string name) =>
        [.. file.GetProperty(name).EnumerateArray().Select(v => v.GetDouble())];

    private static JsonElement[] Read() => Read(
        [StepCase.Whole, s_pieces, StepCase.Model(StepCase.MeetingHoles), StepCase.Model(StepCase.Undrilled)], drilledLast: true);

    /// <param name="models">What is written and read.</param>
    /// <param name="drilledLast">The outside drill makes the meeting holes in the last one.</param>
    private static JsonElement[] Read(BridgeModel[] models, bool drilledLast = false)
    {
        var folder = Directory.CreateTempSubdirectory("bridgeform-step-");
        try
        {
            string[] paths = [.. models.Select((_, i) => Path.Combine(folder.FullName, $"{i}.step"))];
            for (var i = 0; i < models.Length; i++)
            {
                File.WriteAllBytes(paths[i], StepWriterTests.Bytes(models[i]));
            }

            if (drilledLast)
            {
                File.WriteAllText(Path.ChangeExtension(paths[^1], "json"), JsonSerializer.Serialize(StepCase.MeetingHoles.Select(Drill)));
            }

            return [.. JsonDocument.Parse(Referee.Node("step.mjs", paths)).RootElement.EnumerateArray()];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // Open where the bit enters; a hole right through goes on beyond the stick.
    private static object Drill(Piece piece)
    {
        const double Beyond = 1;
        var hole = piece.Shape.Holes[0];
        var (entry, bottom) = piece.Shape.HoleAxis(hole);
        var along = (entry - bottom).Normalized();
        var from = hole.Depth is null ? bottom - (Beyond * along) : bottom;
        var length = (entry - from).Length + Beyond;
        return new
        {
            at = new[] { 1000 * from.X, 1000 * from.Y, 1000 * from.Z },
            along = new[] { along.X, along.Y, along.Z },
            radius = 500 * hole.Diameter,
            length = 1000 * length,
        };
    }
}
