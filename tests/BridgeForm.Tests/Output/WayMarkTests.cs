using System.Text.Json;
using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Profiles;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Tables;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Solids;
using BridgeForm.Stocking;
using BridgeForm.Tests.Output.Samples;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output;

/// <summary>The way mark on every paper, against where the wood lies in the world.</summary>
public sealed class WayMarkTests
{
    private static readonly Lazy<BridgeModel> s_demo = new(() => new Sample("alder-dell").Build());

    private static readonly Lazy<BridgeModel> s_inclined = new(() => Bridges.Build(Bridges.Inclined));

    private static DisplayUnits Inches => DisplayUnits.For(UnitSystem.Imperial);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_arrow_points_where_its_words_say(bool demo)
    {
        var model = demo ? s_demo.Value : s_inclined.Value;
        foreach (var (piece, place) in model.Pieces.SelectMany(p => p.Occurrences.Select(o => (p, o))))
        {
            // Along the piece from its near end to its far end, both as they stand.
            var arrow = place.Placement.ToWorld(new Vector3d(piece.BlankLength, 0, 0)) - place.Placement.ToWorld(Vector3d.Zero);
            Assert.True(
                Way(TurnWords.Arrow(piece, place)).Dot(arrow.Normalized()) > 0.75, $"{place.Id}: {TurnWords.Arrow(piece, place)}");
        }

        Assert.Contains(s_demo.Value.Pieces.SelectMany(p => p.Occurrences), o => o.Turned);
    }

    // The profile shows +Z to the eye with X to the right, so that edge 1, at +Y, is its upper edge.
    [Fact]
    public void The_profile_has_it_along_edge_1_with_its_tip_towards_the_far_end() => Assert.All(s_demo.Value.Pieces, piece =>
    {
        var entities = ProfileSheet.Draw(piece, Inches).Entities;
        var mark = Assert.Single(entities.OfType<SheetPolyline>(), p => p.Layer == ProfileLayers.Mark);
        var outline = entities.OfType<SheetPolyline>().First(p => p.Layer == ProfileLayers.Outline);
        AssertMark(mark, 1, -1);
        Assert.Equal(outline.Vertices.Max(v => v.Y), mark.Vertices[0].Y, 9);
        Assert.InRange(mark.Vertices[1].X, 0, outline.Vertices.Max(v => v.X));
    });

    /// <summary>
    /// Where edge 1 has a view of its own, below, the other half stands there: the reader looks at +Y with −Z up, so that the arris of
    /// the face that is up is the lower edge, and the mark's foot is above it.
    /// </summary>
    [Fact]
    public void A_profile_with_a_view_of_edge_1_has_the_other_half_there()
    {
        var shape = SamplePieces.Post.Shape with { Holes = [new Hole(StockFace.PlusY, 0.5, 0, 0.01, 0.02)] };
        var entities = ProfileSheet.Draw(SamplePieces.Post with { Shape = shape }, Inches).Entities;
        var marks = entities.OfType<SheetPolyline>().Where(p => p.Layer == ProfileLayers.Mark).ToList();
        var outlines = entities.OfType<SheetPolyline>().Where(p => p.Layer == ProfileLayers.Outline).ToList();
        Assert.Equal(2, marks.Count);
        AssertMark(marks[1], 1, 1);
        Assert.Equal(outlines[1].Vertices.Min(v => v.Y), marks[1].Vertices[0].Y, 9);
        Assert.True(outlines[1].Vertices.Max(v => v.Y) < outlines[0].Vertices.Min(v => v.Y));
    }

    // Folded round the stick, both halves lie at the arris of face up and edge 1, at (y, z) = (W/2, T/2).
    [Fact]
    public void The_wrap_around_folds_it_over_the_arris()
    {
        var piece = SamplePieces.Board;
        foreach (var end in (PieceEnd[])[PieceEnd.Near, PieceEnd.Far])
        {
            var block = WrapAround.Draw(new CutUse([piece]), end, Inches);
            var width = new UnrolledStock(SamplePieces.Wide, SamplePieces.Thin).Girth + WrapAround.Flap;
            var marks = block.Entities.OfType<SheetPolyline>().Where(p => p.Layer == PageLayers.Layout).ToList();
            Assert.Equal(2, marks.Count);
            var feet = marks.Select(m =>
            {
                var folded = m.Vertices.Select(
                    v => new UnrolledStock(SamplePieces.Wide, SamplePieces.Thin).Fold(width - v.X, v.Y)).ToList();
                Assert.All(folded.Take(2), v => Assert.Equal((SamplePieces.Wide / 2, SamplePieces.Thin / 2), (v.Y, v.Z), NearPair));
                Assert.True(folded[1].X > folded[0].X);
                Assert.True(piece.Plane(end).Normal.Dot(folded[0]) < piece.Plane(end).Offset, "drawn on the waste");
                return folded[2];
            }).ToList();
            Assert.Contains(feet, f => f.Y < SamplePieces.Wide / 2 && Math.Abs(f.Z - (SamplePieces.Thin / 2)) < 1e-9);
            Assert.Contains(feet, f => f.Z < SamplePieces.Thin / 2 && Math.Abs(f.Y - (SamplePieces.Wide / 2)) < 1e-9);
        }
    }

    [Fact]
    public void The_face_template_has_it_on_the_wood_that_stays()
    {
        foreach (var (end, piece) in ((PieceEnd, Piece)[])[(PieceEnd.Near, SamplePieces.Post), (PieceEnd.Far, SamplePieces.Board)])
        {
            var mark = Assert.Single(EndFace.Draw(new CutUse([piece]), end, Inches).Entities.OfType<SheetPolyline>());
            AssertMark(mark, 1, -1);
            Assert.All(mark.Vertices, v => Assert.True(
                piece.Plane(end).Normal.Dot(new Vector3d(v.X, v.Y, SamplePieces.Thin / 2)) < piece.Plane(end).Offset));
        }
    }

    /// <summary>Laid on the saw as told: the arrow is the piece's X and edge 1 its +Y, in the saw's axes.</summary>
    [Fact]
    public void The_picture_of_a_set_up_has_it_as_the_piece_lies()
    {
        var seen = new HashSet<(bool, bool)>();
        foreach (var cut in s_inclined.Value.Pieces.SelectMany(p => SawCut.List(p)).Where(c => c.InReach && c.Wedge <= 0))
        {
            var picture = SetupPicture.Draw(cut, s_inclined.Value.Parameters.Shop, Inches).OfType<SheetPolyline>().ToList();
            var mark = Assert.Single(picture, p => p.Layer is PageLayers.Cut or PageLayers.Hidden && p.Vertices.Length == 3);
            var saw = cut.Position.Saw;
            AssertMark(mark, saw.DirectionToLocal(Vector3d.UnitX).X, -saw.DirectionToLocal(Vector3d.UnitY).Y);
            Assert.Equal(saw.DirectionToLocal(Vector3d.UnitZ).Z > 0, mark.Layer == PageLayers.Cut);
            _ = seen.Add((cut.Position.FaceUp, cut.Position.NearLeft));
        }

        Assert.True(seen.Count > 2, "few ways of lying");
    }

    [Fact]
    public void Labels_cut_list_model_and_page_tell_it_of_every_part()
    {
        var model = s_demo.Value;
        var places = model.Pieces.SelectMany(p => p.Occurrences.Select(o => (p, o)))
            .ToDictionary(p => p.o.Id, p => TurnWords.Arrow(p.p, p.o));
        var labels = LabelSheet.Draw(model, [.. model.Assembly().SelectMany(s => s.Parts)]).Pages.SelectMany(p => p.Content.Entities)
            .OfType<SheetText>().Where(t => t.Text.StartsWith("arrow ", StringComparison.Ordinal)).Select(t => t.Text["arrow ".Length..]);
        Assert.Equal(places.Values.Order(StringComparer.Ordinal), labels.Order(StringComparer.Ordinal));
        Assert.All(
            CutList.Csv(model, Inches).Split('\n').Where(r => r.StartsWith("P1L,", StringComparison.Ordinal)),
            r => Assert.Contains(",up,", r, StringComparison.Ordinal));
        using var stream = new MemoryStream();
        GltfWriter.Write(model, s => s.Triangulate(), stream);
        var bytes = stream.ToArray();
        using var scene = JsonDocument.Parse(bytes.AsMemory(20, BitConverter.ToInt32(bytes, 12)));
        var told = scene.RootElement.GetProperty("nodes").EnumerateArray()
            .Where(n => n.TryGetProperty("extras", out var e) && e.TryGetProperty("mark", out _))
            .Select(n => n.GetProperty("extras").GetProperty("arrow").GetString()!).Order(StringComparer.Ordinal);
        Assert.Equal(places.Values.Order(StringComparer.Ordinal), told);
        var rolled = scene.RootElement.GetProperty("nodes").EnumerateArray()
            .Count(n => n.TryGetProperty("extras", out var e) && e.TryGetProperty("rolled", out var r) && r.GetBoolean());
        Assert.Equal(model.Pieces.Sum(p => p.Occurrences.Count(o => !o.Turned && o.Turn.Face != FaceTurn.Same)), rolled);
        var lines = PieceWords.Lines(
            model.Pieces[0], model.Parameters.StockNamed(model.Pieces[0].Stock), new QuantityText(UnitSystem.Imperial));
        Assert.Contains(lines, l => l.Label == "Arrow on the wood" && l.Text.StartsWith("to the right", StringComparison.Ordinal));
    }

    [Fact]
    public void The_crown_is_down_on_the_bench_and_up_in_service()
    {
        var notes = string.Join(
            ' ', GangLayout.Draw(s_demo.Value, Inches).First(b => b.Title.StartsWith("Gang", StringComparison.Ordinal)).Notes);
        Assert.Contains("crown down on the bench", notes, StringComparison.Ordinal);
        Assert.Contains("up in service", notes, StringComparison.Ordinal);
        Assert.Contains(s_demo.Value.Assembly(), s => AssemblyWords.Of(s).Contains("base with its crown up", StringComparison.Ordinal));
    }

    // Vertices: tail, tip, foot. Which way the tip lies from the tail, and which way the foot lies off the arris.
    private static void AssertMark(SheetPolyline mark, double along, double inward)
    {
        Assert.True(mark.Closed);
        Assert.True((mark.Vertices[1].X - mark.Vertices[0].X) * along > 0, "points the wrong way");
        Assert.True((mark.Vertices[2].Y - mark.Vertices[0].Y) * inward > 0, "lies at the wrong edge");
    }

    private static bool NearPair((double, double) a, (double, double) b) =>
        Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9;

    private static Vector3d Way(string words) => words switch
    {
        "up" => Vector3d.UnitY,
        "down" => -Vector3d.UnitY,
        "towards A" => -Vector3d.UnitX,
        "towards B" => Vector3d.UnitX,
        "to the right" => Vector3d.UnitZ,
        "to the left" => -Vector3d.UnitZ,
        _ => throw new InvalidOperationException(words),
    };
}
