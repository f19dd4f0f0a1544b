using System.Collections.Immutable;
using BridgeForm.Ropes.Modes;

namespace BridgeForm.Ropes.Pairs;

/// <summary>
/// Two ropes under frames that stand above them, solved together: Newton's method on the tilts of all frames, with the
/// stiffness of both ropes and the lever of the weights; each rope is in equilibrium by itself at every step
/// (<see cref="LoadCaseSolver"/>).
/// </summary>
/// <remarks>
/// At each frame the ropes carry ½ ± (e + h·tan θ)/s of each weight: the frame leans, and its weight with it. tan θ is the
/// difference of the ropes' heights over s: the ropes are taken to stay in their upright planes. A rigid base draws them
/// together by s·(1 − cos θ); what that changes is of the order of θ² (at 7° about half a per cent of the tilt, either way).
/// The lever is let in by steps where it does not go at once, and an equilibrium counts only where ropes and lever together
/// are stiff against every motion of the frames. On the way from upright frames the first that is not is the end: it rolls over.
/// </remarks>
public static class PairSolver
{
    // tan θ of all frames has settled when it is wrong by less than this, a tenth of the promised 1e-6 rad: what tan θ of the
    // loads and tan θ of the ropes still differ by, times what Newton's last step made of such a difference. That is λ/(λ − 1)
    // or so, much where the section is about to turn over.
    private const double Settled = 1e-7;
    private const int MostSteps = 30;

    // The lever is let in by no smaller share than this.
    private const double SmallestShare = 1.0 / 64;

    // Frames that lean by more than 45° stand no more; on the way there everything has slid off.
    private const double Fallen = 1;

    // One step may be longer than the one before, but not by more than this: Newton's steps shrink where there is an answer.
    private const double Growth = 1.5;

    /// <summary>Both ropes, or why one has no shape.</summary>
    /// <param name="rope">One rope: lengths, stiffness, supports; its loads are not read.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them.</param>
    /// <param name="accuracy">Largest residual as a share of the total load on a rope.</param>
    /// <param name="maxIterations">Most Newton steps for one rope.</param>
    /// <param name="pair">Both ropes.</param>
    /// <param name="failure">Why there are none, as a sentence.</param>
    public static bool TryFind(
        LoadCaseRequest rope, double spacing, PairLoads loads, double accuracy, int maxIterations, out PairShape? pair, out string? failure)
        => TryFind((rope, rope), spacing, loads, accuracy, maxIterations, out pair, out failure);

    /// <summary>The same for ropes that need not be alike, such as of two lengths.</summary>
    /// <param name="ropes">The left rope and the right one; their loads are not read.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them.</param>
    /// <param name="accuracy">Largest residual as a share of the total load on a rope.</param>
    /// <param name="maxIterations">Most Newton steps for one rope.</param>
    /// <param name="pair">Both ropes.</param>
    /// <param name="failure">Why there are none, as a sentence.</param>
    internal static bool TryFind(
        (LoadCaseRequest Left, LoadCaseRequest Right) ropes, double spacing, PairLoads loads, double accuracy, int maxIterations,
        out PairShape? pair, out string? failure)
    {
        pair = null;
        var first = new Trial(ropes, spacing, loads, accuracy, maxIterations);
        if (!first.TryMove(null, out failure))
        {
            return false;
        }

        var tilts = first.Difference();
        pair = Shape(first, tilts, tilts, rollsOver: false);
        if (pair.Left.Nodes.Length < 3)
        {
            return true;
        }

        var upright = first.IsAlike ? first.IsStiffAlike() : first.IsStiff(1) && first.TryLean(1);
        if (!upright && !first.IsAlike && new Trial(ropes, spacing, loads, accuracy, maxIterations) is var again
            && first.WasStiff && again.TryMove(null, out _) && BySteps(again))
        {
            (first, upright) = (again, true);
        }

        pair = upright ? Shape(first, first.Difference(), tilts, rollsOver: false) : pair with { RollsOver = true };
        return true;
    }

    private static PairShape Shape(Trial trial, double[] tilts, double[] first, bool rollsOver) => new()
    {
        Left = trial.Left,
        Right = trial.Right,
        Tilts = ImmutableArray.Create(tilts),
        FirstOrderTilts = ImmutableArray.Create(first),
        RollsOver = rollsOver,
    };

    private static bool BySteps(Trial trial)
    {
        var (done, share) = (0.0, 0.5);
        while (done < 1)
        {
            var before = trial.Lean;
            var next = Math.Min(1, done + share);
            if (trial.TryLean(next))
            {
                done = next;
                continue;
            }

            share /= 2;
            if (share < SmallestShare || !trial.TryMove(before, out _))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Both ropes under frames that lean as assumed.</summary>
    private sealed class Trial(
        (LoadCaseRequest Left, LoadCaseRequest Right) ropes, double spacing, PairLoads loads, double accuracy, int maxIterations)
    {
        /// <summary>Upright frames stay so: both ropes are one and carry alike.</summary>
        public bool IsAlike { get; } = loads.IsEven && ReferenceEquals(ropes.Left, ropes.Right);

        public RopeShape Left { get; private set; } = null!;

        public RopeShape Right { get; private set; } = null!;

        /// <summary>
        /// tan θ by which the loads were shared, times the share of the lever that is let in; null before the frames lean.
        /// </summary>
        public double[]? Lean { get; private set; }

        /// <summary>Ropes and lever were stiff together with the frames upright.</summary>
        public bool WasStiff { get; private set; }

        /// <summary>Shares the loads by some lean and finds both ropes anew.</summary>
        public bool TryMove(double[]? lean, out string? failure)
        {
            if (!TryOne(ropes.Left, loads.OnOne(lean, spacing, 1), Left ?? ropes.Left.Start, out var left, out failure))
            {
                return false;
            }

            var right = left;
            if (!(lean is null && IsAlike)
                && !TryOne(ropes.Right, loads.OnOne(lean, spacing, -1), Right ?? ropes.Right.Start, out right, out failure))
            {
                return false;
            }

            (Left, Right, Lean, _factor) = (left!, right!, lean, null);
            return true;
        }

        /// <summary>tan θ of the shapes as they are.</summary>
        public double[] Difference()
        {
            var tilts = new double[Left.Nodes.Length];
            for (var i = 1; i + 1 < tilts.Length; i++)
            {
                tilts[i] = (Right.Nodes[i].Y - Left.Nodes[i].Y) / spacing;
            }

            return tilts;
        }

        /// <summary>Ropes that carry alike with the lever are stiff against rolling.</summary>
        public bool IsStiffAlike() => PairStiffness.OfOne(BayStiffness.Find(ropes.Left, Left))
            .Less(1, PairStiffness.LeverOnOne(loads, spacing)).FactoredInPlace() is not null;

        /// <summary>Ropes with so much of the lever are stiff against every motion.</summary>
        public bool IsStiff(double share) => WasStiff = Factor(share) is not null;

        /// <summary>Newton's method from where the frames are, with a share of the lever.</summary>
        public bool TryLean(double share)
        {
            var (lean, before) = (Lean ?? new double[Left.Nodes.Length], double.PositiveInfinity);
            var apart = OutOfBalance(lean, share);
            for (var step = 0; step < MostSteps; step++)
            {
                if (Factor(share) is not { } factor)
                {
                    return false;
                }

                var next = Next(factor, lean, share);
                var moved = 0.0;
                for (var i = 0; i < next.Length; i++)
                {
                    moved = Math.Max(moved, Math.Abs(next[i] - lean[i]));
                }

                var steepest = next.Max(Math.Abs);

                // Steps that grow lead nowhere; NaN fails too.
                if (!(moved <= before * Growth && steepest <= Fallen) || !TryMove(next, out _))
                {
                    return false;
                }

                var left = OutOfBalance(next, share);
                if (left <= 0 || left * moved <= Settled * apart)
                {
                    return Factor(share) is not null;
                }

                (lean, before, apart) = (next, moved, left);
            }

            return false;
        }

        // How far the ropes as they hang now lean otherwise than their loads were shared by.
        private double OutOfBalance(double[] lean, double share)
        {
            var (now, most) = (Difference(), 0.0);
            for (var i = 0; i < now.Length; i++)
            {
                most = Math.Max(most, Math.Abs((share * now[i]) - lean[i]));
            }

            return most;
        }

        // Asked for twice where the ropes have not moved in between.
        private BandedMatrix? Factor(double share)
        {
            if (_factor is not { } last || !last.Share.Equals(share))
            {
                last = (share, PairStiffness.OfBoth(BayStiffness.Find(ropes.Left, Left), BayStiffness.Find(ropes.Right, Right))
                    .LessLever(share, loads, spacing).FactoredInPlace());
                _factor = last;
            }

            return last.Matrix;
        }

        private (double Share, BandedMatrix? Matrix)? _factor;

        // Where the ropes hang now the frames lean by the difference of their heights, and the lever pulls by as much more than
        // was assumed: the force that is out of balance moves ropes and lever together.
        private double[] Next(BandedMatrix factor, double[] lean, double share)
        {
            var now = Difference();
            var force = new double[factor.Size];
            for (var i = 1; i + 1 < now.Length; i++)
            {
                var more = loads.HeightMoments[i] * ((now[i] * share) - lean[i]) / spacing;
                (force[(4 * (i - 1)) + 1], force[(4 * (i - 1)) + 3]) = (more, -more);
            }

            var moves = factor.Solve(force);
            for (var i = 1; i + 1 < now.Length; i++)
            {
                now[i] = share * (now[i] + ((moves[(4 * (i - 1)) + 1] - moves[(4 * (i - 1)) + 3]) / spacing));
            }

            return now;
        }

        private bool TryOne(LoadCaseRequest rope, ImmutableArray<double> on, RopeShape? start, out RopeShape? shape, out string? failure) =>
            LoadCaseSolver.TryFind(rope with { Loads = on, Start = start }, accuracy, maxIterations, out shape, out failure);
    }
}
