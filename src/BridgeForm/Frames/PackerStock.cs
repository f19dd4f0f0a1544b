using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Frames;

/// <summary>Which stick packers are ripped from.</summary>
internal static class PackerStock
{
    private const double Sixteenth = 0.0254 / 16;
    private const double Millimetre = 0.001;

    /// <summary>A size this near to a whole step is that step, as a share of it: far above round-off, far below any tool.</summary>
    private const double RoundOff = 1e-6;

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
            ?? MadeToMeasure(parameters.Units, height, width);
    }

    // Named as people of the project would write it; the step is what a tape shows.
    private static Section MadeToMeasure(UnitSystem units, double height, double width)
    {
        var text = new QuantityText(units);
        var step = units == UnitSystem.Imperial ? Sixteenth : Millimetre;
        var thickness = Math.Ceiling((height / step) - RoundOff) * step;
        var across = Math.Ceiling((width / step) - RoundOff) * step;
        var (large, small) = across > thickness ? (across, thickness) : (thickness, across);
        var first = text.Size(small);
        return new Section($"{first[..first.IndexOf(' ', StringComparison.Ordinal)]} x {text.Size(large)}", across, thickness);
    }
}
