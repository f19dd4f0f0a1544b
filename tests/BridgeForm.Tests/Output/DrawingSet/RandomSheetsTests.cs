using System.Globalization;
using BridgeForm.Benchmarks.Fuzz;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Project.Files;
using BridgeForm.Tests.Output.Templates;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>
/// Sheets of bridges that nobody chose: no text on another, none over a line, none beyond the border. A few in every run;
/// <c>BRIDGEFORM_SHEETS=60</c> in the environment asks for sixty.
/// </summary>
public sealed class RandomSheetsTests
{
    private const int Few = 2;
    private const int MostBays = 14;

    /// <summary>Ends, ground and water.</summary>
    private static readonly string[] s_ends =
    [
        "a: { support: post, backstay: { length: 11 ft, angle: 28 deg, saddle: sliding } }, b: { support: tree }",
        "a: { support: platform }, b: { support: abutment, backstay: { length: 4 m, angle: 55 deg } }, water: -9 ft",
        "north: 75 deg, ground: [[-9 ft, -1 ft], [0 ft, -2 ft], [6 ft, -7 ft], [30 ft, -6 ft]]",
    ];

    [Fact]
    public void No_text_lies_on_another_or_over_a_line()
    {
        var asked = int.TryParse(Environment.GetEnvironmentVariable("BRIDGEFORM_SHEETS"), CultureInfo.InvariantCulture, out var n)
            ? n : Few;
        var faults = new List<string>();
        var drawn = 0;
        for (var seed = 1; drawn < asked; seed++)
        {
            if (Model(seed) is { } model)
            {
                drawn++;
                var book = DrawingSheets.Draw(model);
                faults.AddRange(book.Pages.SelectMany(p => Faults(p).Select(f => FormattableString.Invariant($"{seed}, {f}"))));
            }
        }

        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    internal static BridgeModel? Model(int seed)
    {
        var text = RandomProject.Of(seed, MostBays);
        var reading = ProjectReader.Read(text, "random.yaml", Bridges.Catalogue);
        if (reading.Parameters is not { } parameters)
        {
            return null;
        }

        // Ground and water of random depth lie far below a short bridge: the ends come from the list above.
        var given = parameters.Site;
        var ends = Bridges.Read($"name: a\nsite: {{ span: 30 ft, {s_ends[seed % s_ends.Length]} }}\n").Site;
        var site = given with
        {
            A = given.A with { Kind = ends.A.Kind, Backstay = ends.A.Backstay },
            B = given.B with { Kind = ends.B.Kind, Backstay = ends.B.Backstay },
            Ground = ends.Ground,
            Water = ends.Water,
            Freeboard = ends.Freeboard,
            North = ends.North,
        };
        return Bridge.TryBuild(parameters with { Site = site }, out var model, out _) ? model : null;
    }

    private static IEnumerable<string> Faults(SheetPage page)
    {
        var boxes = PlacedTexts.Of(page.Content).ToList();
        foreach (var (box, i) in boxes.Select((b, i) => (b, i)))
        {
            if (boxes.Skip(i + 1).FirstOrDefault(o => o.Box.Overlaps(box.Box)) is { Text.Length: > 0 } other)
            {
                yield return $"{page.Content.Title}: '{box.Text}' on '{other.Text}'";
            }

            if (box.Box.MinX < Paper.Margin || box.Box.MaxX > page.Width - Paper.Margin || box.Box.MinY < Paper.Margin
                || box.Box.MaxY > page.Height - Paper.Margin)
            {
                yield return $"{page.Content.Title}: '{box.Text}' beyond the border";
            }
        }

        var lines = LinesAbout.Gather(page.Content.Entities);
        foreach (var text in page.Content.Entities.OfType<SheetText>().Where(t => lines.Cross(t, 0)))
        {
            yield return $"{page.Content.Title}: a line over '{text.Text}'";
        }

        // White ground under a label may break a thin line, never an outline.
        var outlines = LinesAbout.Gather(page.Content.Entities.Where(
            e => string.Equals(e.Layer, PageLayers.Cut, StringComparison.Ordinal))).Strokes;
        foreach (var (halo, _) in page.Content.Entities.Zip(page.Content.Entities.Skip(1))
            .Where(p => p.First is SheetArea { Shade: not > 0 } && p.Second is SheetText))
        {
            var box = EntityBox.Of(halo);
            if (outlines.Any(s => ViewLines.Clip(s.From, s.To, box) is not null))
            {
                yield return $"{page.Content.Title}: a white ground over an outline at {box.MinX:F3}, {box.MinY:F3}";
            }
        }
    }
}
