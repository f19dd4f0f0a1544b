using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>Sticks by themselves, lying as on the bridge: caps and handrails.</summary>
internal static class StickItems
{
    /// <summary>One item a stick.</summary>
    public static IEnumerable<PrintItem> All(PrintSource source) => source.Bays.SelectMany(bay =>
        source.Of(bay, Role.Cap, Role.Handrail).Select(p =>
        {
            var item = Flat(source, p, Vector3d.UnitY, Name(bay, p));
            return p.Id.Role == Role.Handrail ? Clear(source, bay, p, item) : item;
        }));

    // Rails and pickets grow inward, and a handrail to both sides: its pins are as much longer, but it stays on its side of the middle.
    private static PrintItem Clear(PrintSource source, string bay, PartOf handrail, PrintItem item)
    {
        var inward = (handrail.Id.Side == Side.Left ? 1 : -1) * Vector3d.UnitZ;
        double Grown(PartOf part)
        {
            var taken = source.Take(part);
            return source.Rules.Lacking(taken.Size(taken.Face(inward)));
        }

        var by = source.Of(bay, Role.Rail, Role.Picket).Select(Grown).DefaultIfEmpty().Max() + (Grown(handrail) / 2);
        var room = item.Bodies.SelectMany(b => b.Points).Min(p => -p.Dot(inward)) - (source.Rules.Fit / 2);
        by = Math.Min(by, room);
        return by > 0
            ? item with
            {
                Lying = item.Lying with { Origin = item.Lying.Origin + (by * inward) },
                Bodies = [.. item.Bodies.Select(b => b with { Points = [.. b.Points.Select(p => p + (by * inward))] })],
            }
            : item;
    }

    /// <summary>Name of a stick: bay, role, side and number.</summary>
    public static string Name(string bay, PartOf part) => string.Join(
        ' ',
        new[]
        {
            bay, RoleTable.Of(part.Id.Role).Name, part.Id.Side switch { Side.Left => "left", Side.Right => "right", _ => "" },
            part.Id.Number > 0 ? Numbers.Fixed(part.Id.Number, 0) : "",
        }.Where(w => w.Length > 0));

    /// <summary>A stick on the face that looks away from a direction, moved in its place where it stands on what was thickened.</summary>
    public static PrintItem Flat(PrintSource source, PartOf part, Vector3d up, string name, double raised = 0) =>
        Lying(source.Take(part).ThickEnoughBothWays(up).Moved(raised * up), up, name);

    /// <summary>A part as it is printed, on the face that looks away from a direction.</summary>
    public static PrintItem Lying(PrintPart shaped, Vector3d up, string name)
    {
        var (along, face) = (shaped.Place.X, shaped.Place.DirectionToWorld(shaped.Face(up)));
        var lying = new Placement(shaped.Place.Origin, along, face.Cross(along), face);
        return new PrintItem(name, PrintKind.Stick, lying, [shaped.Body()]);
    }
}
