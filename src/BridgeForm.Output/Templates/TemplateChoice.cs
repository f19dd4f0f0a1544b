using System.Collections.Immutable;
using BridgeForm.Pieces;

namespace BridgeForm.Output.Templates;

/// <summary>
/// Which templates are printed. Those without which a piece is not made are always: of cuts that the saw does not reach, of
/// wedges and of channels.
/// </summary>
/// <param name="All">Every other one too.</param>
/// <param name="Marks">Every other one of these pieces too.</param>
public sealed record TemplateChoice(bool All, ImmutableHashSet<string> Marks)
{
    /// <summary>Only those.</summary>
    public static TemplateChoice Needed { get; } = new(false, []);

    /// <summary>All there are.</summary>
    public static TemplateChoice Everything { get; } = new(true, []);

    /// <summary>Whether every template of a piece is wanted.</summary>
    public bool Asks(Piece piece) => All || Marks.Contains(piece.Mark);
}
