using System.Text.Json;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Report;

/// <summary>One entry of <c>pieces</c>.</summary>
internal static class PieceReport
{
    /// <summary>Writes a piece.</summary>
    public static void Write(Utf8JsonWriter json, Piece piece)
    {
        json.WriteStartObject();
        json.WriteString("mark", piece.Mark);
        json.WriteString("role", RoleTable.Of(piece.Role).Name);
        json.WriteNumber("quantity", piece.Occurrences.Length);
        json.WriteString("stock", piece.Stock);
        json.WriteString("section", piece.Section);
        ReportJson.Number(json, "width", piece.Shape.Width);
        ReportJson.Number(json, "thickness", piece.Shape.Thickness);
        ReportJson.Number(json, "blank_length", piece.BlankLength);
        var (least, most) = piece.Shape.EdgeLengths();
        ReportJson.Number(json, "long_edge", most);
        ReportJson.Number(json, "short_edge", least);
        ReportJson.Number(json, "volume", piece.Volume);
        ReportJson.Number(json, "mass", piece.Mass);
        ReportJson.Number(json, "cut_area", piece.CutArea);
        ReportJson.Number(json, "exposed_cut_area", piece.ExposedCutArea);
        ReportJson.List(json, "ends", [piece.Near, piece.Far], End);
        ReportJson.List(json, "channels", piece.Shape.Channels, Channel);
        ReportJson.List(json, "holes", piece.Shape.Holes, Hole);
        if (Taper.Measure(piece) is { } taper)
        {
            WriteTaper(json, taper);
        }

        json.WriteBoolean("routable", piece.NotRoutable.IsEmpty);
        ReportJson.List(json, "not_routable", piece.NotRoutable, (j, reason) => j.WriteStringValue(reason));
        ReportJson.List(json, "occurrences", piece.Occurrences, (j, o) => j.WriteStringValue(o.Id));
        ReportJson.List(json, "turned", [.. piece.Occurrences.Where(o => o.Turned)], Lies);
        ReportJson.List(json, "rolled", [.. piece.Occurrences.Where(o => o.Turn.IsRolled)], Lies);
        json.WriteEndObject();
    }

    private static void Lies(Utf8JsonWriter json, Occurrence place)
    {
        json.WriteStartObject();
        json.WriteString("part", place.Id);
        json.WriteString("face", place.Turn.Face switch
        {
            FaceTurn.Same => "+z",
            FaceTurn.Opposite => "-z",
            FaceTurn.PlusY => "+y",
            FaceTurn.MinusY => "-y",
            _ => throw new ArgumentOutOfRangeException(nameof(place), place.Turn, "No such turn."),
        });
        json.WriteEndObject();
    }

    private static void End(Utf8JsonWriter json, EndCut cut)
    {
        json.WriteStartObject();
        ReportJson.Angle(json, "mitre_deg", cut.Mitre);
        ReportJson.Angle(json, "bevel_deg", cut.Bevel);
        ReportJson.Angle(json, "edge_deg", cut.Edge);
        json.WriteBoolean("in_reach", cut.InReach);
        ReportJson.Angle(json, "wedge_deg", cut.Wedge);
        json.WriteString("way", CutWays.Words(cut.Way));
        json.WriteEndObject();
    }

    private static void WriteTaper(Utf8JsonWriter json, Taper taper)
    {
        json.WriteStartObject("taper");
        ReportJson.Number(json, "thick", taper.Thick);
        ReportJson.Number(json, "thin", taper.Thin);
        ReportJson.Number(json, "width", taper.Width);
        ReportJson.Angle(json, "angle_deg", taper.Angle);
        json.WriteEndObject();
    }

    /// <summary>The piece's X begins at the left end of a base, so a channel's place needs no change.</summary>
    private static void Channel(Utf8JsonWriter json, Channel channel)
    {
        json.WriteStartObject();
        json.WriteString("face", FaceName(channel.Face));
        ReportJson.Number(json, "center", channel.Center);
        ReportJson.Number(json, "width", channel.Width);
        ReportJson.Number(json, "depth", channel.Depth);
        ReportJson.Angle(json, "floor_slope_deg", Elementary.Atan(channel.FloorSlope));
        json.WriteEndObject();
    }

    private static void Hole(Utf8JsonWriter json, Hole hole)
    {
        json.WriteStartObject();
        json.WriteString("face", FaceName(hole.Face));
        ReportJson.Number(json, "x", hole.X);
        ReportJson.Number(json, "across", hole.Across);
        ReportJson.Number(json, "diameter", hole.Diameter);
        ReportJson.Number(json, "depth", hole.Depth);
        json.WriteEndObject();
    }

    private static string FaceName(StockFace face) => face switch
    {
        StockFace.MinusY => "-y",
        StockFace.PlusY => "+y",
        StockFace.MinusZ => "-z",
        StockFace.PlusZ => "+z",
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "No such face."),
    };
}
