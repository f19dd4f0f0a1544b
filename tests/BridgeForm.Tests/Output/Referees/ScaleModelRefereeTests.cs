using System.Text.Json;
using BridgeForm.Output.ScaleModel;
using BridgeForm.Tests.Output.Preview;
using BridgeForm.Tests.Output.ScaleModel;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>
/// three.js' reader of 3MF and manifold-3d see closed bodies of the right volume, items in one piece that lie on the bed.
/// </summary>
[Trait("Category", "Referee")]
public sealed class ScaleModelRefereeTests
{
    // The reader keeps corners as 32-bit floats: 4e-6 mm at 60 mm, of sizes of 2 mm twice at most; on plates further out 3e-5 mm.
    private const double RelativeDifference = 1e-4;

    // Less than a layer of 0.2 mm, which is filed off: what is thickened to lie flat meets rails that are twisted a little. Of 200 bridges
    // by chance such meetings were at most 0.131 mm; what would not go together, a cap on a head that had grown into it, began at
    // 0.201 mm. The depth is that of a sheet of the same volume: a wedge is twice as deep at its thick end.
    private const double DeepestClash = 0.15;

    [Fact]
    public void Bodies_are_closed_and_to_scale_and_items_come_off_the_bed_in_one_piece()
    {
        (string Name, BridgeModel Model, PrintPlan Plan)[] cases =
            [.. PrintCases.Samples.Concat(PrintCases.Random()).Select(c => (c.Name, c.Model, PrintPlan.Of(c.Model)))];
        var exact = 0;
        foreach (var (found, (name, model, plan)) in Seen(cases).Zip(cases))
        {
            var volumes = model.Pieces.SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Solid.Volume)))
                .ToDictionary(p => p.Id, p => p.Volume, StringComparer.Ordinal);
            var items = found.GetProperty("items").EnumerateArray().ToList();
            Assert.Equal(plan.Placed.Length, items.Count);
            foreach (var (item, placed) in items.Zip(plan.Placed))
            {
                var at = $"{name}, {placed.Item.Name}";
                Assert.Equal(placed.Item.Name, item.GetProperty("name").GetString());
                Assert.True(item.GetProperty("pieces").GetInt32() == 1, $"{at}: {item.GetProperty("pieces")} pieces");
                var bodies = item.GetProperty("bodies").EnumerateArray().ToList();
                Assert.Equal(0, bodies.Min(b => b.GetProperty("low")[2].GetDouble()), 1e-4);
                foreach (var (body, printed) in bodies.Zip(placed.Item.Bodies))
                {
                    Assert.Equal("NoError", body.GetProperty("status").GetString());
                    var volume = body.GetProperty("volume").GetDouble();
                    Assert.True(volume > 0, at);
                    if (printed.IsExact)
                    {
                        exact++;
                        var wanted = volumes[printed.Name] * Math.Pow(plan.Rules.Scale * 1000, 3);
                        Assert.True(Math.Abs((volume / wanted) - 1) < RelativeDifference, $"{at}: {volume:g9} mm3, not {wanted:g9}");
                    }
                }
            }
        }

        Assert.True(exact > 300, $"{exact} parts are to scale");
    }

    /// <summary>
    /// The same loader in a browser, with the browser's reader of XML: every item by its name, where it lies and as large, and of the
    /// volume that the written triangles enclose.
    /// </summary>
    [Fact]
    public void A_browser_reads_the_same_items()
    {
        var (_, model) = PrintCases.Samples.Single(s => s.Name is "wren-landing");
        var plan = PrintPlan.Of(model);
        Referee.OnFile(PrintCases.Bytes(model, plan), "scale-model.3mf", path =>
        {
            var preview = Path.Combine(Tool.Repository, "tests", "preview");
            var seen = JsonDocument.Parse(Tool.Run("node", preview, [Path.Combine(preview, "scale-model.mjs"), path])).RootElement;
            Assert.Equal(0, seen.GetProperty("faults").GetArrayLength());
            var items = seen.GetProperty("items").EnumerateArray().ToList();
            Assert.Equal(plan.Placed.Length, items.Count);
            foreach (var (item, placed) in items.Zip(plan.Placed))
            {
                Assert.Equal(placed.Item.Name, item.GetProperty("name").GetString());
                Assert.Equal(placed.Item.Bodies.Length, item.GetProperty("bodies").GetInt32());
                var (low, high) = (item.GetProperty("low"), item.GetProperty("high"));
                Assert.Equal(1000 * placed.Size.X, high[0].GetDouble() - low[0].GetDouble(), 1e-3);
                Assert.Equal(1000 * placed.Size.Y, high[1].GetDouble() - low[1].GetDouble(), 1e-3);
                Assert.Equal(1000 * placed.Y, low[1].GetDouble(), 1e-3);
                Assert.Equal(0, low[2].GetDouble(), 1e-4);
                var volume = placed.Item.Bodies.Sum(b => Volume(b, 1000 * plan.Rules.Scale));
                Assert.InRange(item.GetProperty("volume").GetDouble() / volume, 1 - 1e-3, 1 + 1e-3);
            }
        });
    }

    private static double Volume(PrintBody body, double scale) => body.Corners.Chunk(3)
        .Sum(t => (body.Points[t[0]] - body.Points[0]).Dot(
            (body.Points[t[1]] - body.Points[0]).Cross(body.Points[t[2]] - body.Points[0]))) / 6 * scale * scale * scale;

    /// <summary>Nothing is deeper in anything than the bridge's own parts are, and a file's stroke.</summary>
    [Fact]
    public void Put_together_nothing_runs_into_anything()
    {
        (string Name, BridgeModel Model, PrintPlan Plan)[] cases =
            [.. PrintCases.Samples.Concat(PrintCases.Random()).Select(c => (c.Name, c.Model, PrintPlan.Of(c.Model)))];
        var json = JsonSerializer.SerializeToUtf8Bytes(cases.SelectMany(c => new[] { Printed(c.Plan), Built(c.Model, c.Plan) }));
        var found = new List<string>();
        Referee.OnFile(json, "models.json", path =>
        {
            var lines = Referee.Node("scale-model.mjs", "--together", path).TrimEnd().Split('\n').Select(Clashes).ToList();
            for (var i = 0; i < cases.Length; i++)
            {
                var (printed, built) = (lines[2 * i], lines[(2 * i) + 1]);

                // Parts that run into each other on the bridge itself are its own fault, which its checks tell.
                found.AddRange(printed
                    .Where(c => built.GetValueOrDefault(c.Key) < DeepestClash && c.Value > built.GetValueOrDefault(c.Key) + DeepestClash)
                    .Select(c => $"{cases[i].Name}: {c.Key} by {c.Value:0.###} mm, on the bridge "
                        + $"{built.GetValueOrDefault(c.Key):0.###} mm"));
            }
        });
        Assert.True(found.Count == 0, string.Join('\n', found.Take(40)));
    }

    private static Dictionary<string, double> Clashes(string line) => JsonDocument.Parse(line).RootElement.EnumerateArray()
        .GroupBy(c => $"{c.GetProperty("one").GetString()} in {c.GetProperty("other").GetString()}", StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => g.Max(c => c.GetProperty("depth").GetDouble()), StringComparer.Ordinal);

    private static IEnumerable<object> Printed(PrintPlan plan) =>
        plan.Placed.Select(p => Standing(p.Item.Name, p.Item.Bodies, plan.Rules.Scale));

    // The bridge's own parts, in the same items.
    private static IEnumerable<object> Built(BridgeModel model, PrintPlan plan)
    {
        var parts = model.Pieces.SelectMany(p => p.Occurrences.Select(o => PrintBody.Of(o.Id, 0, p.Solid, o.Placement)))
            .ToDictionary(b => b.Name, StringComparer.Ordinal);
        return plan.Placed
            .Select(p => (p.Item.Name, Bodies: p.Item.Bodies.Where(b => parts.ContainsKey(b.Name)).Select(b => parts[b.Name]).ToList()))
            .Where(i => i.Bodies.Count > 0)
            .Select(i => Standing(i.Name, i.Bodies, plan.Rules.Scale));
    }

    private static object Standing(string name, IEnumerable<PrintBody> bodies, double scale) => new
    {
        name,
        bodies = bodies.Select(b => new
        {
            points = b.Points.SelectMany(p => new[] { p.X, p.Y, p.Z }).Select(v => v * scale * 1000),
            corners = b.Corners,
        }),
    };

    private static List<JsonElement> Seen((string Name, BridgeModel Model, PrintPlan Plan)[] cases) =>
        Referee.Lines("scale-model.mjs", ".3mf", cases.Select(c => PrintCases.Bytes(c.Model, c.Plan)));
}
