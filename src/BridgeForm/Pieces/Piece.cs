using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>
/// One distinct cut part. Its occurrences share its mark; its solid is its first part, in the piece's own axes (X along the
/// length, centred on the stock's section; the near end's nearest point at X = 0).
/// </summary>
public sealed record Piece
{
    /// <summary>Readable stable name: letter of the role, number, and hand where left and right differ.</summary>
    public required string Mark { get; init; }

    /// <summary>What it is for.</summary>
    public required Role Role { get; init; }

    /// <summary>Name of the stock.</summary>
    public required string Stock { get; init; }

    /// <summary>Name of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Stock and cuts in the piece's axes; X of the blank runs from 0 to <see cref="BlankLength"/>.</summary>
    public required CutStock Shape { get; init; }

    /// <summary>The solid, in the piece's axes.</summary>
    public required Solid Solid { get; init; }

    /// <summary>Shortest square-ended stock that contains the piece, metres.</summary>
    public required double BlankLength { get; init; }

    /// <summary>Volume, m³.</summary>
    public required double Volume { get; init; }

    /// <summary>Mass at in-service moisture, kilograms.</summary>
    public required double Mass { get; init; }

    /// <summary>Area of every face that a cut, channel or hole made, m².</summary>
    public required double CutArea { get; init; }

    /// <summary>Area to brush with field preservative, m²: <see cref="CutArea"/> of treated stock, else 0.</summary>
    public required double ExposedCutArea { get; init; }

    /// <summary>Cut of the near end.</summary>
    public required EndCut Near { get; init; }

    /// <summary>Cut of the far end.</summary>
    public required EndCut Far { get; init; }

    /// <summary>Reasons why a three-axis router cannot make it from one face; empty when it can.</summary>
    public required ImmutableArray<string> NotRoutable { get; init; }

    /// <summary>Every place where it stands, in order.</summary>
    public required ImmutableArray<Occurrence> Occurrences { get; init; }
}

/// <summary>One place where a piece stands.</summary>
/// <param name="Id">Id of the member, such as <c>F03/post-left</c>.</param>
/// <param name="Placement">The piece's axes in the world, so that the piece's solid lies where the member lies.</param>
public sealed record Occurrence(string Id, Placement Placement)
{
    /// <summary>Side of the bridge.</summary>
    public Side Side { get; init; }

    /// <summary>How the piece lies here, against the axes of its role.</summary>
    public PieceTurn Turn { get; init; }

    /// <summary>It stands turned: its near end lies where its role has the far end.</summary>
    public bool Turned => Turn.IsTurned;
}

/// <summary>
/// An end cut as a saw sees it. Angles in radians, signed as the normal m of the cut with m·X &gt; 0:
/// mitre = atan2(m_Y, m_X), bevel = asin(m_Z), edge = atan(m_Z / m_X).
/// </summary>
/// <param name="Mitre">Line across the wide face, from square.</param>
/// <param name="Bevel">Tilt of the blade.</param>
/// <param name="Edge">Line on the narrow face, from square.</param>
/// <param name="InReach">The saw cuts it against its fence: it can be set to both, and the blade goes through.</param>
/// <param name="Wedge">Angle of the taper block with which the saw cuts a mitre out of reach; 0 when none is used.</param>
public sealed record EndCut(double Mitre, double Bevel, double Edge, bool InReach, double Wedge)
{
    /// <summary>How it is made with the tools at hand.</summary>
    public CutWay Way { get; init; } = Wedge > 0 ? CutWay.SawWithBlock : InReach ? CutWay.Saw : CutWay.HandSaw;

    /// <summary>The saw reaches it with the piece rolled a quarter turn onto its narrow edge, and not flat.</summary>
    public bool OnEdge { get; init; }

    /// <summary>The mitre as the piece lies on the saw: on its edge, the line across its narrow face, seen the other way.</summary>
    public double SawMitre => OnEdge ? -Edge : Mitre;

    /// <summary>Tilt of the blade as the piece lies on the saw.</summary>
    public double SawBevel => OnEdge ? Quantities.Elementary.Asin(
        Quantities.Elementary.Sin(Mitre) * Quantities.Elementary.Cos(Bevel)) : Bevel;

    /// <summary>Out of the saw's reach in a way that no block cures. Cut to a printed template by other means.</summary>
    public bool NeedsTemplate => Way is not (CutWay.Saw or CutWay.SawWithBlock);
}

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
