using System.Collections.Immutable;
using BridgeForm.Output.Gltf;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>A part that files of solids show: a stick, a plate or bolt, a landing, a net. Ropes are judged by themselves.</summary>
/// <param name="Name">Its name in IFC and of its instance in STEP.</param>
/// <param name="Path">Its path in USD, below the bridge.</param>
/// <param name="Tag">Its mark; null where it is no part of this bridge.</param>
/// <param name="Bodies">What it is made of.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Material">Of <see cref="GltfMaterials"/>.</param>
internal sealed record ShownPart(
    string Name, string Path, string? Tag, ImmutableArray<(CutStock Shape, Solid Solid)> Bodies, Placement Place, int Material)
{
    /// <summary>Volume of its solids, m³.</summary>
    public double Volume => Bodies.Sum(b => b.Solid.Volume);

    /// <summary>All corners in some axes.</summary>
    public List<Vector3d> Corners(Placement place) => [.. Bodies.SelectMany(b => b.Solid.Placed(place).Vertices)];

    /// <summary>All of a bridge.</summary>
    public static ImmutableArray<ShownPart> Of(BridgeModel model) =>
    [
        .. model.Pieces.SelectMany(p => p.Occurrences.Select(o => new ShownPart(
            o.Id, Usd(o.Id), p.Mark, [(p.Shape, p.Solid)], o.Placement, GltfMaterials.Of(p, model.Parameters)))),
        .. model.Steel().SelectMany(s => s.Places.Select(p => new ShownPart(
            p.Id, "joints/" + Usd(p.Id.Replace('/', '_')), s.Name, [.. s.Bodies.Select(b => (b, b.ToSolid().Value))], p.Place,
            GltfMaterials.Rope))),
        .. model.Landings().Select(l => new ShownPart(
            "landings/" + l.Id, "landings/" + Usd(l.Id.Replace('/', '_')), null, [(l.Body, l.Body.ToSolid().Value)], l.Place,
            GltfMaterials.Treated)),
        .. model.Nets().Select(n => new ShownPart(
            n.Id, "nets/" + Usd(n.Id.Replace('/', '_')), null, [(n.Body, n.Body.ToSolid().Value)], n.Place, GltfMaterials.Netting)),
    ];

    private static string Usd(string id) => id.Replace('-', '_');
}
