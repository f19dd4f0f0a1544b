using System.Text.Json;
using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.Report;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Tables;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Stocking;
using BridgeForm.Tests.Output.Gltf;

namespace BridgeForm.Tests.Roles;

/// <summary>Every output that names roles has its words for every one of them.</summary>
public sealed class RoleWordsTests
{
    private static readonly Lazy<Dictionary<BridgeModel, List<SheetPage>>> s_drawings = new(() =>
        EveryRole.Models.ToDictionary(m => m, m => DrawingSheets.Draw(m).Pages.ToList()));

    public static TheoryData<Role> All => EveryRole.All;

    [Theory]
    [MemberData(nameof(All))]
    public void Cut_list(Role role)
    {
        var (model, piece) = One(role);
        var row = CutList.Csv(model, DisplayUnits.For(model.Parameters.Units)).Split('\n').Single(
            r => r.StartsWith(piece.Mark + ",", StringComparison.Ordinal));
        Assert.Equal(RoleTable.Of(role).Name, row.Split(',')[2]);
        Assert.StartsWith(RoleTable.Of(role).Letter, piece.Mark, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Labels(Role role)
    {
        var (model, piece) = One(role);
        var texts = Texts(LabelSheet.Draw(model, [piece.Occurrences[0].Id]).Pages);
        Assert.Contains(texts, t => t.StartsWith(RoleTable.Of(role).Printed + " · ", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Preview(Role role)
    {
        var (model, piece) = One(role);
        var facts = RoleTable.Of(role);
        using var view = JsonDocument.Parse(PreviewJson.Bytes(model));
        var told = view.RootElement.GetProperty("pieces").EnumerateArray().Single(p => Text(p, "mark") == piece.Mark);
        Assert.Equal((facts.Printed, facts.Words), (Text(told, "role"), Text(told, "words")));
        Assert.Equal(
            [facts.Leaves.Along, facts.Leaves.Up, facts.Leaves.Out],
            view.RootElement.GetProperty("leaving").GetProperty(facts.Name).EnumerateArray().Select(n => n.GetDouble()));
        var labels =
            PieceWords.Lines(piece, model.Parameters.StockNamed(piece.Stock), new(model.Parameters.Units)).Select(l => l.Label).ToList();
        Assert.True(labels.Contains("Both ends")
            || (labels.Contains(facts.Ends.Near) && labels.Contains(facts.Ends.Far)), string.Join(", ", labels));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Report(Role role)
    {
        var (model, piece) = One(role);
        using var stream = new MemoryStream();
        ReportWriter.Write(model, () => [], stream);
        using var json = JsonDocument.Parse(stream.ToArray());
        var told = json.RootElement.GetProperty("pieces").EnumerateArray().Single(p => Text(p, "mark") == piece.Mark);
        Assert.Equal(RoleTable.Of(role).Name, Text(told, "role"));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Model_file(Role role)
    {
        var (model, piece) = One(role);
        var extras = new GlbFile(GltfWriterTests.Bytes(model)).Nodes.Where(n => n.TryGetProperty("extras", out _)).Select(
            n => n.GetProperty("extras"));
        Assert.All(extras.Where(e => Text(e, "mark") == piece.Mark), e => Assert.Equal(RoleTable.Of(role).Name, Text(e, "role")));
        Assert.Contains(extras, e => Text(e, "mark") == piece.Mark);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Notes_of_profiles(Role role)
    {
        var (model, piece) = One(role);
        var notes = PieceNotes.Write(piece, DisplayUnits.For(model.Parameters.Units), "", 500);
        Assert.StartsWith($"{piece.Mark} {RoleTable.Of(role).Printed}, ", notes[0], StringComparison.Ordinal);
        Assert.Contains(notes, n => n.StartsWith(
            $"Face up: {RoleTable.Of(role).Faces.Drawn}. ", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Templates(Role role)
    {
        var (model, piece) = One(role);
        var use = Assert.Single(CutUse.Grouped([piece], p => p.Mark));
        var notes = use.Notes(DisplayUnits.For(model.Parameters.Units)).ToList();
        Assert.Contains(notes, n => n.Contains($" · {RoleTable.Of(role).Printed}, ", StringComparison.Ordinal));
        Assert.Contains(notes, n => n.StartsWith($"Face up: {RoleTable.Of(role).Faces.Drawn}. "
                + $"Way mark: arrow {RoleTable.Of(role).Ends.Arrow},",
            StringComparison.Ordinal));
    }

    /// <summary>In the table of parts beside the drawings, and in the cut list behind them.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Drawing_set(Role role)
    {
        var pages = s_drawings.Value[EveryRole.With(role)];
        foreach (var title in (string[])["Parts of ", "Cut list"])
        {
            Assert.Contains(
                pages,
                p => Texts([p]).Exists(t => t.StartsWith(title, StringComparison.Ordinal))
                    && Texts([p]).Contains(RoleTable.Of(role).Printed));
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Assembly(Role role)
    {
        var (model, piece) = One(role);
        var steps = model.Assembly();
        Assert.All(
            piece.Occurrences,
            place => Assert.Single(steps, s => s.Parts.Contains(place.Id) && RoleTable.Of(role).AddedIn.Contains(s.Work)));
        var number = AssemblyOrder.StepOfPart(steps)[piece.Occurrences[0].Id];
        var cells = AssemblyTable.Csv(model).Split('\n').Single(r => r.StartsWith($"{number},", StringComparison.Ordinal));
        Assert.Contains(piece.Occurrences[0].Id, cells, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Hardware(Role role)
    {
        var model = EveryRole.With(role);
        var joints = Joints.Count(model.Pieces);
        Assert.All(RoleTable.Of(role).Joints, j => Assert.Contains(joints, found => (found.Name, found.What) == (j.Name, j.What)));
    }

    private static (BridgeModel Model, Piece Piece) One(Role role)
    {
        var model = EveryRole.With(role);
        return (model, model.Pieces.First(p => p.Role == role));
    }

    private static List<string> Texts(IEnumerable<SheetPage> pages) =>
        [.. pages.SelectMany(p => p.Content.Entities).OfType<SheetText>().Select(t => t.Text)];

    private static string? Text(JsonElement element, string name) => element.TryGetProperty(name, out var value) ? value.GetString() : null;
}
