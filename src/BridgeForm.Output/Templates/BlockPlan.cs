using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Output.Templates;

/// <summary>The plan of a cut on the taper block, with what to know of it.</summary>
internal static class BlockPlan
{
    /// <summary>The plan of an end.</summary>
    public static TemplateBlock Draw(CutUse use, PieceEnd end, ShopParameters shop, DisplayUnits units)
    {
        var (stock, cut) = (use.First.Shape, use.First.Cut(end));
        var plan = new SawPlan(
            stock, Math.Abs(cut.Mitre), Math.Abs(cut.Bevel), cut.Wedge, CutWays.ThinAtBlade(end == PieceEnd.Near, cut), shop.Kerf)
        {
            Length = use.First.BlankLength,
            Hold = shop.Hold,
        };
        return new TemplateBlock(
            $"{use.Marks} · {use.EndName(end)} on its block · plan, 1:5",
            [
                $"Saw at {Numbers.DegreeText(plan.Setting)}, block {Numbers.DegreeText(cut.Wedge)}, "
                    + (plan.Right ? "its thin end at the blade and the piece to the right of it. "
                        : "its thick end at the blade and the piece to the left of it. ")
                    + $"The blade runs {units.Length(plan.Path)} from the fence, of {units.Length(shop.Saw.Crosscut)} that the saw has. "
                    + $"The work's clamp stands {units.Length(shop.Hold.Clear)} or more from its path, square to it; the stop, where the "
                    + "set-up sheet gives one, on the block's slope; the offcut lies free."
                    + (plan.Right ? CutFirst(use, units) : string.Empty),
            ],
            [.. plan.Draw()]);
    }

    private static string CutFirst(CutUse use, DisplayUnits units) => " Cut the stick square to exactly its length first, "
        + string.Join(", ", use.Pieces.Select(p => $"{p.Mark} {units.Length(p.BlankLength)}"))
        + ": beside the blade a longer one would run into the fence.";
}
