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

    private readonly Vector3d[] _ups = new Vector3d[bays + 1];

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
    public void Turn(int frame, Vector3d up) => _ups[frame] = up;

    /// <summary>Move of a node by a small move of the unknowns.</summary>
    public static Vector3d Moved(double[] step, int frame, int side, double arm, Vector3d up)
    {
        var at = PerFrame * frame;
        return new Vector3d(step[at + side], step[at + 2], step[at + 3]) - (step[at + 4] * arm * up);
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
        var (at, up) = (PerFrame * frame, _ups[frame]);
        var (weight, wind) = (loads.HeightMoments[frame], loads.WindMoments[frame]);
        Force[at + 2] -= loads.Weights[frame];
        Force[at + 3] += loads.Winds[frame];
        Force[at + 4] += (weight * up.Z) + (wind * up.Y);

        // From left to right in the plane of the frame: a node's path bends towards the middle.
        var across = new Vector3d(0, -up.Z, up.Y);
        Matrix[at + 4, at + 4] += (half * (right - left).Dot(across)) - (weight * up.Y) + (wind * up.Z);
    }

    private double Arm(int side) => side == 0 ? -half : half;

    private Vector3d Turned(int frame, int side) => -Arm(side) * _ups[frame];

    private void Pull(int frame, int side, Vector3d force)
    {
        var at = PerFrame * frame;
        Force[at + side] += force.X;
        Force[at + 2] += force.Y;
        Force[at + 3] += force.Z;
        Force[at + 4] += force.Dot(Turned(frame, side));
    }

    // Column by column of the other frame's unknowns; only what lies on or below the diagonal is kept.
    private void Couple(int frame, int other, int side, in Matrix3 stiffness)
    {
        var (at, to, turned) = (PerFrame * frame, PerFrame * other, Turned(frame, side));
        Column(at, side, to + side, stiffness.A, turned);
        Column(at, side, to + 2, stiffness.B, turned);
        Column(at, side, to + 3, stiffness.C, turned);
        Column(at, side, to + 4, stiffness * Turned(other, side), turned);
    }

    private void Column(int at, int side, int column, Vector3d forces, Vector3d turned)
    {
        Entry(at + side, column, forces.X);
        Entry(at + 2, column, forces.Y);
        Entry(at + 3, column, forces.Z);
        Entry(at + 4, column, forces.Dot(turned));
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
