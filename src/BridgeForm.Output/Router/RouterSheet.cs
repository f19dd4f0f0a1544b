using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Output.Router;

/// <summary><c>router/MARK.dxf</c>: nothing but what is cut of one piece, at true size.</summary>
public static class RouterSheet
{
    /// <summary>The sheet of a piece; null when a router cannot make it in one set-up.</summary>
    public static Sheet? Of(Piece piece, ShopParameters shop)
    {
        var setup = Routing.Setup(piece.Shape, shop.RouterBit);
        if (!setup.Obstacles.IsEmpty)
        {
            return null;
        }

        var cuts = RouterCuts.Of(piece, setup, shop.RouterBit);
        return new Sheet(piece.Mark, RouterLayers.Of(cuts), cuts);
    }
}
