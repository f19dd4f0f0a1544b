using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>Ropes as square bars from frame to frame, in lengths that the bed takes and that end in a base's channel.</summary>
internal static class RopeItems
{
    /// <summary>Lengths of the left rope, then of the right one.</summary>
    /// <param name="source">The bridge.</param>
    /// <param name="longest">Longest that lies on the bed, metres of the bridge.</param>
    public static IEnumerable<PrintItem> All(PrintSource source, double longest)
    {
        foreach (var (name, sign) in new[] { (RopeIds.Left, -1), (RopeIds.Right, 1) })
        {
            var nodes = source.Model.Frames.Select((_, i) => Node(source, i, sign)).ToList();
            var number = 1;
            string Name(int node) => source.Model.Frames[node].Name;
            for (var from = 0; from < nodes.Count - 1; number++)
            {
                var to = from + 1;
                while (to < nodes.Count - 1 && (nodes[to + 1] - nodes[from]).Length <= longest)
                {
                    to++;
                }

                yield return Length(source, nodes, from, to, $"rope {name} {number}, {Name(from)} to {Name(to)}");
                from = to;
            }
        }
    }

    // A bar thicker than the rope hangs as much deeper, so that it still lies at the channel's floor; and by what it rises from its
    // bend over the frame to the base's edges, where the rope itself lies round.
    private static Vector3d Node(PrintSource source, int frame, int sign)
    {
        var parameters = source.Model.Parameters;
        var frames = source.Model.Frames;
        var reach = parameters.Ropes.Rope.Radius + parameters.Frames.Channel.Liner;
        var deeper = Math.Max(0, (source.Rules.RopeBar(parameters) / 2) - reach) + source.Rules.Fit;
        if (!frames[frame].IsEnd)
        {
            var after = (frames[frame + 1].Node - frames[frame].Node).Normalized();
            var middle = ((frames[frame].Node - frames[frame - 1].Node).Normalized() + after).Normalized();
            deeper += Math.Max(0, middle.Cross(after).Z / middle.Dot(after)) * source.Rules.FrameAlong(parameters) / 2;
        }

        return frames[frame].Node - (deeper * frames[frame].Up) + (sign * parameters.Ropes.Spacing / 2 * Vector3d.UnitZ);
    }

    private static PrintItem Length(PrintSource source, List<Vector3d> nodes, int from, int to, string name)
    {
        var bar = source.Rules.RopeBar(source.Model.Parameters);
        var diameter = source.Model.Parameters.Ropes.Rope.Diameter;
        var thicker = bar > diameter + Tolerances.RoundOff
            ? $"{source.Rules.Printed(diameter)} mm printed {source.Rules.Printed(bar)} mm square"
            : "";
        var bodies = Enumerable.Range(from, to - from).Select(i =>
        {
            var along = (nodes[i + 1] - nodes[i]).Normalized();
            var place = Placement.FromLengthAndThickness(nodes[i], along, Vector3d.UnitZ);
            var stock = new CutStock(bar, bar, End(place, nodes, i, from, to, -1, source), End(place, nodes, i + 1, from, to, 1, source));
            return PrintBody.Of($"{name}, bay {i + 1}", Gltf.GltfMaterials.Rope, stock.ToSolid().Value, place) with { Thicker = thicker };
        });
        var chord = (nodes[to] - nodes[from]).Normalized();
        var lying = new Placement(nodes[from], chord, Vector3d.UnitZ.Cross(chord), Vector3d.UnitZ);
        return new PrintItem(name, PrintKind.Stick, lying, [.. bodies]);
    }

    // Mitred over the frame: into its neighbour where they are one piece, short of it where they are two.
    private static Plane End(Placement bar, List<Vector3d> nodes, int node, int from, int to, int sign, PrintSource source)
    {
        var before = nodes[node] - nodes[Math.Max(node - 1, 0)];
        var after = nodes[Math.Min(node + 1, nodes.Count - 1)] - nodes[node];
        var sum = (before.Length > 0 ? before.Normalized() : before) + (after.Length > 0 ? after.Normalized() : after);
        var isEnd = node == from || node == to;
        return bar.ToLocal(Plane.Through(nodes[node], sign * sum).Shifted(isEnd ? -source.Rules.Fit / 2 : source.Rules.Join));
    }
}
