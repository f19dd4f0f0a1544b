namespace BridgeForm.Ropes.Modes;

/// <summary>
/// Roll factors of a section that stands on two ropes, by formula: how many times as high its weights could stand over the
/// ropes before it turns over. Not how many times as heavy they could be: more weight pulls the ropes tighter as well.
/// Level bridge, uniform load, frames rigid in their plane, free to move sideways; derived by hand from the theory of the
/// shallow elastic cable (Irvine, Cable Structures, 1981, chapter 2, from memory).
/// </summary>
public static class RollFormulas
{
    /// <summary>One half of the bridge rolls left while the other rolls right: π²·s² / (8·f·h) of many bays.</summary>
    /// <param name="spacing">s, between the ropes' axes, metres.</param>
    /// <param name="sag">f, of the loaded ropes, metres.</param>
    /// <param name="height">h, of all weights over the ropes' axes, the ropes' own weight counted at 0, metres.</param>
    public static double Antisymmetric(double spacing, double sag, double height) =>
        Math.PI * Math.PI * spacing * spacing / (8 * sag * height);

    /// <summary>
    /// What few bays make of it, at least three: (n·sin(π/n) / π)², the stiffness of a chain of n straight bays against that of
    /// a curve; and 1 − 1/n² for odd n, whose middle bay hangs level, so that the same sag goes with less tension.
    /// </summary>
    /// <param name="bays">n.</param>
    public static double FewBays(int bays)
    {
        var chain = bays * Math.Sin(Math.PI / bays) / Math.PI;
        return chain * chain * (int.IsOddInteger(bays) ? 1 - (1.0 / bays / bays) : 1);
    }

    /// <summary>
    /// Two bays, one frame in the middle, which has no halves to roll against each other: s² / (4·f·h) from the ropes' pull,
    /// and λ²/16 times as much from their stretch.
    /// </summary>
    public static double OneFrame(double spacing, double sag, double height, double lambdaSquared) =>
        spacing * spacing / (4 * sag * height) * (1 + (lambdaSquared / 16));

    /// <summary>
    /// What the whole bridge rolling to one side asks, as a multiple of <see cref="Antisymmetric"/>: (Ω / 2π)² with Irvine's
    /// first symmetric root Ω; below 1 when λ² is below 4π².
    /// </summary>
    /// <param name="lambdaSquared">λ², backstays counted in the rope's length.</param>
    public static double SymmetricShare(double lambdaSquared)
    {
        var ratio = CableFormulas.SymmetricRoot(lambdaSquared) / (2 * Math.PI);
        return ratio * ratio;
    }
}
