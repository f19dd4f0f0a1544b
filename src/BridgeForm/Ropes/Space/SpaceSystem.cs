using BridgeForm.Ropes.Modes;
using BridgeForm.Solids;

namespace BridgeForm.Ropes.Space;

/// <summary>The tangent stiffness of <see cref="SpaceTrial"/>'s unknowns, and what is out of balance.</summary>
/// <param name="bays">How many.</param>
/// <param name="half">Half the distance between the ropes, metres.</param>
internal sealed class SpaceSystem(int bays, double half)
{
    /// <summary>Unknowns of a frame.</summary>
    public const int PerFrame = 5;

    private const int Width = (2 * PerFrame) - 1;

    private readonly FrameTurn[] _turns = new FrameTurn[bays + 1];

    /// <summary>Tangent stiffness.</summary>
    public BandedMatrix Matrix { get; } = new(PerFrame * (bays + 1), Width);

    /// <summary>What moves the unknowns.</summary>
    public double[] Force { get; } = new double[PerFrame * (bays + 1)];

    /// <summary>Largest of it, newtons; of moments over the spacing.</summary>
    public double OutOfBalance
    {
        get
        {
            var most = 0.0;
            for (var i = 0; i < Force.Length; i++)
            {
                most = Math.Max(most, Math.Abs(Force[i]) / (i % PerFrame == 4 ? 2 * half : 1));
            }

            return most;
        }
    }

    /// <summary>Nothing in it.</summary>
    public void Clear()
    {
        Matrix.Clear();
        Array.Clear(Force);
    }

    /// <summary>How a frame stands.</summary>
    public void Turn(int frame, in FrameTurn turn) => _turns[frame] = turn;

    /// <summary>Move of a node by a small move of the unknowns.</summary>
    public static Vector3d Moved(double[] step, int frame, int side, in FrameTurn turn)
    {
        var (at, paths) = (PerFrame * frame, turn.Paths(side));
        return (step[at] * paths.Left) + (step[at + 1] * paths.Right) + new Vector3d(0, step[at + 2], step[at + 3])
            + (step[at + 4] * paths.Roll);
    }

    /// <summary>One bay of one rope between its two frames.</summary>
    public void Add(int bay, int side, in SpaceBay rope, Vector3d gap)
    {
        Pull(bay, side, rope.Piece.Force - (rope.ByReach * gap));
        Pull(bay + 1, side, (rope.AtEnd * gap) - rope.Piece.ForceEnd);
        Couple(bay, bay, side, rope.ByReach);
        Couple(bay + 1, bay + 1, side, rope.AtEnd);

        // Where a backstay feeds rope in, one end is a support that does not move, and this is taken out again.
        Couple(bay + 1, bay, side, -1 * rope.ByReach);
    }

    /// <summary>A support: held along the bridge by its backstay, or not moving at all.</summary>
    /// <param name="frame">0 or the last.</param>
    /// <param name="side">0 for the left rope, 1 for the right one.</param>
    /// <param name="stay">The backstay; null for a support that does not move.</param>
    /// <param name="inward">How far it has come towards the span since it was built.</param>
    /// <param name="stiffness">EA.</param>
    public void Hold(int frame, int side, HeldBackstay? stay, double inward, double stiffness)
    {
        var at = PerFrame * frame;
        if (stay is null)
        {
            Fix(at + side);
        }
        else
        {
            // It gives a length without a pull, and a length for each newton.
            var (free, byForce) = stay.Give(0, stiffness);
            Matrix[at + side, at + side] += 1 / byForce;
            Force[at + side] -= (frame == 0 ? 1 : -1) * (inward - free) / byForce;
        }

        if (side == 1)
        {
            Fix(at + 2);
            Fix(at + 3);
            Fix(at + 4);
        }
    }

    /// <summary>Weight and wind of a frame, and what its ropes' pull does as it turns.</summary>
    public void Stand(int frame, SpaceLoads loads, Vector3d left, Vector3d right)
    {
        var (at, turn) = (PerFrame * frame, _turns[frame]);
        var (weight, wind, aside) = (loads.HeightMoments[frame], loads.WindMoments[frame], loads.SideMoments[frame]);
        Force[at + 2] -= loads.Weights[frame];
        Force[at + 3] += loads.Winds[frame];
        Force[at] += aside * turn.Up.Z * turn.Slope / half;
        Force[at + 1] -= aside * turn.Up.Z * turn.Slope / half;
        Force[at + 4] += aside * turn.Up.Y * turn.Half / half;

        // A node's path bends towards the middle as its frame rolls and yaws.
        var apart = right - left;
        var (inward, up) = (apart.Dot(turn.Across) + (aside * turn.Up.Z / half), apart.Dot(turn.Up) - (aside * turn.Up.Y / half));
        AddYaw(at, turn.Slope * up, -turn.Bend * inward);
        Matrix[at + 4, at + 4] += turn.Half * inward;

        // What stands on it tips. Along a frame that leans it is less high than straight up over the ropes, and from the base straight
        // up less high once more.
        var tip = FrameTip.Of(turn, 2 * half, loads.Leans[frame]);
        (weight, wind) = (weight * tip.Shorter * tip.Shorter, wind * tip.Shorter);
        var (pull, give) = ((weight * tip.Sin) + (wind * tip.Cos), (wind * tip.Sin) - (weight * tip.Cos));
        Force[at] += pull * tip.ByYaw;
        Force[at + 1] -= pull * tip.ByYaw;
        Force[at + 4] += pull * tip.ByRoll;
        AddYaw(at, (give * tip.ByYaw * tip.ByRoll) - (pull * tip.ByYawRoll), (give * tip.ByYaw * tip.ByYaw) - (pull * tip.ByYawYaw));
        Matrix[at + 4, at + 4] += (give * tip.ByRoll * tip.ByRoll) - (pull * tip.ByRollRoll);
    }

    // The left node's move along the bridge is yaw, the right one's the opposite.
    private void AddYaw(int at, double withRoll, double withItself)
    {
        Matrix[at, at] += withItself;
        Matrix[at + 1, at] -= withItself;
        Matrix[at + 1, at + 1] += withItself;
        Matrix[at + 4, at] += withRoll;
        Matrix[at + 4, at + 1] -= withRoll;
    }

    private void Pull(int frame, int side, Vector3d force)
    {
        var (at, paths) = (PerFrame * frame, _turns[frame].Paths(side));
        Force[at] += force.Dot(paths.Left);
        Force[at + 1] += force.Dot(paths.Right);
        Force[at + 2] += force.Y;
        Force[at + 3] += force.Z;
        Force[at + 4] += force.Dot(paths.Roll);
    }

    // Column by column of the other frame's unknowns; only what lies on or below the diagonal is kept.
    private void Couple(int frame, int other, int side, in Matrix3 stiffness)
    {
        var (at, to) = (PerFrame * frame, PerFrame * other);
        var (here, there) = (_turns[frame].Paths(side), _turns[other].Paths(side));
        Column(at, to, stiffness * there.Left, here);
        Column(at, to + 1, stiffness * there.Right, here);
        Column(at, to + 2, stiffness.B, here);
        Column(at, to + 3, stiffness.C, here);
        Column(at, to + 4, stiffness * there.Roll, here);
    }

    private void Column(int at, int column, Vector3d forces, in NodePaths paths)
    {
        Entry(at, column, forces.Dot(paths.Left));
        Entry(at + 1, column, forces.Dot(paths.Right));
        Entry(at + 2, column, forces.Y);
        Entry(at + 3, column, forces.Z);
        Entry(at + 4, column, forces.Dot(paths.Roll));
    }

    private void Entry(int row, int column, double value)
    {
        if (row >= column)
        {
            Matrix.At(row, column) += value;
        }
    }

    // What does not move: its row says nothing of the others.
    private void Fix(int row)
    {
        for (var other = Math.Max(0, row - Width); other < row; other++)
        {
            Matrix[row, other] = 0;
        }

        for (var below = row + 1; below <= Math.Min(row + Width, Matrix.Size - 1); below++)
        {
            Matrix[below, row] = 0;
        }

        (Matrix[row, row], Force[row]) = (1, 0);
    }
}
