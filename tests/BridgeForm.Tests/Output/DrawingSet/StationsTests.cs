using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Solids;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>Levels over the frames' stations against the solids themselves.</summary>
public sealed class StationsTests
{
    /// <summary>No frame of a drawing or preview shows a lower guard than the least that the check found.</summary>
    [Theory]
    [InlineData("alder-dell")]
    [InlineData("fern-rise")]
    [InlineData("wren-landing")]
    public void The_least_guard_is_the_least_of_all_frames(string name)
    {
        var model = new BridgeForm.Tests.Samples.Sample(name).Build();
        var layout = BridgeForm.Frames.BridgeLayout.Lay(model.Parameters, model.Rope);
        var least = model.Checks.Single(c => c.Id is "guard-height").Demand;
        Assert.All(
            Enumerable.Range(0, layout.Bays + 1), i => Assert.True(least <= Stations.CapAt(layout, i) - Stations.DeckAt(layout, i) + 1e-9));
    }

    /// <summary>Check, facts, measured view and cover tell one guard height, the least; the measured view draws it where it is.</summary>
    [Theory]
    [InlineData("alder-dell")]
    [InlineData("fern-rise")]
    [InlineData("moss-crossing")]
    [InlineData("wren-landing")]
    public void One_guard_has_one_height(string name)
    {
        var model = new Sample(name).Build();
        var words = new BridgeForm.Quantities.QuantityText(model.Parameters.Units);
        var told = words.LeastSize(model.Checks.Single(c => c.Id is "guard-height").Demand);
        Assert.Equal(
            told,
            BridgeForm.Output.Preview.PreviewFacts.Gather(model)
                .Single(f => f.Label.StartsWith("Rail height", StringComparison.Ordinal)).Text);
        var drawn = BridgeForm.Output.Preview.PreviewDimensions.Side(model).Single(
            d => d.Label.StartsWith("rail height", StringComparison.Ordinal));
        Assert.Equal(told, drawn.Text);
        Assert.Equal(told, words.LeastSize(drawn.To.Y - drawn.From.Y));
        Assert.Contains(
            DrawingSheets.Draw(model).Pages.SelectMany(p => BridgeForm.Tests.Output.Templates.PlacedTexts.Of(p.Content)),
            t => t.Text == "least guard " + new DrawingText(model.Parameters.Units).LeastSize(drawn.To.Y - drawn.From.Y));
    }

    /// <summary>
    /// The sheet of an end frame tells the heights that stand over its station, where boards and caps lie aslant: in
    /// millimetres to a tenth, by which the two would differ if thickness were taken square to the boards.
    /// </summary>
    [Theory]
    [InlineData("fern-rise")]
    [InlineData("moss-crossing")]
    public void An_end_frames_sheet_tells_the_heights_over_its_station(string name)
    {
        var (model, layout) = Read(name);
        var (deck, cap, node) = (Stations.DeckAt(layout, 0), Stations.CapAt(layout, 0), layout.Poses[0].Node.Y);
        var texts = DrawingSheets.Draw(model).Pages.SelectMany(
            p => BridgeForm.Tests.Output.Templates.PlacedTexts.Of(p.Content)).Select(t => t.Text).ToList();
        var words = new DrawingText(model.Parameters.Units);
        Assert.Contains("deck to cap " + words.Size(cap - deck), texts);
        Assert.Contains("rope to cap " + words.Size(cap - node), texts);
    }

    /// <summary>A part is drawn with its piece's solid, which may differ from it by the shop tolerance.</summary>
    private const double Alike = 0.0006;

    /// <summary>
    /// The joint of the boards, or the gap of two treads, has no solid over it; the neighbours' tops are carried on so far.
    /// </summary>
    private const double Joint = 0.06;

    private const string Steep = """
        name: A steep step (invented)
        site: { span: 14 ft, rise: 4 ft, ground: [[-3 ft, -1 ft], [3 ft, -6 ft], [10 ft, -3 ft], [17 ft, 3 ft]] }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-5/8, spacing: 44 in, sag: 6 % }
        frames:
          spacing: 30 in
          stance: plumb
          base: { section: 4x6, length: 56 in }
          channel: { depth: 1-1/4 in, end_depth: 1-1/4 in }
        deck: { board: { section: 2x6 } }
        """;

    public static TheoryData<string> Names => ["alder-dell", "fern-rise", "wren-landing", "heron-reach", "steep"];

    /// <summary>The project file of a short bridge with upright frames and high ground.</summary>
    internal static BridgeModel SteepModel => Bridges.Build(Steep);

    [Theory]
    [MemberData(nameof(Names))]
    public void Walking_surface_is_the_top_of_boards_or_treads(string name)
    {
        var (model, layout) = Read(name);
        var tops = Tops(model, id => id.Contains("/board-", StringComparison.Ordinal) || id.Contains("/tread-", StringComparison.Ordinal));
        for (var i = 0; i <= layout.Bays; i++)
        {
            Assert.Equal(Over(tops, layout.Poses[i].Node.X), Stations.DeckAt(layout, i), Alike);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Cap_is_the_top_of_the_caps(string name)
    {
        var (model, layout) = Read(name);
        var tops = Tops(model, id => id.Contains("/cap-left", StringComparison.Ordinal));
        for (var i = 0; i <= layout.Bays; i++)
        {
            Assert.Equal(Over(tops, layout.Poses[i].Node.X), Stations.CapAt(layout, i), Alike);
        }
    }

    private static (BridgeModel Model, BridgeLayout Layout) Read(string name)
    {
        var model = string.Equals(name, "steep", StringComparison.Ordinal) ? SteepModel : new Sample(name).Build();
        return (model, BridgeLayout.Lay(model.Parameters, model.Rope.Nodes));
    }

    /// <summary>Upper edge in the x–y plane of every part, from its corners: the highest at either end.</summary>
    private static List<(Vector3d From, Vector3d To)> Tops(BridgeModel model, Func<string, bool> isMeant)
    {
        var tops = new List<(Vector3d From, Vector3d To)>();
        foreach (var piece in model.Pieces)
        {
            var solid = StockSolid.Build(piece.Shape with { Holes = [] }).OrNull!;
            foreach (var place in piece.Occurrences.Where(o => isMeant(o.Id)))
            {
                var corners = solid.Vertices.Select(place.Placement.ToWorld).ToList();
                // The upper face looks up more than any other; its corners, the outermost along x.
                var up = solid.Faces.Select(f => (Normal: place.Placement.DirectionToWorld(f.Plane.Normal), f.Loops)).MaxBy(
                    f => f.Normal.Y);
                var face = up.Loops.SelectMany(l => l).Select(v => corners[v]).OrderBy(c => c.X).ToList();
                tops.Add((face[0], face[^1]));
            }
        }

        return tops;
    }

    /// <summary>The highest top over a station; in a joint that of the nearest parts.</summary>
    private static double Over(List<(Vector3d From, Vector3d To)> tops, double x)
    {
        static double Away((Vector3d From, Vector3d To) top, double x) => Math.Max(0, Math.Max(top.From.X - x, x - top.To.X));
        static double At((Vector3d From, Vector3d To) top, double x) =>
            top.From.Y + ((x - top.From.X) / (top.To.X - top.From.X) * (top.To.Y - top.From.Y));
        var over = tops.Where(t => Away(t, x) <= 0).ToList();
        var near = over.Count > 0 ? over : tops.Where(t => Away(t, x) < Joint).ToList();
        return near.Max(t => At(t, x));
    }
}
