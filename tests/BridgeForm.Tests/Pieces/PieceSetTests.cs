using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Pieces;

public class PieceSetTests
{
    [Fact]
    public void Square_stance_makes_interior_posts_alike_and_needs_no_hands()
    {
        var model = Bridges.Build(Bridges.Garden);
        var interior = model.Frames.Length - 2;
        var post = model.Pieces.First(p => p.Role == Role.Post && p.Occurrences.Any(o => o.Id == "F03/post-left"));
        Assert.Equal(2 * interior, post.Occurrences.Length);
        Assert.True(char.IsAsciiDigit(post.Mark[^1]), post.Mark);
        var brace = model.Pieces.Single(p => p.Role == Role.Brace);
        Assert.Equal(2 * (interior + 2), brace.Occurrences.Length);
    }

    [Fact]
    public void Plumb_posts_on_a_slope_have_left_and_right_hands()
    {
        var model = Bridges.Build(Bridges.Inclined);
        var left = model.Pieces.Single(p => p.Occurrences.Any(o => o.Id == "F04/post-left"));
        var right = model.Pieces.Single(p => p.Occurrences.Any(o => o.Id == "F04/post-right"));
        Assert.EndsWith("L", left.Mark, StringComparison.Ordinal);
        Assert.Equal(left.Mark[..^1] + "R", right.Mark);
        Assert.Equal(left.Volume, right.Volume, 1e-12);
        Assert.Equal(left.Far.Mitre, -right.Far.Mitre, 1e-9);
        Assert.Equal(left.Far.Bevel, right.Far.Bevel, 1e-9);
    }

    [Fact]
    public void Every_member_is_drawn_within_the_shop_tolerance_of_where_it_lies()
    {
        foreach (var text in (string[])[Bridges.Garden, Bridges.Inclined])
        {
            var parameters = Bridges.Read(text);
            var model = Bridges.Build(parameters);
            var places = model.Pieces
                .SelectMany(p => p.Occurrences.Select(o => (o.Id, Piece: p, o.Placement)))
                .ToDictionary(o => o.Id, StringComparer.Ordinal);
            var members = Members.Lay(Bridges.Layout(parameters)).SelectMany(g => g.Members).ToArray();
            Assert.Equal(members.Length, places.Count);
            foreach (var member in members)
            {
                var place = places[member.Id];
                var drawn = place.Piece.Solid.Vertices.Select(place.Placement.ToWorld).ToArray();
                foreach (var corner in StockSolid.Build(member.Shape with { Holes = [] }).Value.Vertices)
                {
                    var world = member.Placement.ToWorld(corner);
                    Assert.True(drawn.Min(d => (d - world).Length) <= parameters.Shop.Tolerance * 1.001, member.Id);
                }

                var axes = place.Placement;
                Assert.Equal(1, axes.X.Cross(axes.Y).Dot(axes.Z), 1e-9);
            }
        }
    }

    [Fact]
    public void Parts_join_the_first_piece_that_agrees()
    {
        // The grid must find what a search over all pieces finds.
        var parameters = Bridges.Read(Bridges.Inclined);
        var model = Bridges.Build(parameters);
        var tolerance = parameters.Shop.Tolerance;
        var founders = new List<(Member Member, Corners Corners)>();
        var joined = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var member in Members.Lay(Bridges.Layout(parameters)).SelectMany(g => g.Members))
        {
            var wood = member.Shape.IsPlainPrism() ? null : StockSolid.Build(member.Shape with { Holes = [] }).Value.Vertices.ToArray();
            var corners = Corners.Find(member.Shape, wood);
            var found = founders.FindIndex(f =>
                f.Member.Role == member.Role && f.Member.Stock == member.Stock && f.Member.Section == member.Section
                && corners.TurnOnto(f.Corners, Symmetries.List(member.Shape, tolerance), tolerance, mirrored: false) is not null);
            if (found < 0)
            {
                found = founders.Count;
                founders.Add((member, corners));
            }

            joined[member.Id] = found;
        }

        Assert.Equal(founders.Count, model.Pieces.Length);
        for (var i = 0; i < model.Pieces.Length; i++)
        {
            Assert.All(model.Pieces[i].Occurrences, o => Assert.Equal(i, joined[o.Id]));
        }
    }

    [Fact]
    public void Closed_form_volume_is_the_solids_volume()
    {
        foreach (var text in (string[])[Bridges.Garden, Bridges.Inclined])
        {
            foreach (var piece in Bridges.Build(text).Pieces.Where(p => p.Shape.Rips.IsEmpty))
            {
                Assert.Equal(piece.Volume, CutStockVolume.Prism(piece.Shape), piece.Volume * 1e-9);
            }
        }
    }

    [Fact]
    public void Blank_contains_the_piece_and_nothing_shorter_does()
    {
        foreach (var piece in Bridges.Build(Bridges.Inclined).Pieces)
        {
            var (min, max) = piece.Solid.Bounds;
            Assert.Equal(0, min.X, 1e-9);
            Assert.Equal(piece.BlankLength, max.X, 1e-9);
        }
    }
}
