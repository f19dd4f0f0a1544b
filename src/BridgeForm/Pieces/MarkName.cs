using System.Globalization;
using BridgeForm.Roles;

namespace BridgeForm.Pieces;

/// <summary>Which of two mirror images a piece is.</summary>
internal enum Hand
{
    /// <summary>Neither: it is its own mirror image.</summary>
    None,

    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,
}

/// <summary>What a mark is made of.</summary>
/// <param name="Role">Gives the letter.</param>
/// <param name="Number">From 1 within the role; a left and a right hand share it.</param>
/// <param name="Hand">Left, right or neither.</param>
internal readonly record struct MarkName(Role Role, int Number, Hand Hand)
{
    /// <summary>Letter, number, hand: <c>P1L</c>.</summary>
    public string Text => RoleTable.Of(Role).Letter + Number.ToString(CultureInfo.InvariantCulture) + (Hand switch
    {
        Hand.Left => "L",
        Hand.Right => "R",
        _ => "",
    });
}
