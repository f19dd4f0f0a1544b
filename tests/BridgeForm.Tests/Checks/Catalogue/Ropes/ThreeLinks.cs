namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>As <see cref="TwoLinks"/>, of three equal chords under like loads at two frames, over a span of 144 in.</summary>
internal static class ThreeLinks
{
    private const double Span = 144;

    /// <summary>Chord and fall of the first bay for a sag in the middle of the level one, whose own arc hangs below its chord.</summary>
    public static (double Chord, double Fall) Chord(TwoLinks rope, double load, double sag)
    {
        var (chord, fall) = (48.0, sag);
        for (var i = 0; i < 50; i++)
        {
            var level = Level(rope, load, fall, chord, chord);
            fall = sag - (rope.PerInch * chord * chord / (8 * level));
            // 2·√(c² − f²) + c = 144.
            chord = (-(2 * Span) + Math.Sqrt((4 * Span * Span) + (12 * ((Span * Span) + (4 * fall * fall))))) / 6;
        }

        return (chord, fall);
    }

    /// <summary>Slope of the first chord under another load, and how much harder the rope pulls before the frame than behind it.</summary>
    public static (double Slope, double Difference) Loaded(TwoLinks rope, double dead, double load, double chord, double fall)
    {
        var length = Unstressed(rope, Level(rope, dead, fall, chord, chord), chord, fall);
        var middle = Unstressed(rope, Level(rope, dead, fall, chord, chord), chord, 0);
        var (low, high) = (1e-3, 40.0);
        for (var i = 0; i < 200; i++)
        {
            var drop = (low + high) / 2;
            (low, high) = Gap(rope, load, drop, length, middle) > 0 ? (drop, high) : (low, drop);
        }

        var (run, pull) = Run(rope, load, low, length, middle);
        var (before, behind) = (load + (rope.PerInch * middle / 2), rope.PerInch * middle / 2);
        return (Math.Atan(low / run), double.Hypot(pull, before) - double.Hypot(pull, behind));
    }

    private static double Level(TwoLinks rope, double load, double fall, double chord, double middle) =>
        (load + (rope.PerInch * (chord + middle) / 2)) * Math.Sqrt((chord * chord) - (fall * fall)) / fall;

    private static double Unstressed(TwoLinks rope, double level, double chord, double fall)
    {
        var along = Math.Sqrt((chord * chord) - (fall * fall)) / chord;
        var tension = level / along;
        return (chord + (Math.Pow(rope.PerInch * along, 2) * Math.Pow(chord, 3) / (24 * tension * tension)))
            / (1 + (tension / rope.Stiffness));
    }

    // What the first link's unstressed length is too long for a fall.
    private static double Gap(TwoLinks rope, double load, double drop, double length, double middle)
    {
        var (run, pull) = Run(rope, load, drop, length, middle);
        return length - Unstressed(rope, pull, double.Hypot(run, drop), drop);
    }

    private static (double Run, double Level) Run(TwoLinks rope, double load, double drop, double length, double middle)
    {
        var (run, level) = (48.0, 0.0);
        for (var i = 0; i < 50; i++)
        {
            level = (load + (rope.PerInch * (length + middle) / 2)) * run / drop;
            var stretched = middle * (1 + (level / rope.Stiffness));
            run = (Span - (stretched - (Math.Pow(rope.PerInch, 2) * Math.Pow(stretched, 3) / (24 * level * level)))) / 2;
        }

        return (run, level);
    }
}
