using System.Text.Json;
using BridgeForm.Loads;
using BridgeForm.Project;

namespace BridgeForm.Output.Report;

/// <summary>The parts of <c>ropes</c> about the set of marks that the file chose, the chain at each end and the tape.</summary>
internal static class RopeEndReport
{
    /// <summary>Writes them into the open object; <c>chain</c> and <c>tape</c> are null where the chain's lengths are not known.</summary>
    public static void Write(Utf8JsonWriter json, BridgeParameters parameters, RopeWork work)
    {
        json.WriteStartObject("new");
        json.WriteString("how", Word(work.Chosen.How));
        ReportJson.Number(json, "set_short_for", work.Chosen.Share);
        json.WriteString("means", work.Chosen.Sentence);
        ReportJson.List(json, "marks", work.Chosen.Marks, (j, mark) => j.WriteNumberValue(ReportJson.Clean(mark.Unstressed)));
        ReportJson.List(json, "hoisting", work.Chosen.Hoisting.Rows, RopeReport.Hoisting);
        json.WriteEndObject();
        var tape = RopeTape.Of(parameters, work);
        json.WritePropertyName("chain");
        Chain(json, tape?.Chain, work.Cut?.Travel);
        if (tape is null)
        {
            json.WriteNull("tape");
            return;
        }

        json.WriteStartObject("tape");
        ReportJson.Number(json, "cut_length", tape.CutLength);
        ReportJson.Number(json, "least_behind_saddle", tape.LeastBehindSaddle);
        ReportJson.List(json, "readings", tape.Readings, Reading);
        json.WriteEndObject();
    }

    private static string Word(NewRopeWay how) => how switch
    {
        NewRopeWay.StretchedBefore => "stretched-before",
        NewRopeWay.AsIs => "as-is",
        _ => "drawn-in",
    };

    private static void Chain(Utf8JsonWriter json, RopeChain? chain, TurnbuckleTravel? travel)
    {
        if (chain is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        ReportJson.Number(json, "shackle", chain.Shackle);
        json.WriteString("shackle_source", chain.ShackleSource);
        ReportJson.Number(json, "turnbuckle_closed", chain.Closed);
        json.WriteString("turnbuckle_source", chain.ClosedSource);
        ReportJson.Number(json, "turnbuckle_hung", chain.Hung);
        ReportJson.Number(json, "turnbuckle_open", chain.Open);
        ReportJson.Number(json, "length", chain.Length);
        ReportJson.Number(json, "take_in", travel?.In);
        ReportJson.Number(json, "let_out", travel?.Out);
        json.WriteEndObject();
    }

    private static void Reading(Utf8JsonWriter json, TapeReading reading)
    {
        json.WriteStartObject();
        json.WriteString("place", reading.Name);
        ReportJson.Number(json, "along", reading.Along);
        ReportJson.Number(json, "at_tension", reading.AtTension);
        json.WriteEndObject();
    }
}
