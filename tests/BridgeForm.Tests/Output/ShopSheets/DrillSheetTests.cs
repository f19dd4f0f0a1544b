using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Output.ShopSheets;

/// <summary>Holes of bolts on the papers of the bench: where a tape finds them, by hand.</summary>
public sealed class DrillSheetTests
{
    private const double Inch = 0.0254;

    // A base of 76 in; braces at 18°, their axis 33 − 1.75/cos 18° = 31.1599 in out. Bolts 3-1/2 in down, 2 in apart.
    private static readonly Lazy<BridgeModel> s_model = new(() => Bridges.Build("""
        name: Braces far out (invented)
        site: { span: 8 ft }
        ropes: { spacing: 46 in }
        frames:
          base: { section: 4x6, length: 76 in }
          post: { section: 4x4, length: 40 in, lean: 8 deg, foot: 18-1/2 in }
          brace: { section: 4x4, lean: 18 deg, foot: 33 in }
          keeper: { hole: 0 in }
        joints:
          brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in, count: 2, spacing: 2 in } }
        """));

    private static DisplayUnits Units => DisplayUnits.For(s_model.Value.Parameters.Units);

    private static Piece Of(Role role) => s_model.Value.Pieces.First(p => p.Role == role);

    [Fact]
    public void A_tape_finds_the_bolts_of_a_base()
    {
        var holes = HoleRows.InOrder(Of(Role.Base).Shape).ToList();
        var lean = Bridges.Radians(18);
        var middle = 33 - (1.75 / Math.Cos(lean)) + (3.5 * Math.Tan(lean));
        double[] places = [38 - middle - 1, 38 - middle + 1, 38 + middle - 1, 38 + middle + 1];
        Assert.Equal(4, holes.Count);
        Assert.All(holes.Zip(places), h => Assert.Equal(h.Second * Inch, h.First.X, 1e-9));
        Assert.All(holes, h => Assert.Equal(3.5 * Inch, HoleRows.FromEdge(Of(Role.Base).Shape, h), 1e-9));
        Assert.All(holes, h => Assert.Equal("edge 1", HoleRows.EdgeOf(h)));
        Assert.Equal("4 holes 7/16 in", HoleRows.Counted(Of(Role.Base).Shape, new QuantityText(UnitSystem.Imperial)));
    }

    [Fact]
    public void The_saws_sheet_ends_with_what_is_drilled()
    {
        var texts = SawSheet.Draw(s_model.Value, Units).Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>()
            .Select(t => t.Text).ToList();
        Assert.Contains(texts, t => t.EndsWith("bases, 4 each", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.EndsWith("braces, 3 each", StringComparison.Ordinal));
        Assert.Equal(4, texts.Count(t => t is "3-1/2 in from edge 1"));
        Assert.DoesNotContain(
            SawSheet.Draw(Bridges.Build("name: Undrilled\nsite: { span: 8 ft }\nframes: { keeper: { hole: 0 in } }\n"), Units)
                .Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>(),
            t => t.Text.StartsWith("Holes of", StringComparison.Ordinal));
    }

    // Every place of a drilled hole is on a template that prints without being asked for, and on the base's batten.
    [Fact]
    public void Drilled_parts_have_templates_and_labels_say_so()
    {
        Assert.True(TemplateSet.Needs(Of(Role.Brace), TemplateChoice.Needed));
        var book = TemplateSet.All(s_model.Value, Units, TemplateChoice.Needed);
        var texts = book.Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>().Select(t => t.Text).ToList();
        Assert.Contains(texts, t => t.Contains("from edge 1", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.Contains("slanted line lies on its cut", StringComparison.Ordinal));
        var order = s_model.Value.Assembly().SelectMany(s => s.Parts).ToList();
        Assert.Contains(
            LabelSheet.Draw(s_model.Value, order).Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>(),
            t => t.Text is "3 holes 7/16 in");
    }
}
