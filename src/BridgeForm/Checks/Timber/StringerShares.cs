using BridgeForm.Project;

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
