using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
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
            Told = [.. Sentences(source, line, placed, (wide, deep))],
        };
    }

    private static GroundLine Line(PrintSource source, List<PrintItem> items, double tallest)
    {
        var frames = items.Where(i => i.Kind == PrintKind.Frame).ToList();
        var parameters = source.Model.Parameters;

        // A base turned with its frame reaches deeper at one edge: by its half size along, at 45 degrees at most.
        var under = source.Model.Frames.Zip(frames)
            .Max(f => f.Second.Bodies.SelectMany(b => b.Points).Max(p => (f.First.Node - p).Dot(f.First.Up)));
        var rope = (1.5 * source.Rules.RopeBar(parameters)) + source.Rules.Fit;
        var drop = Math.Max(under, rope) + (source.Rules.FrameAlong(parameters) / 2);
        return new GroundLine(source, Box(frames[0]), Box(frames[^1]), drop, tallest);
    }

    private static (double From, double To, double Under) Box(PrintItem frame)
    {
        var points = frame.Bodies.SelectMany(b => b.Points).ToList();
        return (points.Min(p => p.X), points.Max(p => p.X), points.Min(p => p.Y));
    }

    private static IEnumerable<string> Sentences(
        PrintSource source, GroundLine line, ImmutableArray<PlacedItem> placed, (double Wide, double Deep) bed)
    {
        foreach (var group in placed.SelectMany(p => p.Item.Bodies).Where(b => b.Thicker.Length > 0)
            .GroupBy(b => $"{Kind(b)}: {b.Thicker}", StringComparer.Ordinal))
        {
            yield return $"Thicker than to scale: {group.Key} ({Count(group.Count())})";
        }

        var model = source.Model;
        string[] shims =
        [
            .. new[] { Role.Packer, Role.Shim }.Where(r => model.Pieces.Any(p => p.Role == r)).Select(r => RoleTable.Of(r).Many),
        ];
        if (shims.Length > 0)
        {
            yield return $"Left out: {string.Join(" and ", shims)}, thinner than a printer's line; glue fills their gap";
        }

        if (model.Pieces.Any(p => p.Role == Role.Newel))
        {
            yield return "Left out: newels, which stand on the landings";
        }

        if (model.Pieces.Any(p => p.Shape.Holes.Any(h => h.Diameter < source.Rules.Thinnest)))
        {
            yield return $"Left out: holes smaller than {source.Rules.Printed(source.Rules.Thinnest)} mm on the model";
        }

        if (!model.Steel().IsEmpty)
        {
            yield return "Left out: plates and bolts of joints";
        }

        if (!model.Nets().IsEmpty)
        {
            yield return "Left out: netting of the guard; a piece of tulle glued to rails and caps shows it";
        }

        if (!model.Landings().IsEmpty)
        {
            yield return "Left out: landings, which are by others; the ends of the ground stand for them";
        }

        if (model.Pieces.Any(p => p.Role == Role.Handrail))
        {
            yield return "Left out: brackets of the handrails; a bent pin holds each off its post";
        }

        yield return line.IsGiven
            ? "The ground line is that of the project file"
                + (line.IsCut ? "; where it is deeper than the bed is large it ends at the floor" : "")
            : "The project file has no ground line: the ground is level, below the lowest point of the bridge";
        foreach (var item in placed.Where(p => p.Size.X > bed.Wide + Tolerances.RoundOff || p.Size.Y > bed.Deep + Tolerances.RoundOff))
        {
            yield return $"Larger than the bed: {item.Item.Name}; print it in two, cut by the slicing program, or at a smaller scale";
        }
    }

    private static string Kind(PrintBody body) =>
        PartId.Read(body.Name) is { } id ? RoleTable.Of(id.Role).Name : body.Name[..body.Name.IndexOf(' ', StringComparison.Ordinal)];

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture) + (count == 1 ? " piece" : " pieces");
}
