using System.Text.Json;
using BridgeForm.Output.Router;
using BridgeForm.Roles;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Report;

/// <summary>The parts <c>stock</c>, <c>stock_jobs</c>, <c>treatment</c>, <c>hardware</c> and <c>assembly</c>.</summary>
internal static class StockReport
{
    /// <summary>Boards, then the jobs they belong to with what proves each plan.</summary>
    public static void Write(Utf8JsonWriter json, BridgeModel model)
    {
        var pieces = model.Pieces.ToDictionary(p => p.Mark, StringComparer.Ordinal);
        ReportJson.List(json, "stock", [.. model.StockPlan.Boards], (j, board) => Board(
            j, board, RouterBoard.FileName(board, model.StockPlan), RouterBoard.Lay(board, pieces, model.Parameters.Shop)));
        ReportJson.List(json, "stock_jobs", model.StockPlan.Jobs, Job);
    }

    /// <summary>What else the shop needs: preservative, hardware, order of building.</summary>
    public static void Shop(Utf8JsonWriter json, BridgeModel model)
    {
        var plan = TreatmentPlan.Plan(model.Pieces, model.Parameters);
        json.WriteStartObject("treatment");
        json.WriteNumber("coats", plan.Coats);
        ReportJson.Number(json, "coverage", plan.Coverage);
        ReportJson.Number(json, "area", plan.Area);
        ReportJson.Number(json, "volume", plan.Volume);
        json.WriteString("source", TreatmentPlan.Source);
        json.WriteEndObject();
        ReportJson.List(json, "hardware", model.Hardware(), Hardware);
        ReportJson.List(json, "assembly", model.Assembly(), Step);
    }

    private static void Board(Utf8JsonWriter json, PlannedBoard board, string file, RouterBoard router)
    {
        json.WriteStartObject();
        json.WriteNumber("number", board.Number);
        json.WriteString("stock", board.Stock);
        json.WriteString("section", board.Section);
        ReportJson.Number(json, "length", board.Length);
        ReportJson.List(json, "pieces", board.Pieces, (j, p) => j.WriteStringValue(p.Mark));
        ReportJson.List(json, "starts", board.Pieces, (j, p) => j.WriteNumberValue(ReportJson.Clean(p.Start)));
        ReportJson.List(json, "turns", board.Pieces, (j, p) => j.WriteStringValue(TurnName(p.Turn)));
        ReportJson.List(json, "shares_cut", board.Pieces, (j, p) => j.WriteBooleanValue(p.SharesCut));
        ReportJson.Number(json, "leftover", board.Leftover);
        ReportJson.Number(json, "waste", board.Waste);
        ReportJson.Number(json, "cost", board.Price);
        json.WriteString("router_file", router.Reason is null ? file : null);
        json.WriteString("not_routable", router.Reason ?? router.LeftOut);
        json.WriteEndObject();
    }

    private static string TurnName(BlankTurn turn) => turn switch
    {
        BlankTurn.None => "none",
        BlankTurn.EndForEnd => "end-for-end",
        BlankTurn.EndForEndOver => "end-for-end-over",
        BlankTurn.Over => "over",
        _ => throw new ArgumentOutOfRangeException(nameof(turn), turn, "No such turn."),
    };

    private static void Job(Utf8JsonWriter json, StockJob job)
    {
        json.WriteStartObject();
        json.WriteString("stock", job.Stock);
        json.WriteString("section", job.Section);
        json.WriteNumber("boards", job.Boards.Length);
        json.WriteString("objective", job.ByPrice ? "cost" : "length");
        ReportJson.Number(json, "total", job.Total);
        ReportJson.Number(json, "bound", job.Bound);
        ReportJson.Number(json, "bound_in_whole_boards", job.RoundedBound);
        ReportJson.Number(json, "gap", job.Gap);
        json.WriteBoolean("proven_best", job.Proven);
        json.WriteBoolean("search_ended", job.SearchEnded);
        ReportJson.Number(json, "bought", job.Bought);
        ReportJson.Number(json, "board_feet", job.BoardFeet);
        ReportJson.Number(json, "volume", job.Volume);
        ReportJson.Number(json, "mass", job.Mass);
        ReportJson.Number(json, "mass_fresh", job.FreshMass);
        json.WriteNumber("spare", job.Spare?.Count ?? 0);
        ReportJson.Number(json, "spare_length", job.Spare?.Length);
        ReportJson.List(json, "too_long", job.TooLong, (j, p) => j.WriteStringValue(p.Mark));
        json.WriteEndObject();
    }

    private static void Hardware(Utf8JsonWriter json, HardwareItem item)
    {
        json.WriteStartObject();
        json.WriteString("item", item.Item);
        ReportJson.Number(json, "quantity", item.Quantity);
        json.WriteString("where", item.Where);
        json.WriteString("note", item.Note);
        json.WriteString("source", item.Source);
        json.WriteEndObject();
    }

    private static void Step(Utf8JsonWriter json, AssemblyStep step)
    {
        json.WriteStartObject();
        json.WriteNumber("step", step.Number);
        json.WriteNumber("stage", step.Stage);
        json.WriteString("where", step.Where);
        json.WriteString("work", WorkName(step.Work));
        ReportJson.List(json, "parts", step.Parts, (j, part) => j.WriteStringValue(part));
        json.WriteEndObject();
    }

    private static string WorkName(AssemblyWork work) => work switch
    {
        AssemblyWork.BuildFrame => "build-frame",
        AssemblyWork.SetEndFrame => "set-end-frame",
        AssemblyWork.HangFrame => "hang-frame",
        AssemblyWork.LayDeck => "lay-deck",
        AssemblyWork.FixRails => "fix-rails",
        AssemblyWork.FixCaps => "fix-caps",
        _ => throw new ArgumentOutOfRangeException(nameof(work), work, "No such work."),
    };
}
