using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>How treads hand what lies on them to the stringers. Metres, z from the middle of the bridge.</summary>
internal static class StringerShares
{
    /// <summary>Distance of neighbouring stringers.</summary>
    public static double Apart(BridgeParameters parameters, StringerParameters stringer) =>
        (DeckWidth.Filled(parameters) - stringer.Section.Thickness) / (stringer.Count - 1);

    /// <summary>A tread over all stringers.</summary>
    public static ContinuousBeam Tread(BridgeParameters parameters, StringerParameters stringer) =>
        new(stringer.Count, Apart(parameters, stringer));

    /// <summary>z of a stringer.</summary>
    public static double Place(BridgeParameters parameters, StringerParameters stringer, int index) =>
        (index - ((stringer.Count - 1) / 2.0)) * Apart(parameters, stringer);

    /// <summary>Width whose area load the stringer carries that carries most: 1.25 of the distance for the middle one of three.</summary>
    public static double LargestWidth(BridgeParameters parameters, StringerParameters stringer)
    {
        var tread = Tread(parameters, stringer);
        return stringer.Count == 2 ? DeckWidth.Filled(parameters) / 2 : tread.Shares(0, tread.Length).Max() * tread.Length;
    }

    /// <summary>Largest share of a load on a patch, as wide as the patch and anywhere on the treads.</summary>
    public static double LargestOfPatch(BridgeParameters parameters, StringerParameters stringer, double patch)
    {
        var tread = Tread(parameters, stringer);
        var half = Math.Min(patch, tread.Length) / 2;
        return Enumerable.Range(0, stringer.Count)
            .Select(i => Math.Clamp(i * tread.Apart, half, tread.Length - half))
            .Max(middle => tread.Shares(middle - half, middle + half).Max());
    }

    /// <summary>
    /// A load of the deck, spread evenly between two z, as it comes onto a base: spread, or in the stringers' places (what
    /// lies beyond the outer ones is drawn in to them).
    /// </summary>
    public static BaseBeam WithDeck(this BaseBeam beam, BridgeParameters parameters, double from, double to, double down)
    {
        if (parameters.Deck.Stringer is not { } stringer)
        {
            return beam.Plus(spreads: [new(from, to, down)]);
        }

        var tread = Tread(parameters, stringer);
        var shares = tread.Shares(from + (tread.Length / 2), to + (tread.Length / 2));
        return beam.Plus([.. shares.Select((share, i) => new BeamForce(Place(parameters, stringer, i), share * down))]);
    }
}

/// <summary>
/// A tread in one piece over three or more stringers, equally far apart: what it presses each of them with, by the equation
/// of three moments. Metres from the first stringer, newtons.
/// </summary>
/// <param name="Supports">How many, at least 2.</param>
/// <param name="Apart">Distance of neighbours.</param>
internal sealed record ContinuousBeam(int Supports, double Apart)
{
    /// <summary>From the first to the last.</summary>
    public double Length => (Supports - 1) * Apart;

    /// <summary>
    /// Reactions under a load of one newton spread evenly from one place to another; what would lie beyond the first or last
    /// support is drawn in onto the beam.
    /// </summary>
    public double[] Shares(double from, double to)
    {
        var (a, b) = (Math.Clamp(from, 0, Length), Math.Clamp(to, 0, Length));
        if (b - a < Tolerances.OnAPoint)
        {
            (a, b) = (
                Math.Clamp(a - (Tolerances.OnAPoint / 2), 0, Length - Tolerances.OnAPoint),
                Math.Clamp(a + (Tolerances.OnAPoint / 2), Tolerances.OnAPoint, Length));
        }

        var spans = new Span[Supports - 1];
        for (var i = 0; i < spans.Length; i++)
        {
            var left = i * Apart;
            spans[i] = new Span(Math.Clamp(a - left, 0, Apart), Math.Clamp(b - left, 0, Apart), 1 / (b - a), Apart);
        }

        return Reactions(spans, Moments(spans));
    }

    /// <summary>Moments over the supports, none at the ends: a·M(i−1) + 4a·M(i) + a·M(i+1) = −(terms of both spans).</summary>
    private double[] Moments(Span[] spans)
    {
        var moments = new double[Supports];
        var (diagonal, right) = (new double[Supports], new double[Supports]);
        for (var i = 1; i < Supports - 1; i++)
        {
            diagonal[i] = 4 * Apart;
            right[i] = -(spans[i - 1].AboutLeft + spans[i].AboutRight);
            if (i > 1)
            {
                var factor = Apart / diagonal[i - 1];
                diagonal[i] -= factor * Apart;
                right[i] -= factor * right[i - 1];
            }
        }

        for (var i = Supports - 2; i > 0; i--)
        {
            moments[i] = (right[i] - (Apart * moments[i + 1])) / diagonal[i];
        }

        return moments;
    }

    private double[] Reactions(Span[] spans, double[] moments)
    {
        var reactions = new double[Supports];
        for (var i = 0; i < spans.Length; i++)
        {
            var turned = (moments[i + 1] - moments[i]) / Apart;
            reactions[i] += spans[i].LeftReaction + turned;
            reactions[i + 1] += spans[i].Load - spans[i].LeftReaction - turned;
        }

        return reactions;
    }

    /// <summary>An even load w from c to d of a span L.</summary>
    private readonly record struct Span(double From, double To, double PerMetre, double Length)
    {
        public double Load => PerMetre * (To - From);

        public double LeftReaction => Load * (Length - ((From + To) / 2)) / Length;

        /// <summary>6·A·ā/L with the moments' area about the left end: w/(4L)·[d²(2L² − d²) − c²(2L² − c²)].</summary>
        public double AboutLeft => Term(From, To);

        /// <summary>The same about the right end.</summary>
        public double AboutRight => Term(Length - To, Length - From);

        private double Term(double c, double d) =>
            PerMetre / (4 * Length) * ((d * d * ((2 * Length * Length) - (d * d))) - (c * c * ((2 * Length * Length) - (c * c))));
    }
}
