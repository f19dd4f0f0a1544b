using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Output.Gltf;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Output.Preview;

/// <summary>The description of a bridge that the page reads: <c>BridgeView</c> in <c>src/BridgeForm.Preview/src/view.ts</c>.</summary>
internal static class PreviewJson
{
    /// <summary>Micrometres: decimals of a length in metres.</summary>
    private const int Decimals = 6;

    /// <summary>Compact JSON, safe inside a page's script.</summary>
    public static byte[] Bytes(BridgeModel model)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, GltfJson.Options))
        {
            json.WriteStartObject();
            Head(json, model);
            PreviewVerdict.Write(json, model);
            List(json, "facts", PreviewFacts.Gather(model), Fact);
            var lifts = BridgeLayout.Lay(model.Parameters, model.Rope).Deck.Lifts;
            List(json, "frames", [.. model.Frames.Zip(lifts)], (j, f) => Frame(j, f.First, f.Second, model.Parameters));
            List(json, "bays", Bays(model), (j, b) => j.WriteStringValue(b));
            Leaving(json, model);
            List(json, "pieces", model.Pieces, (j, p) => Piece(j, p, model.Parameters));
            List(json, "cases", [.. PreviewCases(model)], (j, c) => Case(j, c, model));
            List(json, "checks", [.. CheckOrder.WorstFirst(model.Checks)], Check);
            PreviewSite.Write(json, model);
            List(json, "dimensions", PreviewDimensions.Side(model), PreviewDimensions.Write);
            List(json, "section", PreviewDimensions.Section(model), PreviewDimensions.Write);
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    /// <summary>A list of anything.</summary>
    public static void List<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(json, item);
        }

        json.WriteEndArray();
    }

    /// <summary>A length in metres, or an angle in radians.</summary>
    public static void Number(Utf8JsonWriter json, string name, double value) =>
        json.WriteNumber(name, Numbers.Rounded(value, Decimals));

    /// <summary>An unnamed row of numbers.</summary>
    public static void Row(Utf8JsonWriter json, params ReadOnlySpan<double> values)
    {
        json.WriteStartArray();
        foreach (var value in values)
        {
            json.WriteNumberValue(Numbers.Rounded(value, Decimals));
        }

        json.WriteEndArray();
    }

    /// <summary>Names of the bays, in order.</summary>
    private static ImmutableArray<string> Bays(BridgeModel model)
    {
        var frames = model.Frames.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        return [.. model.Groups.Select(g => g.Name).Where(name => !frames.Contains(name))];
    }

    private static void Head(Utf8JsonWriter json, BridgeModel model)
    {
        var parameters = model.Parameters;
        json.WriteString("name", parameters.Name);
        json.WriteString("lead", PreviewFacts.Lead(model));
        json.WriteString("verdict", PlainVerdict.Of(model));
        json.WriteString("caution", PreviewVerdict.CautionText(model));
        Number(json, "span", parameters.Site.Span);
        Number(json, "rise", parameters.Site.Rise);
        Number(json, "ropeLowY", model.Rope.HeightAt(parameters.Site.Span / 2));
        Number(json, "ropeSpacing", parameters.Ropes.Spacing);
        Number(json, "ropeRadius", parameters.Ropes.Rope.Radius);
        Number(json, "guard", PreviewFacts.Measured(model, "guard-height") ?? parameters.Frames.Post.Length);
        Number(json, "clearWidth", PreviewFacts.Measured(model, "clear-width") ?? 2 * parameters.Frames.Post.Foot);
        Number(json, "deckHalf", parameters.Frames.Post.Foot);
    }

    private static void Fact(Utf8JsonWriter json, PreviewFact fact)
    {
        json.WriteStartObject();
        json.WriteString("label", fact.Label);
        json.WriteString("text", fact.Text);
        json.WriteBoolean("key", fact.IsKey);
        json.WriteEndObject();
    }

    private static void Frame(Utf8JsonWriter json, FramePose pose, double lift, BridgeParameters parameters)
    {
        var levels = PreviewSite.Levels(pose, parameters);
        json.WriteStartObject();
        json.WriteString("name", pose.Name);
        Number(json, "x", pose.Node.X);
        Number(json, "y", pose.Node.Y);
        Number(json, "turn", Elementary.Atan2(pose.Along.Y, pose.Along.X));
        json.WriteBoolean("end", pose.IsEnd);
        Number(json, "bottom", levels.Bottom);
        Number(json, "deck", levels.Top + lift + parameters.Deck.Thickness);
        json.WriteEndObject();
    }

    /// <summary>How far parts leave their places when a frame is taken apart, by role.</summary>
    private static void Leaving(Utf8JsonWriter json, BridgeModel model)
    {
        json.WriteStartObject("leaving");
        foreach (var facts in model.Pieces.Select(p => p.Role).Distinct().Select(RoleTable.Of))
        {
            json.WritePropertyName(facts.Name);
            Row(json, facts.Leaves.Along, facts.Leaves.Up, facts.Leaves.Out);
        }

        json.WriteEndObject();
    }

    private static void Piece(Utf8JsonWriter json, Pieces.Piece piece, BridgeParameters parameters)
    {
        json.WriteStartObject();
        json.WriteString("mark", piece.Mark);
        json.WriteString("role", RoleTable.Of(piece.Role).Printed);
        json.WriteString("words", RoleTable.Of(piece.Role).Words);
        json.WriteNumber("quantity", piece.Occurrences.Length);
        var (stock, words) = (parameters.StockNamed(piece.Stock), new QuantityText(parameters.Units));
        List(json, "lines", PieceWords.Lines(piece, stock, words), Line);
        List(json, "turned", TurnWords.Groups(piece), (j, turned) =>
        {
            j.WriteStartObject();
            List(j, "parts", turned.Places, (k, place) => k.WriteStringValue(place.Id));
            List(j, "lines", PieceWords.Lines(piece, stock, words, turned.Places[0]), Line);
            j.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Line(Utf8JsonWriter json, (string Label, string Text) line)
    {
        json.WriteStartArray();
        json.WriteStringValue(line.Label);
        json.WriteStringValue(line.Text);
        json.WriteEndArray();
    }

    // What is worst for something, and those whose loads anyone can picture.
    private static IEnumerable<LoadCaseResult> PreviewCases(BridgeModel model)
    {
        HashSet<string> shown = [.. model.ShownCases().Select(c => c.Id)];
        return model.Cases.Where(c => c.Shape is not null && (shown.Contains(c.Id) || s_plain.Contains(c.Id, StringComparer.Ordinal)));
    }

    private static readonly ImmutableArray<string> s_plain =
    [
        LoadCaseIds.LiveHalfA, LoadCaseIds.LiveHalfB, LoadCaseIds.LiveSide, LoadCaseIds.LiveCross, LoadCaseIds.PointMid,
        LoadCaseIds.PointQuarter, LoadCaseIds.PointEdgeMid, LoadCaseIds.Snow, LoadCaseIds.LiveSnow,
    ];

    private static void Case(Utf8JsonWriter json, LoadCaseResult load, BridgeModel model)
    {
        json.WriteStartObject();
        json.WriteString("id", load.Id);
        json.WriteString("title", PlainLoad.Name(load));
        json.WriteString("text", CaseWords.Write(load, new QuantityText(model.Parameters.Units)));
        Number(json, "midSpanDrop", load.MidSpanDrop);
        Number(json, "crossSlope", load.CrossSlope ?? 0);
        List(json, "nodes", load.Shape!.Nodes, (j, p) => Row(j, p.X, p.Y));
        List(json, "extra", Extra(load.Shape, model.Rope), (j, n) => j.WriteNumberValue(Numbers.Rounded(n, 1)));
        json.WriteEndObject();
    }

    private static ImmutableArray<double> Extra(RopeShape loaded, RopeShape empty) =>
        [.. loaded.Loads.Zip(empty.Loads, (a, b) => a - b)];

    private static void Check(Utf8JsonWriter json, CheckResult check)
    {
        json.WriteStartObject();
        json.WriteString("title", check.Title);
        json.WriteString("status", check.Status switch
        {
            CheckStatus.Pass => "pass",
            CheckStatus.Warn => "warn",
            CheckStatus.Fail => "fail",
            CheckStatus.Engineer => "engineer",
            _ => throw new ArgumentOutOfRangeException(nameof(check), check.Status, "No such status."),
        });
        json.WriteString("sentence", PlainVerdict.Of(check));
        json.WriteString("detail", check.Detail);
        json.WriteString("source", check.Source);
        List(json, "parts", check.Parts, (j, id) => j.WriteStringValue(id));
        json.WriteEndObject();
    }
}
