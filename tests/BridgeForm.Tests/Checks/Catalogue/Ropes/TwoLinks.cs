using BridgeForm.Loads;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// Statics of one rope of a bridge of two bays, by hand: two straight elastic links with a load where they meet, half of each
/// link's own weight at its ends, and the link's arc longer than its chord by (w·cos θ)²·c³ / (24·T²). What it leaves out is
/// of the order of (weight of a link / tension)². Inches and pounds-force.
/// </summary>
/// <param name="Half">Half the span.</param>
/// <param name="PerInch">Weight: 1.04 lb/ft of a 3/4 in 6x19 rope (from memory).</param>
/// <param name="Stiffness">EA: 13,500 ksi × 0.483·d² (from memory).</param>
internal sealed record TwoLinks(double Half = 72, double PerInch = 1.04 / 12, double Stiffness = 13.5e6 * 0.483 * 0.75 * 0.75)
{
    /// <summary>Steel's expansion for one degree Fahrenheit (from memory).</summary>
    public const double Expansion = 6.5e-6;

    private const double PoundForce = 4.4482216152605;

    /// <summary>Dead load on one rope at the middle frame; the weights themselves have tests of their own.</summary>
    public static double DeadLoad(TwoBays bridge) => bridge.Context.Rope.Loads[1] / PoundForce;

    /// <summary>Area load on one rope: pressure × clear width × two half bays × the rope's share.</summary>
    public static double AreaLoad(TwoBays bridge, double psf, double share) => psf / 144 * bridge.Between * 72 * share;

    /// <summary>
    /// Dead and area load on the rope that has the share, at the middle frame, which leans and its weights with it; how high
    /// the bridge's own weight and the deck lie has tests of its own. People's weight lies 1.0 m over the deck (common
    /// practice, no source).
    /// </summary>
    public static double Heavier(TwoBays bridge, double psf, double share, double growth = 1)
    {
        const double Metre = 1 / TwoBays.Inch;
        var (dead, standing) = (DeadLoad(bridge), StandingWeights.Weigh(bridge.Context.Layout));
        return new TwoRopes(bridge.Spacing, bridge.Sag, 2 * dead, standing.Moments[1] / PoundForce * Metre, growth)
            .With(AreaLoad(bridge, psf, 1), (share - 0.5) * bridge.Spacing, (standing.DeckHeights[1] * Metre) + Metre).Loads.Heavier;
    }

    public static double Newtons(double pounds) => pounds * PoundForce;

    /// <summary>Level pull, by moments of one link about the support.</summary>
    public double Level(double load, double drop, double length) => (load + (PerInch * length)) / 2 * Half / drop;

    /// <summary>Unstressed length of one link that hangs so low under a load.</summary>
    public double Length(double load, double drop)
    {
        var length = Chord(drop);
        for (var i = 0; i < 8; i++)
        {
            var level = Level(load, drop, length);
            length = Arc(drop, level) / (1 + (Mean(drop, level) / Stiffness));
        }

        return length;
    }

    /// <summary>How low a link of such a length hangs under a load, by halves.</summary>
    public double Drop(double load, double length, double growth = 1)
    {
        var (low, high) = (1e-3, Half);
        for (var i = 0; i < 200; i++)
        {
            var drop = (low + high) / 2;
            var level = Level(load, drop, length);
            var tooLow = Arc(drop, level) > length * growth * (1 + (Mean(drop, level) / Stiffness));
            (low, high) = tooLow ? (low, drop) : (drop, high);
        }

        return (low + high) / 2;
    }

    /// <summary>Tension at the support.</summary>
    public double Tension(double load, double drop, double length) =>
        double.Hypot(Level(load, drop, length), (load / 2) + (PerInch * length));

    /// <summary>Slowest vertical motion: the mass where the links meet on their stiffness along and across them, hertz.</summary>
    public double Bounce(double load, double drop, double length)
    {
        var (chord, level) = (Chord(drop), Level(load, drop, length));
        var (sin, cos, tension) = (drop / chord, Half / chord, Mean(drop, level));
        // A link gives by its stretch, and by its own sag (Ernst's equivalent modulus, from memory).
        var give = (length / Stiffness) + (Math.Pow(PerInch * cos, 2) * Math.Pow(chord, 3) / (12 * Math.Pow(tension, 3)));
        var stiffness = 2 * ((sin * sin / give) + (tension / chord * cos * cos));
        return Math.Sqrt(stiffness * 386.0886 / (load + (PerInch * length))) / (2 * Math.PI);
    }

    private double Chord(double drop) => double.Hypot(Half, drop);

    private double Mean(double drop, double level) => level * Chord(drop) / Half;

    private double Arc(double drop, double level)
    {
        var chord = Chord(drop);
        return chord + (Math.Pow(PerInch * Half / chord, 2) * Math.Pow(chord, 3) / (24 * Math.Pow(Mean(drop, level), 2)));
    }
}
