using BridgeForm.Solids;

namespace BridgeForm.Ropes.Space;

/// <summary>
/// One bay of one rope in space, with what sliding backstays feed into it: where it reaches under a force, and how it resists
/// at either end. Newtons, metres.
/// </summary>
/// <param name="Piece">The rope of the bay.</param>
/// <param name="ByReach">How its force at A changes with its reach, N/m.</param>
/// <param name="AtEnd">
/// The same of its force at B: not the same where a backstay feeds rope in, which brings its own load along.
/// </param>
/// <param name="Slid">The frame has come to the saddle.</param>
internal readonly record struct SpaceBay(SpaceCatenary Piece, Matrix3 ByReach, Matrix3 AtEnd, bool Slid)
{
    // As in FedBay.
    private const double ShortestShare = 0.01;
    private const int MaxRounds = 50;

    /// <summary>A bay under a force at its A-side end.</summary>
    /// <param name="rope">The rope.</param>
    /// <param name="bay">Number, from 0.</param>
    /// <param name="force">From A towards B.</param>
    /// <param name="load">On each metre.</param>
    public static SpaceBay Hang(LoadCaseRequest rope, int bay, Vector3d force, Vector3d load)
    {
        var length = rope.UnstressedLengths[bay];
        var (a, b) = (bay == 0 ? rope.BackstayA : null, bay == rope.UnstressedLengths.Length - 1 ? rope.BackstayB : null);
        if (a is null && b is null)
        {
            var piece = new SpaceCatenary(force, length, load, rope.AxialStiffness);
            var stiffness = piece.Stiffness;
            return new SpaceBay(piece, stiffness, stiffness, Slid: false);
        }

        return Fed(rope, length, (a, b), force, load);
    }

    // The tension at B hangs on the weight of what was fed in: rounds that contract by about load·length/EA each.
    private static SpaceBay Fed(
        LoadCaseRequest rope, double length, (SlidingBackstay? A, SlidingBackstay? B) stays, Vector3d force, Vector3d load)
    {
        var stiffness = rope.AxialStiffness;
        var (fedA, byA) = stays.A?.Fed(force.Length, stiffness) ?? (0, 0);
        var (now, byB) = (length + fedA, 0.0);
        for (var i = 0; stays.B is not null && i < MaxRounds; i++)
        {
            (var fedB, byB) = stays.B.Fed((force - (now * load)).Length, stiffness);
            var change = Math.Abs(length + fedA + fedB - now);
            now = length + fedA + fedB;
            if (change <= Math.BitIncrement(now) - now)
            {
                break;
            }
        }

        var slid = !(now > ShortestShare * length);
        var piece = new SpaceCatenary(force, slid ? ShortestShare * length : now, load, stiffness);
        if (slid)
        {
            return new SpaceBay(piece, piece.Stiffness, piece.Stiffness, slid);
        }

        // d(length)·(1 + byB·t·load) = (byA·Force/T + byB·t)·d(Force), t the direction at the end.
        var (end, at) = (piece.ForceEnd, piece.ForceEnd.Length);
        var more = ((byA / force.Length * force) + (byB / at * end)) / (1 + (byB / at * end.Dot(load)));
        var give = piece.Give + Matrix3.Outer(((1 / stiffness) + (1 / at)) * end, more);
        var byReach = give.Inverse();
        return new SpaceBay(piece, byReach, (Matrix3.Identity - Matrix3.Outer(load, more)) * byReach, slid);
    }
}
