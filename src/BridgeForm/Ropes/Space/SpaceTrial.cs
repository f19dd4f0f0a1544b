using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Ropes.Space;

/// <summary>Where two ropes and their frames are assumed to be, and Newton's steps from there.</summary>
/// <remarks>
/// Unknowns, frame by frame, supports included: move of the left node and of the right one along the bridge, rise and move to
/// the right of the point midway between them, roll. Held supports give along the bridge as their backstays let them; all else
/// stays there. Bays keep forces of their own, which close the gaps between nodes only in the end: so ropes that hardly stretch
/// may swing far in a step.
/// </remarks>
internal sealed class SpaceTrial
{
    private const int PerFrame = SpaceSystem.PerFrame;
    private const int MostSteps = 40;

    // Forces out of balance, gaps times stiffness included, as a share of all loads; moments with the spacing as their lever.
    private const double Accuracy = LoadCaseSolver.DefaultAccuracy;
    private const double Rough = 1e-4;

    // A step turns no frame by more than this, radians, and leaves each bay so much of its pull along the bridge.
    private const double LargestTurn = 0.35;
    private const double LeastPull = 0.25;

    // On the way a frame may lean further than it may in the end.
    private const double Lost = 1.2;

    private readonly LoadCaseRequest _rope;
    private readonly double _half;
    private readonly double _fallen;
    private readonly RopeShape _calm;
    private readonly Vector3d[] _chords;
    private double[] _moves = [];
    private Vector3d[][] _forces = [];
    private (double[] Moves, Vector3d[][] Forces) _kept;
    private (double[] Moves, Vector3d[][] Forces)? _before;
    private readonly SpaceBay[][] _bays;
    private readonly Vector3d[][] _gaps;
    private readonly FrameTurn[] _turns;
    private readonly SpaceSystem _system;

    /// <summary>Begins in the calm.</summary>
    public SpaceTrial(LoadCaseRequest rope, double spacing, RopeShape calm, double fallen)
    {
        (_rope, _half, _calm, _fallen) = (rope, spacing / 2, calm, fallen);
        _chords =
        [
            .. calm.Segments.Select((_, i) => new Vector3d(
                calm.Nodes[i + 1].X - calm.Nodes[i].X, calm.Nodes[i + 1].Y - calm.Nodes[i].Y, 0)),
        ];
        _bays = [new SpaceBay[Bays], new SpaceBay[Bays]];
        _gaps = [new Vector3d[Bays], new Vector3d[Bays]];
        _turns = new FrameTurn[Bays + 1];
        _system = new SpaceSystem(Bays, _half);
        Begin();
    }

    private int Bays => _chords.Length;

    /// <summary>Back to the calm.</summary>
    public void Begin()
    {
        _moves = new double[PerFrame * (Bays + 1)];
        Vector3d[] forces = [.. _calm.Segments.Select(s => new Vector3d(s.Horizontal, -s.VerticalA, 0))];
        _forces = [forces, [.. forces]];
        (_kept, _before) = (Copy(), null);
    }

    /// <summary>Remembers this state, and the one that was remembered before.</summary>
    public void Keep() => (_before, _kept) = (_kept, Copy());

    /// <summary>Goes on from the state that was kept as from the one before it to that one, by a share of the way.</summary>
    public void GoOn(double share)
    {
        if (_before is not { } before)
        {
            return;
        }

        for (var i = 0; i < _moves.Length; i++)
        {
            _moves[i] += share * (_moves[i] - before.Moves[i]);
        }

        for (var side = 0; side < 2; side++)
        {
            for (var bay = 0; bay < Bays; bay++)
            {
                _forces[side][bay] += share * (_forces[side][bay] - before.Forces[side][bay]);
            }
        }
    }

    /// <summary>How much more the frame that has turned most is turned than in the state that was kept, radians.</summary>
    public double Rolled
    {
        get
        {
            var most = 0.0;
            for (var i = 4; i < _moves.Length; i += PerFrame)
            {
                most = Math.Max(most, Math.Abs(_moves[i] - _kept.Moves[i]));
            }

            return most;
        }
    }

    /// <summary>Goes back to the state that was kept.</summary>
    public void Return()
    {
        Array.Copy(_kept.Moves, _moves, _moves.Length);
        Array.Copy(_kept.Forces[0], _forces[0], Bays);
        Array.Copy(_kept.Forces[1], _forces[1], Bays);
    }

    private (double[] Moves, Vector3d[][] Forces) Copy() => ([.. _moves], [[.. _forces[0]], [.. _forces[1]]]);

    /// <summary>Newton's method under some loads; on success the state is a stable equilibrium of upright frames.</summary>
    /// <param name="loads">What stands on the ropes and blows.</param>
    /// <param name="onTheWay">The state is only a step towards another one: a look at it is enough.</param>
    public bool TryReach(SpaceLoads loads, bool onTheWay = false)
    {
        var load = new Vector3d(0, -_rope.WeightPerLength, loads.WindOnRope);
        var allowed = (onTheWay ? Rough : Accuracy)
            * (loads.Weights.Sum(Math.Abs) + loads.Winds.Sum(Math.Abs) + (2 * load.Length * _rope.UnstressedLengths.Sum()));
        for (var step = 0; step < MostSteps; step++)
        {
            _system.Clear();
            Hang(load);
            Assemble(_system, loads);
            if (_system.Matrix.Factored(_system.Matrix) is not { } factor)
            {
                return false;
            }

            if (_system.OutOfBalance <= allowed && Tear() <= allowed)
            {
                return Steepest() <= _fallen && !_bays.Any(side => side.Any(b => b.Slid));
            }

            Move(factor.Solve(_system.Force));

            // NaN fails too.
            if (!(Steepest() <= Lost))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>The state, after success.</summary>
    public SpaceShape Shape(SpaceLoads loads)
    {
        double[] rolls = [.. Enumerable.Range(0, Bays + 1).Select(Roll)];
        return new SpaceShape
        {
            Left = [.. rolls.Select((_, i) => Node(i, 0))],
            Right = [.. rolls.Select((_, i) => Node(i, 1))],
            Rolls = ImmutableArray.Create(rolls),
            LeftForces = [.. rolls.Select((_, i) => NodeForce(i, 0))],
            RightForces = [.. rolls.Select((_, i) => NodeForce(i, 1))],
            LargestTension = _bays.Max(side => side.Max(b => b.Piece.LargestTension)),
            Sideways = Math.Max(Furthest(0, loads), Furthest(1, loads)),
        };
    }

    // Between frames a rope is furthest out where it pulls to neither side.
    private double Furthest(int side, SpaceLoads loads)
    {
        var load = new Vector3d(0, -_rope.WeightPerLength, loads.WindOnRope);
        var furthest = 0.0;
        for (var bay = 0; bay < Bays; bay++)
        {
            var (from, piece) = (Moved(bay, side).Z, _bays[side][bay].Piece);
            furthest = Math.Max(furthest, from);
            var length = piece.Force.Z / load.Z;
            if (piece.Force.Z > 0 && piece.ForceEnd.Z < 0)
            {
                furthest = Math.Max(furthest, from + new SpaceCatenary(piece.Force, length, load, _rope.AxialStiffness).Reach.Z);
            }
        }

        return furthest;
    }

    private double Roll(int frame) => _moves[(PerFrame * frame) + 4];

    private double Steepest()
    {
        var steepest = 0.0;
        for (var i = 0; i <= Bays; i++)
        {
            // Of NaN the larger is NaN.
            steepest = Math.Max(steepest, Math.Abs(Roll(i)));
        }

        return steepest;
    }

    // Move of a node from where it is in the calm; only differences of it between neighbours count, so that long bridges keep
    // their digits.
    private Vector3d Moved(int frame, int side)
    {
        var (at, turn, sign) = (PerFrame * frame, _turns[frame], FrameTurn.Sign(side));
        return new Vector3d(
            _moves[at + side],
            _moves[at + 2] - (sign * turn.Half * turn.Up.Z),
            _moves[at + 3] + (sign * ((turn.Half * (turn.Up.Y - 1)) - turn.Less)));
    }

    private Vector3d Node(int frame, int side) =>
        new Vector3d(_calm.Nodes[frame].X, _calm.Nodes[frame].Y, FrameTurn.Sign(side) * _half) + Moved(frame, side);

    private Vector3d NodeForce(int frame, int side) =>
        (frame < Bays ? _bays[side][frame].Piece.Force : Vector3d.Zero)
        - (frame > 0 ? _bays[side][frame - 1].Piece.ForceEnd : Vector3d.Zero);

    private void Hang(Vector3d load)
    {
        for (var i = 0; i <= Bays; i++)
        {
            _turns[i] = i == 0 || i == Bays
                ? FrameTurn.AtSupport(Roll(i), _half)
                : FrameTurn.Of(Roll(i), _moves[PerFrame * i] - _moves[(PerFrame * i) + 1], _half);
        }

        for (var side = 0; side < 2; side++)
        {
            var from = Moved(0, side);
            for (var bay = 0; bay < Bays; bay++)
            {
                var to = Moved(bay + 1, side);
                _bays[side][bay] = SpaceBay.Hang(_rope, bay, _forces[side][bay], load);

                // How much further it reaches than to its nodes.
                _gaps[side][bay] = _bays[side][bay].Piece.Reach - _chords[bay] - (to - from);
                from = to;
            }
        }
    }

    private void Assemble(SpaceSystem system, SpaceLoads loads)
    {
        for (var i = 0; i <= Bays; i++)
        {
            system.Turn(i, _turns[i]);
        }

        for (var side = 0; side < 2; side++)
        {
            for (var bay = 0; bay < Bays; bay++)
            {
                system.Add(bay, side, _bays[side][bay], _gaps[side][bay]);
            }

            system.Hold(0, side, _rope.HeldA, _moves[side] + _calm.Nodes[0].X, _rope.AxialStiffness);
            system.Hold(Bays, side, _rope.HeldB, _rope.Span - _calm.Nodes[Bays].X - _moves[(PerFrame * Bays) + side], _rope.AxialStiffness);
        }

        for (var i = 1; i < Bays; i++)
        {
            system.Stand(i, loads, NodeForce(i, 0), NodeForce(i, 1));
        }
    }

    // What the gaps would pull with.
    private double Tear()
    {
        var most = 0.0;
        for (var side = 0; side < 2; side++)
        {
            for (var bay = 0; bay < Bays; bay++)
            {
                most = Math.Max(most, (_bays[side][bay].ByReach * _gaps[side][bay]).Length);
            }
        }

        return most;
    }

    private void Move(double[] step)
    {
        var changes = new Vector3d[2][];
        var share = 1.0;
        for (var i = 0; i <= Bays; i++)
        {
            share = Math.Min(share, LargestTurn / Math.Abs(step[(PerFrame * i) + 4]));
        }

        for (var side = 0; side < 2; side++)
        {
            changes[side] = new Vector3d[Bays];
            for (var bay = 0; bay < Bays; bay++)
            {
                var moved = SpaceSystem.Moved(step, bay + 1, side, _turns[bay + 1]) - SpaceSystem.Moved(step, bay, side, _turns[bay]);
                var change = _bays[side][bay].ByReach * (moved - _gaps[side][bay]);
                changes[side][bay] = change;
                var most = (LeastPull - 1) * _forces[side][bay].X;
                share = change.X < most ? Math.Min(share, most / change.X) : share;
            }
        }

        for (var side = 0; side < 2; side++)
        {
            for (var bay = 0; bay < Bays; bay++)
            {
                _forces[side][bay] += share * changes[side][bay];
            }
        }

        for (var i = 0; i < step.Length; i++)
        {
            _moves[i] += share * step[i];
        }
    }
}
