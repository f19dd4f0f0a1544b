using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>
/// What the bridge stands on, all of it flat on the bed: two walls whose upper edge is the ground line, a floor that holds them
/// upright, and a wall across at each end. Joints of walls and floor are apart.
/// </summary>
internal static class GroundItems
{
    // On the bed; common practice, no source.
    private const double LeastThickness = 2.4e-3;
    private const double BesideRope = 1e-3;
    private const double FloorBeyond = 3e-3;

    /// <summary>Walls, floor, ends.</summary>
    /// <param name="source">The bridge.</param>
    /// <param name="line">The ground line.</param>
    /// <param name="longest">Longest that lies on the bed, metres of the bridge.</param>
    public static IEnumerable<PrintItem> All(PrintSource source, GroundLine line, double longest)
    {
        var rules = source.Rules;
        var thickness = Math.Max(2 * rules.Thinnest, rules.OnBed(LeastThickness));
        var parameters = source.Model.Parameters;
        var inside = (rules.RopeBar(parameters) / 2) + rules.OnBed(BesideRope);
        var (between, beside) = (
            (parameters.Ropes.Spacing / 2) - inside - (thickness / 2), (parameters.Ropes.Spacing / 2) + inside + (thickness / 2));

        // Between the ropes; beside them where these hang too close.
        var middle = between > thickness ? between : beside;
        var count = (int)Math.Ceiling((line.To - line.From) / longest);
        var length = (line.To - line.From) / count;
        var half = rules.Fit / 2;
        List<double> cuts = [.. Enumerable.Range(0, count + 1).Select(i => line.From + (i * length))];
        foreach (var (name, z) in new[] { ("left", -middle), ("right", middle) })
        {
            for (var i = 0; i < count; i++)
            {
                var top = line.Between(cuts[i] + half, cuts[i + 1] - half);
                yield return new PrintItem(
                    $"ground wall {name} {i + 1}", PrintKind.Ground, Placement.Identity,
                    [PrintBody.Wall($"wall {name} {i + 1}", PrintMaterials.Ground, top, line.Floor, z, thickness)]);
            }
        }

        var (a, b) = line.Landings;
        var clear = middle - (thickness / 2) - half;
        foreach (var (name, x, y) in new[] { ("A", line.From, a), ("B", line.To - thickness, b) })
        {
            yield return Box(
                $"ground end {name}",
                new Vector3d(x, line.Floor, -clear),
                new Vector3d(x + thickness, y, clear),
                new Placement(Vector3d.Zero, -Vector3d.UnitZ, Vector3d.UnitY, Vector3d.UnitX));
        }

        List<double> floors = count == 1 ? cuts : [cuts[0], .. cuts.Skip(1).Select(x => x - (length / 2)), cuts[^1]];
        var across = middle + (thickness / 2) + rules.OnBed(FloorBeyond);
        for (var i = 0; i + 1 < floors.Count; i++)
        {
            yield return Box(
                $"ground floor {i + 1}",
                new Vector3d(floors[i] + half, line.Floor - Math.Max(rules.Thinnest, thickness / 2), -across),
                new Vector3d(floors[i + 1] - half, line.Floor, across),
                new Placement(Vector3d.Zero, Vector3d.UnitX, -Vector3d.UnitZ, Vector3d.UnitY));
        }
    }

    private static PrintItem Box(string name, Vector3d low, Vector3d high, Placement lying) => new(
        name, PrintKind.Ground, lying, [PrintBody.Box(name, PrintMaterials.Ground, low, high, Placement.Identity)]);
}
