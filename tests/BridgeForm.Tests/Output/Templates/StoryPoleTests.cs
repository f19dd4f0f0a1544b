using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Templates;

public sealed class StoryPoleTests
{
    private const double Micron = 1e-6;

    /// <summary>A rail's outer face lies on the post's inner face within the seating tolerance of the frames, metres.</summary>
    private const double Seated = 0.0015;

    private static readonly Lazy<BridgeModel> Inclined = new(() => Bridges.Build(Bridges.Inclined));
    private static readonly Lazy<BridgeModel> Tensioned = new(() => Bridges.Build(
        Bridges.Garden.Replace("sag: 6 %", "sag: 6 %, marking_tension: 500 lbf", StringComparison.Ordinal)));

    public static TheoryData<string> Names => ["garden", "inclined", "tensioned"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Rope_is_marked_where_the_model_says(string name)
    {
        var model = Model(name);
        var pole = Assert.Single(
            StoryPole.Draw(model, TestPieces.Units, TemplateChoice.Everything, onRoll: true),
            b => string.Equals(b.Title, "Story pole of the rope", StringComparison.Ordinal));
        var ticks = pole.Ticks(PageLayers.Accent);
        Assert.Equal(model.Frames.Length, ticks.Count);
        foreach (var (mark, tick) in model.Marks.Zip(ticks))
        {
            Assert.Equal(mark.AtMarkingTension, tick, Micron);
            var named = Assert.Single(pole.Entities.OfType<SheetText>(), t => string.Equals(t.Text, mark.Frame, StringComparison.Ordinal));
            var box = PageBox.Of(named);
            Assert.True(Math.Min(Math.Abs(box.MinX - tick), Math.Abs(box.MaxX - tick)) < 0.0015, mark.Frame);
            Assert.Contains(
                pole.Entities.OfType<SheetText>(), t => string.Equals(t.Text, TestPieces.Units.Length(tick), StringComparison.Ordinal));
        }

        var strip = Assert.Single(pole.On<SheetPolyline>(PageLayers.Cut)).Vertices;
        Assert.Equal((0.0, ticks[^1]), (strip.Min(v => v.X), strip.Max(v => v.X)));
    }

    /// <summary>The whole strip is as long as the rope unstressed, longer only by its stretch under the marking tension T / EA.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Rope_strip_is_as_long_as_the_rope(string name)
    {
        var model = Model(name);
        var ropes = model.Parameters.Ropes;
        var ticks = StoryPole.Draw(model, TestPieces.Units, TemplateChoice.Everything, onRoll: true).Last().Ticks(PageLayers.Accent);
        Assert.Equal(0, ticks[0], Micron);
        Assert.Equal(model.Rope.UnstressedLength() * (1 + (ropes.MarkingTension / ropes.Rope.AxialStiffness)), ticks[^1], Micron);
    }

    /// <summary>
    /// The deck by hand: underside at the frame's lift, the boards' thickness square to them, seen along the leaning post. On an
    /// upright bridge half of the bays are decked with pieces turned over, end for end. Pieces alike within the shop's
    /// tolerance are cut as one.
    /// </summary>
    [Theory]
    [InlineData("garden")]
    [InlineData("inclined")]
    [InlineData("upright")]
    [InlineData("treads")]
    public void Deck_is_marked_where_people_walk(string name)
    {
        var model = Model(name);
        var (layout, p) = (BridgeLayout.Lay(model.Parameters, model.Rope.Nodes), model.Parameters);
        foreach (var heights in GuardHeights.Measure(model))
        {
            foreach (var frame in heights.Frames)
            {
                var index = model.Frames.ToList().FindIndex(f => string.Equals(f.Name, frame, StringComparison.Ordinal));
                var slant = layout.Deck.Direction(Math.Min(index + 1, layout.Bays)).Dot(layout.Poses[index].Along);
                var wood = p.Deck.Thickness / slant;
                Assert.Equal((layout.Deck.Lifts[index] + wood) / Math.Cos(p.Frames.Post.Lean), heights.Deck, p.Shop.Tolerance);
            }
        }
    }

    /// <summary>
    /// Rails and heads in the world: where a rail's outer face passes the frame's plane, measured from the base's top along the
    /// inner face, which leans as the project file says.
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Rails_are_marked_where_they_pass_the_frame(string name)
    {
        var model = Model(name);
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        var poles = StoryPole.Draw(model, TestPieces.Units, TemplateChoice.Everything, onRoll: true)
            .Where(b => b.Title.StartsWith("Story pole of the guard", StringComparison.Ordinal))
            .ToList();
        var heights = GuardHeights.Measure(model).ToList();
        Assert.Equal(heights.Count, poles.Count);
        Assert.Equal(model.Frames.Select(f => f.Name), heights.SelectMany(h => h.Frames).Order(StringComparer.Ordinal));
        foreach (var (pole, frames) in poles.Zip(heights.Select(h => h.Frames)))
        {
            var ticks = pole.Ticks(PageLayers.Accent);
            foreach (var frame in frames)
            {
                var index = model.Frames.ToList().FindIndex(f => string.Equals(f.Name, frame, StringComparison.Ordinal));
                var rails = RailHeights(model, layout, index);
                Assert.NotEmpty(rails);
                Assert.Equal(rails.Count + 1, ticks.Count);
                Assert.All(rails, r => Assert.Contains(ticks, t => Math.Abs(t - r) < Seated));
            }

            var width = model.Parameters.Guard.Rail.Width;
            var edges = pole.Ticks(PageLayers.Hidden);
            Assert.All(edges, e => Assert.Contains(ticks, t => Math.Abs(Math.Abs(t - e) - (width / 2)) < Micron));
            Assert.Equal(2 * (ticks.Count - 1), edges.Count);
        }
    }

    /// <summary>On sheets a rope's strip would be dozens of pieces; many sets of heights are a pile that few need.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Strips_of_many_sheets_are_not_printed_unasked(string name)
    {
        var model = Model(name);
        var sets = GuardHeights.Measure(model).Count();
        int Count(TemplateChoice choice, bool roll, string title) => StoryPole.Draw(model, TestPieces.Units, choice, roll)
            .Count(b => b.Title.StartsWith(title, StringComparison.Ordinal));
        Assert.Equal(0, Count(TemplateChoice.Everything, false, "Story pole of the rope"));
        Assert.Equal(1, Count(TemplateChoice.Needed, true, "Story pole of the rope"));
        Assert.Equal(sets, Count(TemplateChoice.Everything, false, "Story pole of the guard"));
        Assert.Equal(sets <= 3 ? sets : 0, Count(TemplateChoice.Needed, false, "Story pole of the guard"));
    }

    private static List<double> RailHeights(BridgeModel model, BridgeLayout layout, int frame)
    {
        var (pose, post) = (model.Frames[frame], model.Parameters.Frames.Post);
        var bay = model.Groups[model.Frames.Length + Math.Min(frame, model.Frames.Length - 2)].MemberIds
            .Where(i => i.Contains("/rail-left-", StringComparison.Ordinal)).ToHashSet(StringComparer.Ordinal);
        var plane = Plane.Through(pose.Node, pose.Along);
        return
        [
            .. from piece in model.Pieces
               from occurrence in piece.Occurrences
               where bay.Contains(occurrence.Id)
               let outer = occurrence.Placement.ToWorld(new Vector3d(0, 0, -piece.Shape.Thickness / 2))
               let at = outer + (plane.LineParameter(outer, occurrence.Placement.X) * occurrence.Placement.X)
               let up = (at - pose.Node).Dot(pose.Up) - layout.Levels[frame].Top
               let inner = -post.Foot - (up * Math.Tan(post.Lean))
               select Math.Abs(at.Z - inner) < Seated ? up / Math.Cos(post.Lean) : double.NaN,
        ];
    }

    private static BridgeModel Model(string name) => name switch
    {
        "garden" => TestPieces.Garden,
        "inclined" => Inclined.Value,
        "upright" =>
            Bridges.Build("name: Upright\nsite: { span: 30 ft }\nframes: { stance: plumb, channel: { depth: 1 in, end_depth: 1 in } }\n"),
        "treads" => Bridges.Build(Bridges.Garden + "\ndeck: { layout: across, stringer: { section: 2x6, count: 3 } }\n"),
        _ => Tensioned.Value,
    };
}
