using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>Frames in one piece, lying on the face towards A. Packers and shims are thinner than a printer's line and left out; so
/// are newels, which stand on the landing.</summary>
internal static class FrameItems
{
    /// <summary>One item a frame.</summary>
    public static IEnumerable<PrintItem> All(PrintSource source)
    {
        var bays = source.Bays.ToList();
        return source.Model.Frames.Select((pose, i) => Frame(source, pose, i > 0 ? bays[i - 1] : null));
    }

    private static PrintItem Frame(PrintSource source, FramePose pose, string? bayBefore)
    {
        var parts = source.Of(pose.Name).Where(p => p.Id.Role is not (Role.Packer or Role.Shim or Role.Newel))
            .Select(p => (p.Id, Part: Shaped(source, p, pose))).ToList();
        double Lowest(PrintPart part) => part.Points().Min(p => (p - pose.Node).Dot(pose.Along));
        var bed = parts.Min(p => Lowest(p.Part));
        ImmutableArray<PrintBody> bodies =
        [
            .. parts.Select(p => Below(source, pose, p.Id, p.Part, p.Part.DownTo(-pose.Along, Lowest(p.Part) - bed), bayBefore).Body()),
        ];
        return new PrintItem(
            pose.Name, PrintKind.Frame, new Placement(pose.Node, pose.Up.Cross(pose.Along), pose.Up, pose.Along), bodies);
    }

    // What is added on the side towards A keeps below what lies on it there.
    private static PrintPart Below(
        PrintSource source, FramePose pose, PartId id, PrintPart part, PrintPart grown, string? bay) => id.Role switch
        {
            Role.Base => UnderDeck(source, pose, part, grown, bay),
            Role.Post => UnderCap(source, pose, id.Side, part, grown, bay),
            _ => grown,
        };

    private static PrintPart UnderCap(PrintSource source, FramePose pose, Side side, PrintPart part, PrintPart grown, string? bay)
    {
        if (ReferenceEquals(part, grown) || bay is null || source.Of(bay, Role.Cap).Find(c => c.Id.Side == side) is not { } lying)
        {
            return grown;
        }

        var cap = source.Take(lying);
        var face = cap.Face(Vector3d.UnitY);
        var up = cap.Place.DirectionToWorld(face);
        return up.Dot(pose.Along) < 0
            ? grown.Ripped(Plane.Through(cap.Place.ToWorld(-cap.Size(face) / 2 * face), up))
            : grown;
    }

    // Where the deck falls towards A, what is added to the base on that side keeps below it.
    private static PrintPart UnderDeck(PrintSource source, FramePose pose, PrintPart part, PrintPart grown, string? bay)
    {
        if (ReferenceEquals(part, grown) || bay is null || source.Of(bay, Role.Board, Role.Stringer).FirstOrDefault() is not { } carried)
        {
            return grown;
        }

        var deck = source.Take(carried);
        var up = deck.Place.DirectionToWorld(deck.Face(Vector3d.UnitY));
        var corners = part.Points().ToList();
        var top = corners.Max(p => p.Dot(pose.Up)) - Tolerances.Corner;
        var edge = corners.Where(p => p.Dot(pose.Up) > top).MinBy(p => p.Dot(pose.Along));
        return up.Dot(pose.Along) < 0 ? grown.Ripped(Plane.Through(edge, up)) : grown;
    }

    // Thin parts grow away from the deck and from the channels' floors.
    private static PrintPart Shaped(PrintSource source, PartOf part, FramePose pose)
    {
        var outward = (part.Id.Side == Side.Left ? -1 : 1) * Vector3d.UnitZ;
        return part.Id.Role switch
        {
            Role.Base => source.Take(part).ThickEnoughBothWays(-pose.Up)
                .Channelled(source.Rules.RopeBar(source.Model.Parameters) + (3 * source.Rules.Fit)),
            Role.Post => source.Take(part).ThickEnoughBothWays(outward).Joined(near: true, far: false),
            _ => source.Take(part).ThickEnoughBothWays(outward).Joined(near: true, far: true),
        };
    }
}
