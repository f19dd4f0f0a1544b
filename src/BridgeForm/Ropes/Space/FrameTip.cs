using BridgeForm.Quantities;

namespace BridgeForm.Ropes.Space;

/// <summary>
/// How far what stands on a frame tips to the side about the ropes' direction. Upright on level ropes that is the frame's roll. On
/// ropes that climb, a square frame leans back and stays square to them, so it tips less by its roll, and by its yaw as well:
/// tan(tip) = cos(slope)·tan(roll) + sin(slope)·tan(yaw)/cos(roll).
/// </summary>
/// <param name="Sin">Of the tip.</param>
/// <param name="Cos">Of the tip.</param>
/// <param name="Shorter">Height along the frame over height straight up above the ropes.</param>
/// <param name="ByYaw">Its change by <see cref="FrameTurn.Yaw"/>, radians a metre.</param>
/// <param name="ByRoll">Its change by roll.</param>
/// <param name="ByYawYaw">Second derivative.</param>
/// <param name="ByYawRoll">Second derivative.</param>
/// <param name="ByRollRoll">Second derivative.</param>
internal readonly record struct FrameTip(
    double Sin, double Cos, double Shorter, double ByYaw, double ByRoll, double ByYawYaw, double ByYawRoll, double ByRollRoll)
{
    /// <summary>Of a frame.</summary>
    /// <param name="turn">How it has turned.</param>
    /// <param name="length">Of its base between the nodes, metres.</param>
    /// <param name="lean">How far it leans towards B for each metre up.</param>
    public static FrameTip Of(in FrameTurn turn, double length, double lean)
    {
        var cos = 1 / Math.Sqrt(1 + (lean * lean));
        var sin = -lean * cos;
        var (secant, tangent) = (1 / turn.Up.Y, turn.Up.Z / turn.Up.Y);

        // Tangent of the yaw, and how it changes by the left node's move.
        var across = 2 * turn.Half / length;
        var yaw = -turn.Yaw / length / across;
        var (byYaw, byYawYaw) = (-1 / (length * across * across * across), 3 * yaw / (length * length * Elementary.Pow(across, 4)));

        var tip = (cos * tangent) + (sin * yaw * secant);
        var (t, r) = (sin * secant * byYaw, secant * ((cos * secant) + (sin * yaw * tangent)));
        var (tt, tr) = (sin * secant * byYawYaw, sin * secant * tangent * byYaw);
        var rr = secant * ((2 * cos * secant * tangent) + (sin * yaw * ((tangent * tangent) + (secant * secant))));

        // Of the arc tangent.
        var share = 1 / (1 + (tip * tip));
        var bend = -2 * tip * share * share;
        var cosTip = Math.Sqrt(share);
        return new FrameTip(
            tip * cosTip, cosTip, cos, share * t, share * r, (share * tt) + (bend * t * t), (share * tr) + (bend * t * r),
            (share * rr) + (bend * r * r));
    }
}
