using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>A part that the survey looks at: a stick with its cuts, where it is drawn.</summary>
/// <param name="Id">Id of the part.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Side">Side of the bridge.</param>
/// <param name="Shape">Stock and cuts, in the stick's own axes.</param>
/// <param name="Placement">The stick's axes in the world.</param>
/// <param name="Cells">The stick as convex cells in its own axes, holes left out.</param>
internal sealed record SurveyedPart(
    string Id, Role Role, Side Side, CutStock Shape, Placement Placement, ImmutableArray<ConvexBody> Cells)
{
    /// <summary>Every occurrence of every piece, with the piece's own shape: what is cut and drawn.</summary>
    public static ImmutableArray<SurveyedPart> Of(ImmutableArray<Piece> pieces)
    {
        var parts = ImmutableArray.CreateBuilder<SurveyedPart>(pieces.Sum(p => p.Occurrences.Length));
        foreach (var piece in pieces)
        {
            var cells = piece.Shape.ConvexCells();
            foreach (var place in piece.Occurrences)
            {
                parts.Add(new SurveyedPart(place.Id, piece.Role, place.Side, piece.Shape, place.Placement, cells));
            }
        }

        return parts.MoveToImmutable();
    }

    /// <summary>A member as it is laid out.</summary>
    public static SurveyedPart Of(Member member) =>
        new(member.Id, member.Role, member.Side, member.Shape, member.Placement, member.Shape.ConvexCells());

    /// <summary>Box around its cells in the world.</summary>
    public Box3 Box()
    {
        var box = Box3.Around([]);
        foreach (var cell in Cells)
        {
            foreach (var vertex in cell.Vertices)
            {
                box = box.With(Placement.ToWorld(vertex));
            }
        }

        return box;
    }
}
