using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>A piece while its occurrences are being collected.</summary>
internal sealed class PieceDraft
{
    private readonly ImmutableArray<Occurrence>.Builder _occurrences = ImmutableArray.CreateBuilder<Occurrence>();
    private readonly double _blankStart;

    /// <summary>Founded by its first part.</summary>
    public PieceDraft(Member first, Corners corners, MarkName name)
    {
        First = first;
        Corners = corners;
        Name = name;
        _blankStart = corners.Center.X - (corners.Length / 2);
    }

    /// <summary>The first part, whose solid is the piece's.</summary>
    public Member First { get; }

    /// <summary>Its corners.</summary>
    public Corners Corners { get; }

    /// <summary>What its mark is made of.</summary>
    public MarkName Name { get; }

    /// <summary>Where it stands.</summary>
    public ImmutableArray<Occurrence> Occurrences => _occurrences.ToImmutable();

    /// <summary>Shape with the blank from X = 0.</summary>
    public CutStock Shape => First.Shape.ShiftedAlong(-_blankStart);

    /// <summary>
    /// One more place: the turn brings the member's centred corners onto the piece's, so the piece's solid, turned back about
    /// the member's box centre, lies where the member lies.
    /// </summary>
    public void Add(Member member, Corners corners, Placement turn)
    {
        var pieceCenter = Corners.Center - new Vector3d(_blankStart, 0, 0);
        var back = new Placement(
            corners.Center - turn.DirectionToLocal(pieceCenter),
            turn.DirectionToLocal(Vector3d.UnitX),
            turn.DirectionToLocal(Vector3d.UnitY),
            turn.DirectionToLocal(Vector3d.UnitZ));
        _occurrences.Add(
            new Occurrence(member.Id, member.Placement.Then(back)) { Side = member.Side, Turn = PieceTurn.Of(back.X, back.Z) });
    }
}
