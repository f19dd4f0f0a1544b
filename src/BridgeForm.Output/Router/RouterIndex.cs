using System.Globalization;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.Router;

/// <summary><c>router/index.csv</c>: one row a piece: its file with wood and bit, or why it has none.</summary>
public static class RouterIndex
{
    private static readonly string[] Head =
    [
        "Mark", "Quantity", "Role", "Stock", "Section", "File", "Face up", "Thickness as it lies", "Thickness as it lies (mm)", "Bit",
        "Bit (mm)", "Ends", "Note",
    ];

    /// <summary>The table as text.</summary>
    public static string Csv(BridgeModel model) => CsvText.Write(
        Head, model.Pieces.Select(p => Row(p, Routing.Setup(p.Shape, model.Parameters.Shop.Router), model.Parameters.Units)));

    private static IReadOnlyList<string> Row(Piece piece, RouterSetup setup, UnitSystem system) =>
    [
        piece.Mark,
        piece.Occurrences.Length.ToString(CultureInfo.InvariantCulture),
        RoleTable.Of(piece.Role).Name,
        CsvText.Users(piece.Stock),
        piece.Section,
        .. setup.Obstacles.IsEmpty ? Made(piece, setup, system) : Left(setup),
    ];

    private static IReadOnlyList<string> Made(Piece piece, RouterSetup setup, UnitSystem system) =>
    [
        $"router/{piece.Mark}.dxf",
        setup.IsWide ? "wide" : "narrow",
        .. Both(RouterRemarks.Height(piece, setup), system),
        .. Both(setup.Bit.Diameter, system),
        setup.IsWide ? "by the router" : "by the saw, before",
        RouterRemarks.Depth(piece, setup, system),
    ];

    private static IReadOnlyList<string> Left(RouterSetup setup) =>
        ["none", .. Enumerable.Repeat(string.Empty, 6), "left for the saw: " + string.Join(", ", setup.Obstacles)];

    private static IReadOnlyList<string> Both(double metres, UnitSystem system) =>
        [RouterRemarks.Exact(metres, system), Numbers.Fixed(metres * 1000, 3)];
}
