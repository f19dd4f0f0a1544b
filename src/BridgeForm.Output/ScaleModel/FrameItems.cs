using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>Frames in one piece, lying on the face towards A. Packers are thinner than a printer's line, and left out.</summary>
internal static class FrameItems
{
    /// <summary>One item a frame.</summary>
    public static IEnumerable<PrintItem> All(PrintSource source) => source.Model.Frames.Select(pose => Frame(source, pose));

    private static PrintItem Frame(PrintSource source, FramePose pose)
    {
        var parts = source.Of(pose.Name).Where(p => p.Id.Role != Role.Packer).Select(p => (p.Id, Part: Shaped(source, p, pose))).ToList();
        double Lowest(PrintPart part) => part.Points().Min(p => (p - pose.Node).Dot(pose.Along));
        var bed = parts.Min(p => Lowest(p.Part));
        ImmutableArray<PrintBody> bodies = [.. parts.Select(p => p.Part.DownTo(-pose.Along, Lowest(p.Part) - bed).Body())];
        return new PrintItem(
            pose.Name, PrintKind.Frame, new Placement(pose.Node, pose.Up.Cross(pose.Along), pose.Up, pose.Along), bodies);
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
