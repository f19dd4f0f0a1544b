using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>
/// A cut stick with its holes round. The solid has prisms for them, and its faces meet as those of the real body do: the sides of a
/// prism become the halves of a wall, corners between two sides vanish, and what is left of its edges becomes arcs. Corners where
/// wall and planes meet move to where these meet exactly.
/// </summary>
internal static class RoundedSolid
{
    /// <summary>
    /// The body; a round stick with plain ends is a cylinder. A hole keeps its flat sides where it meets another hole or grazes an edge,
    /// so that round and flat would not meet alike.
    /// </summary>
    public static ExactBody Build(CutStock stock, Solid solid)
    {
        if (RoundBody.Of(stock) is { } cylinder)
        {
            return cylinder;
        }

        RoundHole[] holes = [.. stock.Holes.Select(h => RoundHole.Of(stock, h))];
        var flat = new HashSet<int>();
        for (var i = 0; i < holes.Length; i++)
        {
            for (var k = 0; k < i; k++)
            {
                if (holes[i].Meets(holes[k]))
                {
                    flat.UnionWith([i, k]);
                }
            }
        }

        while (true)
        {
            var left = flat.Count;
            var walls = HoleWalls.Find(solid, holes, flat);
            var corners = MovedCorners.Find(walls, flat);
            if (flat.Count == left && new BodyFaces(walls, corners, flat).Build() is { } body)
            {
                return body;
            }
        }
    }
}
