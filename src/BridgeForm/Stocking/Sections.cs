using BridgeForm.Materials;
using BridgeForm.Pieces;

namespace BridgeForm.Stocking;

/// <summary>Sections by their names.</summary>
internal static class Sections
{
    /// <summary>The section of a piece, with its nominal sizes where it has any.</summary>
    public static Section Of(Piece piece) =>
        SectionReader.Read(piece.Section).Section ?? new Section(piece.Section, piece.Shape.Width, piece.Shape.Thickness);
}
