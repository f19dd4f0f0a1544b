using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Quantities;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>Sheets for what holds the bridge and what it is held together with.</summary>
public sealed class SupportSheetTests
{
    private static readonly Lazy<(BridgeModel Model, SheetBook Book)> s_stayed = new(() =>
    {
        var model = Bridges.Build(Bridges.Garden.Replace(
            "span: 30 ft", "span: 30 ft, a: { support: tree, backstay: { length: 20 ft, angle: 30 deg } }", StringComparison.Ordinal));
        return (model, DrawingSheets.Draw(model));
    });

    /// <summary>
    /// By hand: at a held saddle the backstay's level part balances the rope's, so it pulls H / cos 30° and presses H·tan 30° on the
    /// tree besides the rope's own part, and nothing pushes the tree to one side.
    /// </summary>
    [Fact]
    public void Forces_on_a_tree_with_a_backstay_balance()
    {
        var (model, book) = s_stayed.Value;
        var words = new QuantityText(model.Parameters.Units);
        var marked = model.Ropework.Supports.Single(s => s.Support is "A");
        var pull = marked;
        var (stay, down) = (pull.Horizontal / Math.Cos(Math.PI / 6), pull.Vertical + (pull.Horizontal * Math.Tan(Math.PI / 6)));
        var texts = Sheet(book, "Supports and anchors").Content.Entities.OfType<SheetText>().Select(t => t.Text).ToList();
        Assert.Contains($"pull of the rope {words.Force(pull.Tension)}", texts);
        Assert.Contains($"backstay {words.Force(stay)}, 30.0°", texts);
        Assert.Contains($"on the tree down {words.Force(down)}", texts);
        Assert.DoesNotContain(texts, t => t.StartsWith("on the tree level", StringComparison.Ordinal));
        Assert.Contains($"anchor {words.Force(stay)}", texts);
        Assert.Contains($"level {words.Force(pull.Horizontal)}", texts);
        Assert.Contains($"up {words.Force(stay * Math.Sin(Math.PI / 6))}", texts);
    }

    /// <summary>Lengths of the arrows are to each other as the forces: rope at A against rope at B, both from their own support.</summary>
    [Fact]
    public void Arrows_are_to_scale()
    {
        var (model, book) = s_stayed.Value;
        var entities = Sheet(book, "Supports and anchors").Content.Entities;
        var heads = entities.OfType<SheetArea>().Where(a => a is { Layer: PageLayers.Cut, Corners.Length: 3 }).ToList();
        var pulls = model.Ropework.Supports;

        // Of three heads in the wood's colour two point towards the span: the right one at A and the left one at B.
        var dots = entities.OfType<SheetCircle>().Where(c => c.Layer == PageLayers.Cut).Select(c => c.Center)
            .OrderBy(c => c.X).ToList();
        var (a, b) = (dots[0], dots[^1]);
        var atA = heads.Max(h => h.Corners[0].X > a.X && h.Corners[0].X < b.X ? Distance(h.Corners[0], a) * (Near(h, a, b) ? 1 : 0) : 0);
        var atB = heads.Max(h => h.Corners[0].X < b.X ? Distance(h.Corners[0], b) * (Near(h, b, a) ? 1 : 0) : 0);
        Assert.Equal(pulls[0].Tension / pulls[1].Tension, atA / atB, 1e-6);
    }

    /// <summary>8 CCR 8497, table 1: four clips and 18 in of turn-back for 3/4 in, 130 lbf·ft; six diameters apart.</summary>
    [Fact]
    public void Clips_are_those_of_the_table()
    {
        var clips = Terminations.ClipsFor(s_stayed.Value.Model.Parameters.Ropes)!;
        var inches = ClipDetail.Places(clips).Select(x => Math.Round(x / 0.0254, 6));
        Assert.Equal([3, 7.5, 12, 16.5], inches);
        var texts = s_stayed.Value.Book.Pages.Single(p => p.Content.Title.Contains("rope end", StringComparison.Ordinal))
            .Content.Entities.OfType<SheetText>().Select(t => t.Text).ToList();
        Assert.Contains("4 clips for rope 3/4, nuts 130 lbf·ft", texts);
        Assert.Contains("turn-back 18\"", texts);
        Assert.True(texts.Count(t => string.Equals(t, "4-1/2\"", StringComparison.Ordinal)) >= 3);
    }

    private static SheetPage Sheet(SheetBook book, string title) =>
        book.Pages.First(p => p.Content.Title.EndsWith(title, StringComparison.Ordinal));

    private static bool Near(SheetArea head, SheetPoint own, SheetPoint other) =>
        Distance(head.Corners[0], own) < Distance(head.Corners[0], other);

    private static double Distance(SheetPoint p, SheetPoint q) => BridgeForm.Output.Drawing.Dimensions.Distance(p, q);
}
