using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Bodies of a model where they stand, by part id.</summary>
internal sealed class BridgeShapes
{
    private readonly BridgeModel _model;
    private readonly Dictionary<string, (Piece Piece, Placement Placement)> _parts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Shape> _shapes = new(StringComparer.Ordinal);

    /// <summary>Finds every part of a model.</summary>
    public BridgeShapes(BridgeModel model)
    {
        _model = model;
        Layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        foreach (var piece in model.Pieces)
        {
            _shapes.Add(piece.Mark, Shape.Build(piece.Shape));
            foreach (var place in piece.Occurrences)
            {
                _parts.Add(place.Id, (piece, place.Placement));
            }
        }
    }

    /// <summary>Lines that parts lie on.</summary>
    public BridgeLayout Layout { get; }

    /// <summary>The piece that stands at a place; null when nothing does.</summary>
    public Piece? PieceAt(string id) => _parts.TryGetValue(id, out var part) ? part.Piece : null;

    /// <summary>Facts of a part's role.</summary>
    public RoleFacts RoleOf(string id) => RoleTable.Of(_parts[id].Piece.Role);

    /// <summary>
    /// The first part of each role that runs along a bay's deck, and all that lie across it: what a look from the side shows.
    /// </summary>
    public IEnumerable<string> DeckFromSide(int bay) => Ids(BayGroup(bay))
        .Where(i => RoleOf(i).Section == DrawingSection.Deck)
        .GroupBy(i => RoleOf(i).Role)
        .SelectMany(parts => RoleTable.Of(parts.Key).Axis == RoleAxis.Along ? parts.Take(1) : parts);

    /// <summary>A part's axes in the world.</summary>
    public Placement PlacementOf(string id) => _parts[id].Placement;

    /// <summary>Ids of a frame's or bay's parts in order: frames first, then bays.</summary>
    public IEnumerable<string> Ids(int group) => _model.Groups[group].MemberIds;

    /// <summary>Group of bay <paramref name="bay"/> (1 …).</summary>
    public int BayGroup(int bay) => _model.Frames.Length + bay - 1;

    /// <summary>A part's body in the world.</summary>
    public Shape Of(string id)
    {
        var (piece, placement) = _parts[id];
        return _shapes[piece.Mark].Placed(placement);
    }

    /// <summary>Every part of some frames and bays.</summary>
    public IEnumerable<Shape> Of(IEnumerable<int> groups) => groups.SelectMany(Ids).Select(Of);

    /// <summary>All parts.</summary>
    public IEnumerable<Shape> All() => Of(Enumerable.Range(0, _model.Groups.Length));

    /// <summary>All parts but those of a role.</summary>
    public IEnumerable<Shape> Without(Role role) =>
        Enumerable.Range(0, _model.Groups.Length).SelectMany(Ids).Where(i => RoleOf(i).Role != role).Select(Of);

    /// <summary>The first so many metres of a bay's part, or the last, as a saw would leave it: for sections at a frame.</summary>
    /// <param name="id">The part.</param>
    /// <param name="length">How much of it.</param>
    /// <param name="atB">Its last metres, towards B.</param>
    public (Shape Shape, Placement Placement, CutStock Stock) Stub(string id, double length, bool atB)
    {
        var (piece, placement) = _parts[id];

        // An occurrence turned end for end begins with the piece's far end. The stub ends parallel to where it begins.
        var fromFar = placement.X.X < 0 != atB;
        var stock = piece.Shape with { Channels = [], Holes = [] };
        var cut = fromFar
            ? stock with { Near = stock.Far.Flipped().Shifted(length) }
            : stock with { Far = stock.Near.Flipped().Shifted(length) };
        return (Shape.Build(cut).Placed(placement), placement, cut);
    }

    /// <summary>The ropes as chains of square bars as thick as the rope, from behind support A on.</summary>
    /// <param name="bays">How many bays they run; all and beyond support B when left out.</param>
    public IEnumerable<Shape> Ropes(int? bays = null)
    {
        var end = bays is { } n && n < Layout.Bays ? Layout.Poses[n].Node.X : double.PositiveInfinity;
        return _model.RopeLines.SelectMany(r =>
        {
            var points = RopePoints(r);
            return points.Zip(points.Skip(1), (a, b) => (a, b)).Where(p => p.a.X < end).Select(p => Bar(p.a, p.b, r.Radius));
        });
    }

    /// <summary>A rope's axis, rounded where it lies over its saddles.</summary>
    public Vector3d[] RopePoints(RopeLine line)
    {
        var (points, saddle) = (line.Points, Layout.Parameters.Saddle.Radius ?? (SaddleRadii * Layout.Parameters.Ropes.Rope.Diameter));
        return
        [
            points[0], .. Eased(points, 1, saddle), .. points[2..^2], .. Eased(points, points.Length - 2, saddle), points[^1],
        ];
    }

    /// <summary>The rope as it lies over its saddle: its two outlines would cross in a corner.</summary>
    private static IEnumerable<Vector3d> Eased(ImmutableArray<Vector3d> points, int corner, double radius)
    {
        var (before, at, after) = (points[corner - 1], points[corner], points[corner + 1]);
        var (u, v) = ((before - at).Normalized(), (after - at).Normalized());
        var cos = u.Dot(v);

        // From the corner to where an arc of that radius would begin.
        var length = Math.Min(
            radius * Math.Sqrt(Math.Max(0, 1 + cos) / Math.Max(1 - cos, Quantities.Tolerances.Level)),
            Math.Min((before - at).Length, (after - at).Length) / 2);
        if (length < radius * Quantities.Tolerances.Level)
        {
            yield return at;
            yield break;
        }

        const int steps = 6;
        for (var i = 0; i <= steps; i++)
        {
            var t = (double)i / steps;
            yield return at + (length * (((1 - t) * (1 - t) * u) + (t * t * v)));
        }
    }

    /// <summary>Radius of a saddle whose own is not given, in diameters of the rope (common practice, no source).</summary>
    private const double SaddleRadii = 8;

    private static Shape Bar(Vector3d from, Vector3d to, double radius)
    {
        var placement = Placement.FromLengthAndThickness(from, (to - from).Normalized(), Vector3d.UnitZ);
        var stock = new CutStock(
            2 * radius, 2 * radius, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, (to - from).Length));
        var shape = Shape.Build(stock);

        // Where one bar ends the next begins: only edges along the rope are drawn.
        return (shape with { Edges = [.. shape.Edges.Where(e => Math.Abs((e.To - e.From).X) > radius / 2)] }).Placed(placement);
    }
}
