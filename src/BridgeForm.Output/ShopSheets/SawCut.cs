using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.ShopSheets;

/// <summary>How a piece lies on the saw.</summary>
/// <param name="FaceUp">The face that is up in the drawings is up on the saw; else it lies on the table.</param>
/// <param name="NearLeft">The near end points to the left; else to the right.</param>
/// <param name="OnEdge">
/// The piece lies on its narrow edge, rolled a quarter turn (<see cref="Lying"/>): face up then stands for edge 1 up, and edge 1 at the
/// fence for the back there.
/// </param>
internal readonly record struct SawPosition(bool FaceUp, bool NearLeft, bool OnEdge = false)
{
    /// <summary>The narrow face at +Y (edge 1) lies against the fence; else the one at −Y (edge 2). As the piece lies.</summary>
    public bool Edge1AtFence => FaceUp == NearLeft;

    /// <summary>The arris of the way mark lies at the fence.</summary>
    public bool ArrisAtFence => Edge1AtFence != OnEdge;

    /// <summary>
    /// Axes of the saw in the piece's axes: X to the right along the fence, Y away from the operator into the fence, Z up. A
    /// half turn, or none; on its edge a quarter turn more.
    /// </summary>
    public Placement Saw => new(
        Vector3d.Zero,
        Sign(NearLeft) * Vector3d.UnitX,
        Sign(Edge1AtFence) * (OnEdge ? -Vector3d.UnitZ : Vector3d.UnitY),
        Sign(FaceUp) * (OnEdge ? Vector3d.UnitY : Vector3d.UnitZ));

    private static double Sign(bool positive) => positive ? 1 : -1;
}

/// <summary>Where the edge of the work meets the stop, metres.</summary>
/// <param name="Along">Along the fence, from where the cut meets that edge.</param>
/// <param name="Off">Square off the fence.</param>
internal readonly record struct WedgeStop(double Along, double Off);

/// <summary>
/// One end cut as it is made. The saw is always set the same way: handle swung to the right and blade leaning to the left, by
/// angles that are never negative; the piece is turned over or end for end until its cut is that one.
/// </summary>
/// <param name="Piece">The piece.</param>
/// <param name="End">Which end.</param>
/// <param name="Order">1 when this end is cut first, 2 when it is cut against the stop.</param>
/// <param name="Position">How the piece lies.</param>
/// <param name="Mitre">What the saw is set to, radians; with a wedge, its limit.</param>
/// <param name="Bevel">Tilt of the blade, radians.</param>
/// <param name="Wedge">Angle of the wedge between fence and work, thick end to the right; 0 for none. Radians.</param>
/// <param name="Stop">
/// Along the fence from the cut's line on the upper side of the work, at the fence, to the stop there, which the other end touches with
/// its point at the fence; null for the end that is cut first. Metres.
/// </param>
/// <param name="InReach">The saw makes it, with the wedge if there is one.</param>
internal sealed record SawCut(
    Piece Piece, PieceEnd End, int Order, SawPosition Position, double Mitre, double Bevel, double Wedge, double? Stop, bool InReach)
{
    /// <summary>How far the cut as it is set opens from the exact one, from corner to corner of the section, metres.</summary>
    public double Gap { get; init; }

    /// <summary>It meets no other end and carries no load: no joint opens by its gap.</summary>
    public bool IsFree { get; init; }

    /// <summary>How the piece is held.</summary>
    public HoldWay Hold { get; init; }

    /// <summary>The stick as it lies: flat, or on its edge.</summary>
    public CutStock Stick => Piece.Shape.For(Piece.Cut(End));

    /// <summary>The end that touches the stop.</summary>
    public FinishedEnd Other => FinishedEnd.Of(Stick, End, Position.Edge1AtFence, Position.FaceUp);

    /// <summary>The piece is parted from its blank, which is clamped beyond the blade: between blade and stop it would jam.</summary>
    public bool IsParted => Hold == HoldWay.Pair && Order == 2;

    /// <summary>
    /// Where the stop of a cut on a wedge stands: on the slope of the block carried on, for the work leaves the fence there. Null
    /// without a wedge or a stop, and where the slope runs into the fence before the stop: then the piece is cut to the line.
    /// </summary>
    public WedgeStop? OnWedge
    {
        get
        {
            if (Wedge <= 0 || Stop is not { } stop)
            {
                return null;
            }

            var off = Block.OffAtBlade + ((PieceAtRight ? stop : -stop) * Elementary.Sin(Wedge));
            return off >= 0 ? new WedgeStop(stop * Elementary.Cos(Wedge), off) : null;
        }
    }

    /// <summary>The block of a cut on a wedge.</summary>
    public TaperBlock Block => TaperBlock.For(Stick.Width, Stick.Thickness, Mitre + Wedge, Bevel, Wedge, PieceAtRight, Clamping);

    /// <summary>What a clamp needs.</summary>
    public HoldParameters Clamping { get; init; } = HoldParameters.For(UnitSystem.Metric);

    /// <summary>A stop can be set for it.</summary>
    public bool HasStop => InReach && Stop is not null && !IsParted && Other.Lean <= MostLean && (Wedge <= 0 || OnWedge is not null);

    /// <summary>
    /// Tangent of the angle by which an end may lean out, away from the fence, past a stop whose face is cut back by 45°: 40°. Beyond, it
    /// would touch off the fence, and is cut to the line.
    /// </summary>
    public static readonly double MostLean = Elementary.Tan(Math.PI * 40 / 180);

    /// <summary>What makes the cut.</summary>
    public CutWay Way => Piece.Cut(End).Way;

    /// <summary>A circular saw does not go through: the line is marked on both faces.</summary>
    public bool FromBothFaces => CutWays.FromBothFaces(Piece.Cut(End), Piece.Shape);

    /// <summary>The stop, and the piece, lie to the right of the blade.</summary>
    public bool PieceAtRight => (End == PieceEnd.Near) == Position.NearLeft;

    /// <summary>Both cuts of a piece as the saw is set for it, the first one first.</summary>
    public static IEnumerable<SawCut> List(AsCut made, ShopParameters shop) =>
        List(made.Exact with { Shape = made.Shape, Near = made.Near, Far = made.Far }).Select(c => c with
        {
            Gap = c.End == PieceEnd.Near ? made.NearGap : made.FarGap,
            IsFree = c.End == PieceEnd.Near ? made.NearFree : made.FarFree,
            Hold = Holding.Of(made.Exact, shop),
            Clamping = shop.Hold,
        });

    /// <summary>Both cuts of a piece, the first one first.</summary>
    public static IEnumerable<SawCut> List(Piece piece)
    {
        var first = First(piece);
        var second = first == PieceEnd.Near ? PieceEnd.Far : PieceEnd.Near;
        return [Made(piece, first, 1), Made(piece, second, 2)];
    }

    /// <summary>
    /// The end cut first: one in plain reach before one on a wedge, and the clearly squarer one before a slanting one, because it
    /// will bear on the stop; else the near end.
    /// </summary>
    private static PieceEnd First(Piece piece)
    {
        (bool, double) Order(EndCut cut) => (!cut.InReach, Math.Floor((Math.Abs(cut.Mitre) + Math.Abs(cut.Bevel)) / Squarer));
        return Order(piece.Far).CompareTo(Order(piece.Near)) < 0 ? PieceEnd.Far : PieceEnd.Near;
    }

    /// <summary>Ends that differ by less than this bear on a stop alike, radians (5°).</summary>
    private const double Squarer = Math.PI / 36;

    private static SawCut Made(Piece piece, PieceEnd end, int order)
    {
        var cut = piece.Cut(end);
        var position = PositionOf(cut, end);
        return new SawCut(
            piece,
            end,
            order,
            position,
            Math.Abs(cut.SawMitre) - cut.Wedge,
            Math.Abs(cut.SawBevel),
            cut.Wedge,
            order == 1 ? null : FinishedEnd.Of(piece.Shape.For(cut), end, position.Edge1AtFence, position.FaceUp).Touch,
            !cut.NeedsTemplate);
    }

    /// <summary>
    /// Half turns change the signs of a cut's angles: over about the length, both; end for end flat on the table, the bevel's;
    /// end for end and over, the mitre's. So one of the four positions makes both positive. An angle of zero has no sign: the
    /// piece then stays as it is drawn in that respect, but on a taper block it lies to the right of the blade, where the block is
    /// thin and the blade's path short.
    /// </summary>
    private static SawPosition PositionOf(EndCut cut, PieceEnd end)
    {
        if (cut.Wedge > 0 && CutWays.ThinAtBlade(near: true, cut) && CutWays.ThinAtBlade(near: false, cut))
        {
            return new SawPosition(cut.Mitre > 0, end == PieceEnd.Near);
        }

        var mitre = Printed(cut.SawMitre) < 0;
        var bevel = Printed(cut.SawBevel) < 0;
        var hasMitre = Printed(cut.SawMitre) is < 0 or > 0;
        var hasBevel = Printed(cut.SawBevel) is < 0 or > 0;
        return Lies(hasMitre, hasBevel, mitre, bevel) with { OnEdge = cut.OnEdge };
    }

    private static SawPosition Lies(bool hasMitre, bool hasBevel, bool mitre, bool bevel) =>
        (hasMitre, hasBevel) switch
        {
            (true, true) => (mitre, bevel) switch
            {
                (false, false) => new SawPosition(true, true),
                (true, true) => new SawPosition(false, true),
                (true, false) => new SawPosition(false, false),
                _ => new SawPosition(true, false),
            },
            (true, false) => mitre ? new SawPosition(false, true) : new SawPosition(true, true),
            (false, true) => bevel ? new SawPosition(true, false) : new SawPosition(true, true),
            _ => new SawPosition(true, true),
        };

    private static double Printed(double radians) => Numbers.Rounded(Numbers.Degrees(radians), 1);
}
