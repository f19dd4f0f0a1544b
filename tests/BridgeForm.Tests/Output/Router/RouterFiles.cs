using BridgeForm.Output.Dxf;
using BridgeForm.Output.Router;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Tests.Output.Dxf;

namespace BridgeForm.Tests.Output.Router;

/// <summary>Router and board files of two bridges, and of a base whose channels are notches of its outline.</summary>
internal static class RouterFiles
{
    // Trim at both ends, so that every board has wood to hold tabs to.
    private const string Tabs = "shop: { tabs: true, trim: 1 in, router_bit: 1/4 in }\n";

    public static BridgeModel Garden { get; } = Bridges.Build(Bridges.Garden + "\n" + Tabs);

    public static BridgeModel Metric { get; } = Bridges.Build(Bridges.Inclined + "\nshop: { router: { engrave: true } }\n");

    /// <summary>Bases of a bridge without keeper holes: all cuts are through, so a wide face is up.</summary>
    public static Piece Notched
    {
        get
        {
            var piece = Garden.Pieces.Last(p => p.Role == Role.Base);
            return piece with { Shape = piece.Shape with { Holes = [] } };
        }
    }

    public static IReadOnlyDictionary<string, byte[]> All { get; } = Write();

    public static TheoryData<string> Names => new(All.Keys);

    public static byte[] Bytes(BridgeForm.Output.Drawing.Sheet sheet, UnitSystem units)
    {
        using var stream = new MemoryStream();
        DxfWriter.Write(sheet, units, stream);
        return stream.ToArray();
    }

    public static DxfFile File(string name) => new(All[name]);

    private static SortedDictionary<string, byte[]> Write()
    {
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var (name, model) in new[] { ("garden", Garden), ("metric", Metric) })
        {
            foreach (var piece in model.Pieces)
            {
                if (RouterSheet.Draw(piece, model.Parameters.Shop, model.Parameters.Units) is { } sheet)
                {
                    files.Add($"{name}/router/{piece.Mark}", Bytes(sheet, model.Parameters.Units));
                }
            }

            // One board of each kind: boards cut alike differ in nothing but their number.
            var pieces = model.Pieces.ToDictionary(p => p.Mark, StringComparer.Ordinal);
            foreach (var board in model.StockPlan.Boards.DistinctBy(b => string.Join(' ', b.Pieces.Select(p => p.Mark)) + b.Length))
            {
                if (RouterBoard.Lay(board, pieces, model.Parameters.Shop).Sheet(model.Parameters.Units) is { } sheet)
                {
                    files.Add($"{name}/{RouterBoard.FileName(board, model.StockPlan)}", Bytes(sheet, model.Parameters.Units));
                }
            }
        }

        files.Add("notched", Bytes(RouterSheet.Draw(Notched, Garden.Parameters.Shop, UnitSystem.Imperial)!, UnitSystem.Imperial));
        return files;
    }
}
