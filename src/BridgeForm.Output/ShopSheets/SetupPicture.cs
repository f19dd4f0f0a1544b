using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.ShopSheets;

/// <summary>
/// A set-up of the mitre saw as the operator sees it: from above fence, stick, blade and edge as the first row of its table lies;
/// where the blade leans, how it does from the front.
/// </summary>
internal static class SetupPicture
{
    // Metres on paper: between the two views, half of the table in the view from the front, and a plan too wide for both side by side.
    private const double Apart = 0.012;
    private const double Table = 0.018;
    private const double Wide = 0.120;

    /// <summary>The view from the front, so that a square post leaves room for the plan.</summary>
    private const double FrontScale = 0.5;

    /// <summary>The plan, how its piece lies, and the blade's lean.</summary>
    public static ImmutableArray<SheetEntity> Draw(SawCut cut, ShopParameters shop, DisplayUnits units)
    {
        var plan = new SawPlan(cut.Stick, cut.Mitre + cut.Wedge, cut.Bevel, cut.Wedge, cut.PieceAtRight, shop.Kerf)
        {
            Stop = cut.HasStop || cut.IsParted ? cut.Stop : null,
            HasStop = cut.HasStop,
            StopWords = cut is { HasStop: true, Stop: { } stop } ? units.Length(stop) + " along the edge" : "",
            Length = cut.Wedge > 0 ? cut.Stop ?? cut.Piece.BlankLength : cut.Stop,
            Finished = cut.Order == 2 ? cut.Other : null,
            HeldBeyond = cut.IsParted,
            Hold = shop.Hold,
        };
        ImmutableArray<SheetEntity> above =
            [.. plan.Draw(), Edge(cut, plan), .. cut.IsParted || cut.Stick.IsRound ? [] : (SheetEntity[])[Way(cut, plan)]];
        var box = PageBox.Of(above);
        ImmutableArray<SheetEntity> front = [];
        if (CutKeys.Leans(cut.Bevel))
        {
            var beside = box.MaxX - box.MinX < Wide;
            front = [.. beside ? Front(cut, box.MaxX + Apart + Table, (box.MinY + box.MaxY) / 2)
                : Front(cut, box.MinX + Table, box.MinY - Apart - (cut.Stick.Thickness * FrontScale))];
        }

        // Below both views: it is wider than the plan of a narrow stick.
        ImmutableArray<SheetEntity> both = [.. above, .. front];
        return
        [
            .. both,
            PageText.Left(
                box.MinX, PageBox.Of(both).MinY - 0.005,
                $"Drawn as {cut.Piece.Mark} lies, {SawSetup.EndName(cut)} end{(cut.Order == 2 ? ", the other one finished" : "")}: "
                    + $"{SawSetup.Up(cut)}, {SawSetup.Fence(cut)} against the fence, {SawSetup.ArrowWords(cut)}",
                PageText.Small),
        ];
    }

    /// <summary>Which edge lies at the fence, written along it near the end of what is drawn.</summary>
    private static SheetText Edge(SawCut cut, SawPlan plan)
    {
        var at = plan.On(plan.End - ((cut.PieceAtRight ? 1 : -1) * 0.04), cut.Stick.Width / 4);
        return PageText.Centered(at.X, at.Y, SawSetup.Fence(cut), PageText.Small, bold: true);
    }

    /// <summary>
    /// The way mark, larger than on the wood, along its arris where that lies: full where the half that is up shows, dashed where it is
    /// the underside. Its place along the stick says nothing.
    /// </summary>
    private static SheetPolyline Way(SawCut cut, SawPlan plan)
    {
        var wide = cut.Stick.Width;
        var (edge, inward) = cut.Position.ArrisAtFence ? (0.0, 1) : (wide, -1);
        var middle = plan.End - ((cut.PieceAtRight ? 1 : -1) * (cut.Position.ArrisAtFence ? FromEnd : NearEnd));
        var tail = middle - (cut.Position.NearLeft ? WayHalf : -WayHalf);
        return WayMark.Draw(
            cut.Position.FaceUp ? PageLayers.Cut : PageLayers.Hidden, plan.On(tail, edge),
            plan.On((2 * middle) - tail, edge), plan.On(tail, edge + (inward * wide / 4)));
    }

    // Metres of wood: half of the mark's length.
    private const double WayHalf = 0.025;

    // And from its middle to the end of what is drawn: beyond the edge's name where that is on the same side, else nearer, so that it is
    // on the wood of a short piece too.
    private const double FromEnd = 0.11;
    private const double NearEnd = 0.05;

    /// <summary>Seen along the table: the stick's thickness at half size, and the blade leaning to the left.</summary>
    private static IEnumerable<SheetEntity> Front(SawCut cut, double x, double y)
    {
        var thick = cut.Stick.Thickness * FrontScale;
        var low = y - (thick / 2);
        SheetPoint At(double dx, double dy) => new(x + dx, low + dy);
        yield return new SheetLine(PageLayers.Frame, At(-Table, 0), At(Table, 0));
        var lean = thick * Elementary.Tan(cut.Bevel);
        var kept = cut.PieceAtRight ? Table : -Table;
        yield return new SheetLine(PageLayers.Cut, At(0, 0), At(kept, 0));
        yield return new SheetLine(PageLayers.Cut, At(-lean, thick), At(kept, thick));
        yield return new SheetLine(PageLayers.Fold, At(kept, 0), At(kept, thick));
        var reach = thick + 0.006;
        yield return new SheetLine(PageLayers.Accent, At(0, 0), At(-reach * Elementary.Tan(cut.Bevel), reach));
        yield return PageText.Centered(x, low - 0.004, $"front: leans {Numbers.DegreeText(cut.Bevel)}", PageText.Small);
    }
}
