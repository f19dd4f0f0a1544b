using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>Sticks by themselves, lying as on the bridge: caps and handrails.</summary>
internal static class StickItems
{
    /// <summary>One item a stick.</summary>
    public static IEnumerable<PrintItem> All(PrintSource source) => source.Bays.SelectMany(bay =>
        source.Of(bay, Role.Cap, Role.Handrail)
            .Select(p => Flat(source, p, Vector3d.UnitY, $"{bay} {RoleTable.Of(p.Id.Role).Name} {Word(p.Id.Side)}".TrimEnd())));

    /// <summary>A stick on the face that looks down.</summary>
    public static PrintItem Flat(PrintSource source, PartOf part, Vector3d up, string name)
    {
        var shaped = source.Take(part).ThickEnoughBothWays(up);
        var (along, face) = (shaped.Place.X, shaped.Place.DirectionToWorld(shaped.Face(up)));
        var lying = new Placement(shaped.Place.Origin, along, face.Cross(along), face);
        return new PrintItem(name, PrintKind.Stick, lying, [shaped.Body()]);
    }

    private static string Word(Side side) => side switch { Side.Left => "left", Side.Right => "right", _ => "" };
}
