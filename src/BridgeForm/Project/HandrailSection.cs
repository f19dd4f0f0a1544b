using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>A handrail along both sides, on brackets from the posts' inner faces.</summary>
/// <param name="Section">Its section, upright; a round one is as wide as it is thick. Metres.</param>
/// <param name="IsRound">Turned; the section is the square around it.</param>
/// <param name="Height">From the deck's surface to its top, square to the bases, metres.</param>
/// <param name="Gap">Clear of what stands behind it, rails or posts, metres.</param>
/// <param name="Stock">Stock that it is cut from.</param>
public sealed record HandrailParameters(Section Section, bool IsRound, double Height, double Gap, string Stock)
{
    /// <summary>Height of its middle line over the deck's surface, metres.</summary>
    public double Middle => Height - (Section.Width / 2);
}

/// <summary>Keys under <c>guard.handrail</c>, how they are read, and whether the posts reach up to it.</summary>
internal static class HandrailSection
{
    private const string Path = "guard.handrail";
    private const string Height = Path + ".height";

    // 34 to 38 in: Limits.Handrail. The gap is a little more than the 1-1/2 in of Limits.HandrailClear, for rails that the posts push
    // inward.
    public static KeySpec Keys => Define.OptionalMap(
        "handrail",
        "A rail that a hand closes around, on brackets from the posts, on both sides",
        [
            Define.Length("diameter", "Diameter of a round one", "3/4 in", "6 in", "2 in", "50 mm"),
            new("section", KeyShape.Value, "Section of one that is not round, its wide face upright; in place of diameter")
            {
                Type = ValueForm.Section,
                DefaultNote = "round",
                Example = "2x2",
                MetricExample = "38 x 38 mm",
            },
            Define.Length("height", "From the deck's surface to its top, square to the bases", "24 in", "60 in", "36 in", "920 mm"),
            Define.Length("gap", "Clear of rails and pickets, or of the posts where there are none", "1/2 in", "6 in", "1-3/4 in", "45 mm"),
            Define.StockName("treated"),
        ]) with
    { OneOf = ["diameter", "section"] };

    public static HandrailParameters? Read(FileValues v)
    {
        if (!v.Given(Path))
        {
            return null;
        }

        var isRound = !v.Given(Path + ".section");
        return new HandrailParameters(
            isRound ? Round(v) : v.Section(Path + ".section"), isRound, v.Number(Height), v.Number(Path + ".gap"),
            v.Text(Path + ".stock"));
    }

    public static void Check(CheckedFile f)
    {
        if (f.Parameters.Guard.Handrail is not { } handrail
            || !f.Good(
                Path, Height, Path + ".section", Path + ".diameter", "deck.layout", "deck.board.section", "deck.stringer.section",
                "frames.post.length", "frames.post.lean"))
        {
            return;
        }

        var post = f.Parameters.Frames.Post;
        var head = (post.Length * Elementary.Cos(post.Lean)) - f.Parameters.Deck.Thickness;
        if (handrail.Height > head + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.HandrailAboveCap, Height, $"height: with '{f.Written(Height)}' the handrail's top lies above the posts' "
                + $"heads, {f.Size(Math.Max(0, head))} above the deck, where the cap lies and no bracket holds; write at most "
                + $"{f.AtMost(Math.Max(0, head))}, or longer posts", "frames.post.length");
        }
    }

    // Named as people of the project write it.
    private static Section Round(FileValues v)
    {
        var diameter = v.Number(Path + ".diameter");
        return RoundSection.Of(new QuantityText(v.Units).Size(diameter), diameter);
    }
}
