using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>An item in its place on a plate.</summary>
/// <param name="Plate">Number of the plate, from 1.</param>
/// <param name="Item">What is printed.</param>
/// <param name="X">Place of its low corner on the plate, metres on the bed.</param>
/// <param name="Y">The same.</param>
/// <param name="Size">Its size on the bed, metres.</param>
internal sealed record PlacedItem(int Plate, PrintItem Item, double X, double Y, Vector3d Size);

/// <summary>The whole model to print: what lies where on which plate, and what must be told of it.</summary>
internal sealed record PrintPlan
{
    /// <summary>Scale and sizes.</summary>
    public required PrintRules Rules { get; init; }

    /// <summary>Width and depth of the bed, metres.</summary>
    public required (double Width, double Depth) Bed { get; init; }

    /// <summary>Everything, by plate.</summary>
    public required ImmutableArray<PlacedItem> Placed { get; init; }

    /// <summary>What the model says otherwise than the bridge, in sentences.</summary>
    public required ImmutableArray<string> Told { get; init; }

    /// <summary>Number of plates.</summary>
    public int Plates => Placed.Max(p => p.Plate);

    /// <summary>The plan of a bridge.</summary>
    public static PrintPlan Of(BridgeModel model)
    {
        var source = new PrintSource(model);
        var print = model.Parameters.Shop.Print;
        var (wide, deep) = (print.BedWidth - (2 * PrintFit.Margin), print.BedDepth - (2 * PrintFit.Margin));
        var longest = source.Rules.OnBed(Math.Max(wide, deep));
        List<PrintItem> bridge =
        [
            .. FrameItems.All(source), .. DeckItems.All(source), .. GuardItems.All(source), .. StickItems.All(source),
            .. RopeItems.All(source, longest),
        ];
        var line = Line(source, bridge, source.Rules.OnBed(Math.Min(wide, deep)));
        var placed = PlateLayout.Lay([.. bridge, .. GroundItems.All(source, line, longest)], source.Rules.Scale, wide, deep);
        return new PrintPlan
        {
            Rules = source.Rules,
            Bed = (print.BedWidth, print.BedDepth),
            Placed = placed,
            Told = [.. PrintNotes.All(source, line, placed, (wide, deep))],
        };
    }

    private static GroundLine Line(PrintSource source, List<PrintItem> items, double tallest)
    {
        var frames = items.Where(i => i.Kind == PrintKind.Frame).ToList();
        var drop = Drop(source, [.. frames.Skip(1).SkipLast(1), .. Ropes(items)]);
        return new GroundLine(source, Box(frames[0]), Box(frames[^1]), drop, tallest);
    }

    private static IEnumerable<PrintItem> Ropes(IEnumerable<PrintItem> items) =>
        items.Where(i => i.Kind == PrintKind.Stick && i.Bodies[0].Material == Gltf.GltfMaterials.Rope);

    // By how much anything as printed hangs below the line from node to node, which bends upward everywhere: corners count.
    private static double Drop(PrintSource source, IEnumerable<PrintItem> hanging)
    {
        var nodes = source.Model.Frames.Select(f => (f.Node.X, f.Node.Y)).ToList();
        return hanging.SelectMany(i => i.Bodies).SelectMany(b => b.Points).Max(p => GroundLine.At(nodes, p.X) - p.Y);
    }

    private static (double From, double To, double Under) Box(PrintItem frame)
    {
        var points = frame.Bodies.SelectMany(b => b.Points).ToList();
        return (points.Min(p => p.X), points.Max(p => p.X), points.Min(p => p.Y));
    }
}
