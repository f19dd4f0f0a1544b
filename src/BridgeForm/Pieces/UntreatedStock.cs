using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm.Pieces;

/// <summary>A stock in use that is not treated.</summary>
/// <param name="Stock">Name of the stock.</param>
/// <param name="Durable">
/// Naturally durable heartwood; false: wood that is not, which no field preservative on its cuts makes fit for outdoors.
/// </param>
public sealed record UntreatedStock(string Stock, bool Durable)
{
    /// <summary>All of which some piece is cut, in the order of the project file.</summary>
    /// <param name="pieces">Pieces of the bridge.</param>
    /// <param name="stock">Lumber of the project file.</param>
    public static ImmutableArray<UntreatedStock> List(ImmutableArray<Piece> pieces, ImmutableArray<StockParameters> stock) =>
    [
        .. stock.Where(s => !s.Treated && pieces.Any(p => string.Equals(p.Stock, s.Name, StringComparison.Ordinal)))
            .Select(s => new UntreatedStock(s.Name, s.Durable)),
    ];
}
