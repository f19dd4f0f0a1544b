using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Router;

/// <summary><c>router/MARK.dxf</c>: what is cut of one piece, at true size, and the wood to lay it on.</summary>
public static class RouterSheet
{
    /// <summary>The sheet of a piece; null when a router cannot make it in one set-up.</summary>
    public static Sheet? Draw(Piece piece, ShopParameters shop, UnitSystem system)
    {
        var setup = Routing.Setup(piece.Shape, shop.Router);
        if (!setup.Obstacles.IsEmpty)
        {
            return null;
        }

        var cuts = new RouterCuts(system, shop.Router.Engrave).Draw(piece, setup);
        var layers = RouterLayers.Gather(cuts);
        return new Sheet(piece.Mark, layers, cuts)
        {
            Remarks = [
                .. RouterRemarks.Head(piece, setup, system),
                .. ((string[])[RouterRemarks.Depth(piece, setup, system)]).Where(r => r.Length > 0),
                .. RouterRemarks.Tail(layers, setup.Bit, system),
            ],
        };
    }
}

/// <summary>What stands at the head of a router file: the wood, the bit, and what each layer asks for.</summary>
internal static class RouterRemarks
{
    /// <summary>Of one piece.</summary>
    public static IEnumerable<string> Head(Piece piece, RouterSetup setup, UnitSystem system)
    {
        yield return $"{piece.Mark} {RoleTable.Of(piece.Role).Printed}, {piece.Occurrences.Length} off, {piece.Stock} {piece.Section}";
        yield return $"{(setup.IsWide ? "Wide" : "Narrow")} face up, {Exact(Height(piece, setup), system)} thick as it lies";
        if (!setup.IsWide)
        {
            yield return "Cut both ends with the saw first: the blank is the finished length";
        }
    }

    /// <summary>What must be looked at where the file does not say how deep the bit cuts; empty where it does.</summary>
    public static string Depth(Piece piece, RouterSetup setup, UnitSystem system) => setup.Bit.Reach is null
        ? $"Not checked: the bit must cut {Exact(Routing.Deepest(piece.Shape, setup.FaceUp), system)} deep, and the project file "
            + "does not say "
            + "how deep it does (shop.router.bits, reach)"
        : "";

    /// <summary>Bit, unit, layers, caution.</summary>
    public static IEnumerable<string> Tail(ImmutableArray<SheetLayer> layers, RouterBit bit, UnitSystem system) =>
    [
        "Bit " + Exact(bit.Diameter, system),
        system == UnitSystem.Imperial ? "Units: inches" : "Units: millimeters",
        .. layers.Select(l => RouterLayers.Words(l.Name)),
        Caution.Text,
    ];

    /// <summary>From the bed to the face that is up, metres.</summary>
    public static double Height(Piece piece, RouterSetup setup) => setup.IsWide ? piece.Shape.Thickness : piece.Shape.Width;

    /// <summary>A size with all the digits a machine wants.</summary>
    public static string Exact(double metres, UnitSystem system) => system == UnitSystem.Imperial
        ? NumberText.Rounded(metres / Units.MetresPerInch, 4) + " in"
        : NumberText.Rounded(metres * 1000, 3) + " mm";
}

/// <summary>Faces of a stick as views and directions.</summary>
internal static class RouterFaces
{
    /// <summary>Out of the wood.</summary>
    public static Vector3d Outward(StockFace face) => face switch
    {
        StockFace.MinusY => -Vector3d.UnitY,
        StockFace.PlusY => Vector3d.UnitY,
        StockFace.MinusZ => -Vector3d.UnitZ,
        StockFace.PlusZ => Vector3d.UnitZ,
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "No such face."),
    };

    /// <summary>The face seen from above the machine: X of the piece to the right, turned, never mirrored.</summary>
    public static PageView View(StockFace face)
    {
        var toward = Outward(face);
        return new PageView(toward.Cross(Vector3d.UnitX), toward);
    }
}
