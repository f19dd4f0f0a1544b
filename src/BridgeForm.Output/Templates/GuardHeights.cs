using System.Collections.Immutable;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>Heights up along a post's inner face from the base's top, metres, read off the parts where they lie.</summary>
/// <param name="Frames">Frames with these heights, in order.</param>
/// <param name="Deck">The deck's surface.</param>
/// <param name="Rails">Centre lines of the rails, lowest first.</param>
/// <param name="Head">The post's head.</param>
internal sealed record GuardHeights(ImmutableArray<string> Frames, double Deck, ImmutableArray<double> Rails, double Head)
{
    /// <summary>Heights of every frame, frames alike to a tenth of a millimetre together.</summary>
    public static IEnumerable<GuardHeights> Measure(BridgeModel model)
    {
        var parts = model.Pieces
            .SelectMany(p => p.Occurrences.Select(o => (o.Id, Part: new Part(p, o.Placement))))
            .ToDictionary(p => p.Id, p => p.Part, StringComparer.Ordinal);
        return Enumerable.Range(0, model.Frames.Length)
            .Select(i => At(model, parts, i))
            .OfType<GuardHeights>()
            .GroupBy(h => h.Key, StringComparer.Ordinal)
            .Select(g => g.First() with { Frames = [.. g.SelectMany(h => h.Frames)] });
    }

    private string Key => string.Join('|', Rails.Prepend(Deck).Append(Head).Select(h => Numbers.Fixed(h * 1000, 1)));

    private static GuardHeights? At(BridgeModel model, Dictionary<string, Part> parts, int frame)
    {
        var frames = model.Frames.Length;
        var bay = model.Groups[frames + Math.Min(frame, frames - 2)].MemberIds;
        if (!parts.TryGetValue(new PartId(model.Frames[frame].Name, Role.Post, Side.Left).ToString(), out var post))
        {
            return null;
        }

        var rails = bay.Where(id => PartId.Read(id) is { Role: Role.Rail, Side: Side.Left }).Select(id => parts[id]);
        var deck = bay.FirstOrDefault(id => IsWalkedOn(parts[id].Piece.Role));
        return new GuardHeights(
            [model.Frames[frame].Name],
            deck is null ? 0 : post.HeightOf(parts[deck]),
            [.. rails.Select(post.HeightOn).Order()],
            post.Head);
    }

    private static bool IsWalkedOn(Role role) =>
        RoleTable.Of(role) is { Section: DrawingSection.Deck, LiesOnTop: false } && !RoleTable.IsUnder(role, DrawingSection.Deck);

    /// <summary>A piece where it stands.</summary>
    private sealed record Part(Piece Piece, Placement Placement)
    {
        /// <summary>The narrow face of a left post that looks inward, at positive z of the world.</summary>
        private double InnerY => Math.Sign(Placement.Y.Z) * Piece.Shape.Width / 2;

        private double Foot => Piece.Shape.Near.XAt(InnerY, 0);

        /// <summary>Height of the head's cut.</summary>
        public double Head => Piece.Shape.Far.XAt(InnerY, 0) - Foot;

        /// <summary>Height of another part's upper face.</summary>
        public double HeightOf(Part part)
        {
            // A piece that serves both ends of the bridge lies with either wide face up.
            var top = new Plane(Math.Sign(part.Placement.Z.Y) * Vector3d.UnitZ, part.Piece.Shape.Thickness / 2);
            return Placement.ToLocal(part.Placement.ToWorld(top)).XAt(InnerY, 0) - Foot;
        }

        /// <summary>Height of a rail's centre line, where its outer face passes the post's middle plane.</summary>
        public double HeightOn(Part rail)
        {
            var outer = -Math.Sign(rail.Placement.Z.Z) * rail.Piece.Shape.Thickness / 2;
            var from = Placement.ToLocal(rail.Placement.ToWorld(new Vector3d(0, 0, outer)));
            var way = Placement.DirectionToLocal(rail.Placement.X);
            return (from - (from.Z / way.Z * way)).X - Foot;
        }
    }
}
