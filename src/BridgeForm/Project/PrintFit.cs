using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>What a print bed takes of a bridge. Metres.</summary>
public static class PrintFit
{
    /// <summary>Left free at each edge of the bed: room for a brim, and beds are least true there. Common practice, no source.</summary>
    public const double Margin = 0.005;

    /// <summary>The thinnest part is printed at most so many times as thick; beyond that nobody knows the bridge again.</summary>
    public const double MostGrowth = 2;

    // End bays are cut longer where the end frames stand otherwise than their neighbours: demo 43-3/8 in of 36 in, a steep one more.
    private const double LongestBay = 1.6;

    // Usual scales of models and of drawings (ISO 5455 has 1:20 and 1:50; the others common practice, no source).
    private static readonly ImmutableArray<int> s_scales = [20, 25, 32, 50, 75, 100];

    /// <summary>The scale: the file's, or the largest of the usual ones that fits; 1:100 where none does.</summary>
    public static double Scale(BridgeParameters parameters)
    {
        if (parameters.Shop.Print.Scale is { } given)
        {
            return given;
        }

        var most = LargestScale(parameters) * (1 + Tolerances.Bound);
        return 1.0 / s_scales.FirstOrDefault(n => 1.0 / n <= most, s_scales[^1]);
    }

    /// <summary>The largest scale at which a frame lies on the bed, either way round, and a bay's longest stick beside its edge.</summary>
    public static double LargestScale(BridgeParameters parameters)
    {
        var print = parameters.Shop.Print;
        var (bed, other) = (print.BedWidth - (2 * Margin), print.BedDepth - (2 * Margin));
        var (width, height) = Frame(parameters);
        var frame = Math.Max(Math.Min(bed / width, other / height), Math.Min(bed / height, other / width));
        return Math.Min(Math.Min(frame, Math.Max(bed, other) / Bay(parameters)), 1);
    }

    /// <summary>Width and height of a frame, full size.</summary>
    public static (double Width, double Height) Frame(BridgeParameters parameters)
    {
        var frames = parameters.Frames;
        var heads = 2 * (frames.Post.Foot + (frames.Post.Length * Elementary.Sin(frames.Post.Lean)) + (2 * frames.Post.Section.Width));
        return (Math.Max(frames.Base.Length, heads), frames.Base.Depth + frames.Post.Length + frames.Post.Section.Width);
    }

    /// <summary>The longest that a stick of one bay may come out, full size.</summary>
    public static double Bay(BridgeParameters parameters) => LongestBay * parameters.Frames.Spacing;

    /// <summary>The thinnest kind of part, and its thickness at full size; rope, packers and steel not counted.</summary>
    public static (string Part, double Thickness) Thinnest(BridgeParameters parameters)
    {
        (string Part, double Thickness)[] parts =
        [
            ("base", parameters.Frames.Base.Section.Thickness),
            ("post", parameters.Frames.Post.Section.Thickness),
            ("brace", parameters.Frames.Brace.Section.Thickness),
            ("deck board", parameters.Deck.Board.Thickness),
            ("rail", parameters.Guard.Rail.Thickness),
            ("cap", parameters.Guard.Cap.Thickness),
        ];
        return parts.MinBy(p => p.Thickness);
    }
}
