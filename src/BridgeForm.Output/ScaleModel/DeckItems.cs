using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>
/// The deck of a bay in one piece: boards lie on the bed as they lie on the bridge, and the lower half of their thickness, or as much as
/// is printed at all, is one plate; treads lie on their faces, the stringers on them.
/// </summary>
internal static class DeckItems
{
    /// <summary>Name of a plate that is as thick as the boards.</summary>
    public const string Closed = "plate that joins the boards and fills their gaps";

    private const string Plate = "plate that joins the boards";

    /// <summary>One item a bay, and cleats of treads by themselves.</summary>
    public static IEnumerable<PrintItem> All(PrintSource source) => source.Bays.SelectMany(bay => Bay(source, bay));

    /// <summary>The surface of a bay's deck, and that of the cleats on it; and by how much each is printed higher.</summary>
    public static IEnumerable<(Plane Surface, double Raised)> Surfaces(PrintSource source, string bay)
    {
        var raised = 0.0;
        foreach (var laid in new[] { source.Of(bay, Role.Board, Role.Tread), source.Of(bay, Role.Cleat) }.Where(l => l.Count > 0))
        {
            var parts = laid.Select(p => source.Take(p)).ToList();
            raised += parts.Max(p => source.Rules.Lacking(p.Size(p.Face(Vector3d.UnitY))));
            var face = parts[0].Face(Vector3d.UnitY);
            var top = parts[0].Place.ToWorld(parts[0].Size(face) / 2 * face);
            yield return (Plane.Through(top, parts[0].Place.DirectionToWorld(face)), raised);
        }
    }

    private static IEnumerable<PrintItem> Bay(PrintSource source, string bay)
    {
        var bearers = source.Of(bay, Role.Board, Role.Stringer);
        if (bearers.Count == 0)
        {
            yield break;
        }

        var first = source.Take(bearers[0]);
        var up = first.Place.DirectionToWorld(first.Face(Vector3d.UnitY));
        var along = first.Place.X.X < 0 ? -first.Place.X : first.Place.X;
        var cleats = source.Of(bay, Role.Cleat);
        if (bearers[0].Id.Role == Role.Board)
        {
            var lying = new Placement(first.Place.Origin, along, up.Cross(along), up);
            var boards = bearers.Select(p => source.Take(p).ThickEnoughBothWays(up)).ToList();
            var rise = boards.Max(b => b.Size(b.Face(up))) - first.Size(first.Face(up));
            ImmutableArray<PrintBody> bodies =
            [
                .. boards.Select(b => b.Body()),
                .. boards.Count > 1 ? [Join(source, boards, lying)] : Array.Empty<PrintBody>(),
                .. cleats.Select(c => source.Take(c).ThickEnoughBothWays(up).Moved(rise * up).Grown(-up, source.Rules.Join).Body()),
            ];
            yield return new PrintItem($"{bay} deck", PrintKind.Deck, lying, bodies);
            yield break;
        }

        var flat = source.Of(bay, Role.Tread).Select(p => source.Take(p)).ToList();
        var treads = flat.Select(p => p.ThickEnoughBothWays(up).Body());
        var raised = flat.Select(p => source.Rules.Lacking(p.Size(p.Face(up)))).DefaultIfEmpty().Max();
        var stringers = bearers.Select(p => source.Take(p).ThickEnoughBothWays(-up).Grown(up, source.Rules.Join).Body());
        yield return new PrintItem(
            $"{bay} deck", PrintKind.Deck, new Placement(first.Place.Origin, along, along.Cross(up), -up), [.. treads, .. stringers]);
        foreach (var cleat in cleats)
        {
            yield return StickItems.Flat(source, cleat, up, StickItems.Name(bay, cleat), raised);
        }
    }

    private static PrintBody Join(PrintSource source, List<PrintPart> boards, Placement lying)
    {
        List<List<Vector3d>> corners = [.. boards.Select(b => b.Points().Select(lying.ToLocal).ToList())];
        var all = corners.SelectMany(c => c).ToList();
        var bottom = corners.Max(c => c.Min(p => p.Z));
        var top = corners.Min(c => c.Max(p => p.Z));
        var from = corners.Max(c => c.Where(p => p.X < Middle(c)).Max(p => p.X)) + source.Rules.Join;
        var to = corners.Min(c => c.Where(p => p.X >= Middle(c)).Min(p => p.X)) - source.Rules.Join;
        var thick = Math.Min(top - bottom, Math.Max((top - bottom) / 2, source.Rules.Thinnest));
        return PrintBody.Box(
            thick < top - bottom - Tolerances.Corner ? Plate : Closed,
            boards[0].Body().Material,
            new Vector3d(from, all.Min(p => p.Y) + source.Rules.Join, bottom),
            new Vector3d(to, all.Max(p => p.Y) - source.Rules.Join, bottom + thick),
            lying);
    }

    private static double Middle(List<Vector3d> corners) => (corners.Min(p => p.X) + corners.Max(p => p.X)) / 2;
}
