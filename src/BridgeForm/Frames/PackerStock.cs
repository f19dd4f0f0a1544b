using BridgeForm.Materials;
using BridgeForm.Project;

namespace BridgeForm.Frames;

/// <summary>What packers are cut from.</summary>
internal static class PackerStock
{
    /// <summary>Treated stock: the bases' if treated, else the first treated stock of the file, else the bases'.</summary>
    public static string Name(BridgeParameters parameters)
    {
        var named = parameters.StockNamed(parameters.Frames.Base.Stock);
        return named.Treated
            ? named.Name
            : (parameters.Stock.FirstOrDefault(s => s.Treated) ?? named).Name;
    }

    /// <summary>
    /// The smallest of the project's own sections that a packer of this height and width can be ripped from; when none is
    /// large enough, a stick of exactly the needed size, named by it. Metres.
    /// </summary>
    public static Section Section(BridgeParameters parameters, double height, double width)
    {
        var frames = parameters.Frames;
        Section?[] own =
        [
            frames.Base.Section, frames.Post.Section, frames.Brace.Section, parameters.Deck.Board,
            parameters.Deck.Stringer?.Section,
        ];
        return own
            .OfType<Section>()
            .Where(s => s.Thickness >= height && s.Width >= width)
            .MinBy(s => s.Width * s.Thickness)
            ?? MadeToMeasure(height, width);
    }

    private static Section MadeToMeasure(double height, double width)
    {
        const double millimetre = 1e-3;
        var thickness = Math.Ceiling(height / millimetre) * millimetre;
        var across = Math.Ceiling(width / millimetre) * millimetre;
        var (large, small) = across > thickness ? (across, thickness) : (thickness, across);
        return new Section(FormattableString.Invariant($"{small / millimetre:0} x {large / millimetre:0} mm"), across, thickness);
    }
}
