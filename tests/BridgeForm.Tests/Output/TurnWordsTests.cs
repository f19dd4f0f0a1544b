using System.Text.Json;
using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.Report;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Tables;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output;

/// <summary>Paper and page say which way a part lies.</summary>
public class TurnWordsTests
{
    private static readonly Lazy<BridgeModel> s_demo = new(() => new Sample("alder-dell").Build());

    private static BridgeModel Demo => s_demo.Value;

    private static Piece D1 => Demo.Pieces.Single(p => p.Mark == "D1");

    private const string Across = "\ndeck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n";

    [Theory]
    [InlineData(Bridges.Garden, "")]
    [InlineData(Bridges.Garden, Across)]
    [InlineData(Bridges.Inclined, "\nholes:\n  base: [{ diameter: 6 mm, from_end: 400 mm }]\n")]
    public void Words_say_where_the_drawn_face_looks_in_the_world(string text, string more)
    {
        var model = Bridges.Build(text + more);
        foreach (var (piece, place) in model.Pieces.SelectMany(p => p.Occurrences.Where(o => o.Turn == PieceTurn.None).Select(o => (p, o))))
        {
            Matches(piece, place, FaceTurn.Opposite, -place.Placement.Z);
            Matches(piece, place, FaceTurn.PlusY, place.Placement.Y);
            Matches(piece, place, FaceTurn.MinusY, -place.Placement.Y);
        }
    }

    [Fact]
    public void A_flat_base_has_words_of_its_own()
    {
        var text = Bridges.Garden.Replace("length: 58 in }", "length: 58 in, flat: true }", StringComparison.Ordinal).Replace(
            "4x6", "6x6", StringComparison.Ordinal);
        var piece = Bridges.Build(text).Pieces.First(p => p.Role == Role.Base);
        Matches(piece, piece.Occurrences[0], FaceTurn.Opposite, -piece.Occurrences[0].Placement.Z);
        Matches(piece, piece.Occurrences[0], FaceTurn.PlusY, piece.Occurrences[0].Placement.Y);
    }

    private static void Matches(Piece piece, Occurrence place, FaceTurn face, Vector3d looks)
    {
        var words = TurnWords.Write(piece, place with { Turn = new PieceTurn(false, face) });
        Assert.StartsWith("drawn face ", words, StringComparison.Ordinal);
        var outward = place.Side == Side.Left ? -Vector3d.UnitZ : Vector3d.UnitZ;
        var way = words["drawn face ".Length..] switch
        {
            "up" => Vector3d.UnitY,
            "down" => -Vector3d.UnitY,
            "towards A" => -Vector3d.UnitX,
            "towards B" => Vector3d.UnitX,
            "to the right" => Vector3d.UnitZ,
            "to the left" => -Vector3d.UnitZ,
            "outward" => outward,
            _ => throw new InvalidOperationException(words),
        };
        Assert.True(way.Dot(looks) > 0.75, $"{place.Id}: {words}, but it looks {looks}");
    }

    [Fact]
    public void Cut_list_and_assembly_name_turned_places()
    {
        var units = DisplayUnits.For(Demo.Parameters.Units);
        var row = CutList.Csv(Demo, units).Split('\n').Single(r => r.StartsWith("D1,", StringComparison.Ordinal));
        Assert.Contains("arrow towards A: B11/board-1; B11/board-2", row, StringComparison.Ordinal);
        var brace = CutList.Csv(Demo, units).Split('\n').Single(r => r.StartsWith("K1,", StringComparison.Ordinal));
        Assert.Contains(",,drawn face towards A: F00-F11/brace-right", brace, StringComparison.Ordinal);
        var step = AssemblyTable.Csv(Demo).Split('\n').Single(
            r => r.Contains(",B11,", StringComparison.Ordinal) && r.Contains("Lay the deck", StringComparison.Ordinal));
        Assert.Contains("arrow towards A: B11/board-1 B11/board-2", step, StringComparison.Ordinal);
    }

    [Fact]
    public void Labels_of_turned_parts_say_so_and_no_others_do()
    {
        IReadOnlyList<string> order = [.. Demo.Assembly().SelectMany(s => s.Parts)];
        var texts = LabelSheet.Draw(Demo, order).Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>().ToList();
        Assert.Equal(22, texts.Count(t => t.Text.StartsWith("TURNED: ", StringComparison.Ordinal)));
        Assert.Equal(
            Demo.Pieces.SelectMany(p => p.Occurrences).Count(o => o.Turn.IsRolled),
            texts.Count(t => t.Text.StartsWith("rolled over: ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Drawings_name_the_mirrored_frame_and_bay_and_mark_turned_parts()
    {
        var pages = DrawingSheets.Draw(Demo).Pages;
        Assert.Contains(pages, p => p.Content.Title.Contains("End frame (F00, and mirrored F11)", StringComparison.Ordinal));
        Assert.Contains(pages, p => p.Content.Title.Contains("End bay (B01, and mirrored B11)", StringComparison.Ordinal));
        var text = string.Join(' ', pages.SelectMany(p => p.Content.Entities).OfType<SheetText>().Select(t => t.Text));
        Assert.Contains("F11, B11: the mirror image.", text, StringComparison.Ordinal);
        var inclined = DrawingSheets.Draw(Bridges.Build(Bridges.Inclined)).Pages;
        Assert.DoesNotContain(inclined, p => p.Content.Title.Contains("mirrored", StringComparison.Ordinal));
        var turned = DrawingSheets.Draw(new Sample("fern-rise").Build()).Pages.SelectMany(p => p.Content.Entities).OfType<SheetText>();
        Assert.Contains(turned, t => t.Text.EndsWith(", turned", StringComparison.Ordinal));
    }

    [Fact]
    public void A_profile_names_the_places_for_which_its_notes_are_not_true()
    {
        var notes = string.Join(' ', PieceNotes.Write(D1, DisplayUnits.For(Demo.Parameters.Units), "", 60));
        Assert.Contains("Stands turned in 6 of 12 places, arrow towards A: B11/board-1;", notes, StringComparison.Ordinal);
    }

    [Fact]
    public void The_report_lists_turned_and_rolled_places()
    {
        using var stream = new MemoryStream();
        ReportWriter.Write(Demo, () => [], stream);
        using var json = JsonDocument.Parse(stream.ToArray());
        var pieces = json.RootElement.GetProperty("pieces").EnumerateArray().ToList();
        Assert.Equal(22, pieces.Sum(p => p.GetProperty("turned").GetArrayLength()));
        var first = pieces.Single(p => p.GetProperty("mark").GetString() == "B1").GetProperty("turned")[0];
        Assert.Equal(("F11/base", "-z"), (first.GetProperty("part").GetString(), first.GetProperty("face").GetString()));
        var rolled = pieces.Single(p => p.GetProperty("mark").GetString() == "K1").GetProperty("rolled");
        Assert.Equal(12, rolled.GetArrayLength());
    }

    [Fact]
    public void The_preview_tells_of_each_end_where_it_lies()
    {
        Assert.NotEqual(PieceWords.Cut(D1.Near), PieceWords.Cut(D1.Far));
        foreach (var id in (string[])["B01/board-1", "B11/board-1"])
        {
            var place = D1.Occurrences.Single(o => o.Id == id);
            var near = place.Placement.ToWorld(Vector3d.Zero).X;
            var far = place.Placement.ToWorld(new Vector3d(D1.BlankLength, 0, 0)).X;
            var lines = PieceWords.Lines(
                D1, Demo.Parameters.StockNamed(D1.Stock), new QuantityText(Demo.Parameters.Units),
                place.Turned ? place : null).ToDictionary(l => l.Label, l => l.Text, StringComparer.Ordinal);
            Assert.Equal(PieceWords.Cut(near < far ? D1.Near : D1.Far), lines["End towards A"]);
            Assert.Equal(PieceWords.Cut(near < far ? D1.Far : D1.Near), lines["End towards B"]);
        }

        using var json = JsonDocument.Parse(PreviewJson.Bytes(Demo));
        var turned = json.RootElement.GetProperty("pieces").EnumerateArray().Single(
            p => p.GetProperty("mark").GetString() == "D1").GetProperty("turned")[0];
        Assert.Contains(turned.GetProperty("parts").EnumerateArray(), p => p.GetString() == "B11/board-1");
    }

    [Fact]
    public void The_preview_gives_a_packer_its_own_size()
    {
        var piece = Demo.Pieces.Single(p => p.Mark == "W1");
        var words = new QuantityText(Demo.Parameters.Units);
        var size = PieceWords.Lines(piece, Demo.Parameters.StockNamed(piece.Stock), words).Single(l => l.Label == "Size").Text;
        var (min, max) = piece.Solid.Bounds;
        Assert.StartsWith(words.Size(max.Z - min.Z) + " thick at one edge, ", size, StringComparison.Ordinal);
        Assert.Contains(words.Size(max.Y - min.Y) + " wide, ", size, StringComparison.Ordinal);
        Assert.True(max.Z - min.Z < piece.Shape.Thickness - 1e-3, "The packer is as thick as its stock.");
    }
}
