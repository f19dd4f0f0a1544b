using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.ScaleModel;

/// <summary>What the model to print says otherwise than the bridge, in sentences.</summary>
internal static class PrintNotes
{
    // Of a wall's edge on the bed: half a layer. Common practice, no source.
    private const double LeastTold = 0.1e-3;
    private const string GroundCheck = "ground-clearance";

    /// <summary>All of them.</summary>
    public static IEnumerable<string> All(
        PrintSource source, GroundLine line, ImmutableArray<PlacedItem> placed, (double Wide, double Deep) bed)
    {
        foreach (var group in placed.SelectMany(p => p.Item.Bodies).Where(b => b.Thicker.Length > 0)
            .GroupBy(b => $"{Kind(b)}: {b.Thicker}", StringComparer.Ordinal))
        {
            yield return $"Thicker than to scale: {group.Key} ({Count(group.Count())})";
        }

        if (placed.Any(p => p.Item.Bodies.Any(b => b.Name is DeckItems.Closed)))
        {
            yield return $"Gaps between deck boards are not printed: boards are {source.Rules.Printed(source.Rules.Thinnest)} mm thick, "
                + "and what joins them may not be thinner";
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

        foreach (var sentence in line.IsGiven
            ? Ground(source, line)
            : ["The project file has no ground line: the ground is level, below the lowest point of the bridge"])
        {
            yield return sentence;
        }

        foreach (var item in placed.Where(p => p.Size.X > bed.Wide + Tolerances.RoundOff || p.Size.Y > bed.Deep + Tolerances.RoundOff))
        {
            yield return $"Larger than the bed: {item.Item.Name}; print it in two, cut by the slicing program, or at a smaller scale";
        }
    }

    // What would print as nothing is not told.
    private static IEnumerable<string> Ground(PrintSource source, GroundLine line)
    {
        var told = source.Rules.OnBed(LeastTold);
        yield return "The ground line is that of the project file"
            + (line.LoweredUnder > told || line.LoweredAtLandings > told ? ", lowered where the bridge would stand in it" : "")
            + (line.IsCut ? "; where it is deeper than the bed is large it ends at the floor" : "");
        if (line.LoweredUnder > told)
        {
            var check = source.Model.Checks.FirstOrDefault(c => c.Id is GroundCheck);
            yield return "Where the ground reaches the bridge or comes near it, what is printed is lowered by up to "
                + $"{Both(source, line.LoweredUnder)} to clear ropes and bases: the model does not show that the bridge is clear of the "
                + "ground"
                + (check is null ? "" : $"; its check {GroundCheck} says: {check.Status.Word()}");
        }

        if (line.LoweredAtLandings > told)
        {
            yield return "At the landings what is printed of the ground is lowered by up to "
                + $"{Both(source, line.LoweredAtLandings)} to the undersides of the end frames";
        }
    }

    private static string Both(PrintSource source, double metres) =>
        $"{source.Rules.Printed(metres)} mm ({new QuantityText(source.Model.Parameters.Units).Size(metres)} of the bridge)";

    private static string Kind(PrintBody body) =>
        PartId.Read(body.Name) is { } id ? RoleTable.Of(id.Role).Name : body.Name[..body.Name.IndexOf(' ', StringComparison.Ordinal)];

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture) + (count == 1 ? " piece" : " pieces");
}
