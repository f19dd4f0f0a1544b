using BridgeForm.Frames;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>Holes of bases, posts and braces against the size up to which a net section is all there is to look at.</summary>
internal static class HoleSizes
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "hole-size",
        "Holes in bases, posts and braces",
        "Diameter of every hole, keeper's and your own, against a third of the face it enters, the one nearest to it or furthest beyond. "
            + "What smaller ones leave is looked at in the checks of bases, posts and braces. Absent without holes.",
        "IRC R502.8.1: holes in joists at most d/3 wide; taken for every face that a hole enters",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>None without holes.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var words = context.Words();
        var layout = context.Layout;
        var middle = layout.Bays / 2;
        var holes = (
            (Member[])[
                BaseMember.Cut(layout, middle), Uprights.Post(layout, middle, Side.Right), Uprights.Brace(layout, middle, Side.Right)])
            .SelectMany(m => m.Shape.Holes.Select(hole => new
            {
                m.Id,
                m.Role,
                hole.Diameter,
                Face = hole.Face is Solids.StockFace.MinusY or Solids.StockFace.PlusY ? m.Shape.Thickness : m.Shape.Width,
            }))
            .ToList();
        if (holes.Count > 0)
        {
            var worst = holes.MaxBy(h => h.Diameter / h.Face)!;
            yield return Outcome.AtMost(
                Declared,
                worst.Diameter,
                Notches.LargestHole(worst.Face),
                "m",
                Declared.Source,
                $"{words.Length(worst.Diameter)} in a face of a {RoleTable.Of(worst.Role).Name} {words.Length(worst.Face)} wide; a third "
                    + $"of it is {words.Length(Notches.LargestHole(worst.Face))}").On(CheckParts.OnBothSides(worst.Id));
        }
    }
}
