namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// Both ropes of a bridge of two bays by hand, each as <see cref="TwoLinks"/>, under one frame that leans: the ropes carry
/// ½ ± (e + h·t)/s of each weight, t the difference of their falls over s, found by turns. Inches and pounds.
/// </summary>
/// <param name="Spacing">s.</param>
/// <param name="Sag">Of the empty bridge.</param>
/// <param name="Hanging">Weight of the empty bridge at the frame, both ropes.</param>
/// <param name="Moment">That weight × its height over the ropes.</param>
/// <param name="Growth">Rope's length over its length as marked.</param>
internal sealed record TwoRopes(double Spacing, double Sag, double Hanging, double Moment, double Growth)
{
    /// <summary>Each rope.</summary>
    public TwoLinks Rope { get; init; } = new();

    /// <summary>Weight under which each rope hung so deep when it was marked; the bridge's own unless said otherwise.</summary>
    public double Marked { get; init; } = Hanging;

    /// <summary>By how much each link of the heavier rope is longer.</summary>
    public double Longer { get; init; }

    private double On { get; init; }

    private double Aside { get; init; }

    private double Lever { get; init; }

    /// <summary>Weight × height of everything.</summary>
    public double Standing => Moment + Lever;

    /// <summary>tan θ of the frame; infinite where the turns run away.</summary>
    public double Tilt => Leaning(1);

    /// <summary>The same before the weights lean with it.</summary>
    public double FirstTilt => Leaning(0);

    /// <summary>Load on the two ropes.</summary>
    public (double Heavier, double Lighter) Loads
    {
        get
        {
            var lean = (Aside + (Standing * Tilt)) / Spacing;
            return (((Hanging + On) / 2) + lean, ((Hanging + On) / 2) - lean);
        }
    }

    private double Length => Rope.Length(Marked / 2, Sag);

    /// <summary>With one weight more, so far from the middle and so high.</summary>
    public TwoRopes With(double weight, double fromMiddle, double high) =>
        this with { On = On + weight, Aside = Aside + (weight * fromMiddle), Lever = Lever + (weight * high) };

    /// <summary>Roll factor: both ropes give way one after the other, kA·kB / (kA + kB)·s² against all weight × height.</summary>
    public double Factor()
    {
        if (!double.IsFinite(Tilt))
        {
            return 0;
        }

        var (heavier, lighter) = Loads;
        var (a, b) = (Stiffness(heavier), Stiffness(lighter));
        return a * b / (a + b) * Spacing * Spacing / Standing;
    }

    /// <summary>Pounds for an inch of fall.</summary>
    public double Stiffness(double load) => 2 / (Drop(load + 1) - Drop(load - 1));

    private double Drop(double load, double longer = 0) => Rope.Drop(load, Length + longer, Growth);

    private double Leaning(int lever)
    {
        var t = 0.0;
        for (var i = 0; i < 300; i++)
        {
            var lean = (Aside + (lever * Standing * t)) / Spacing;
            t = (Drop(((Hanging + On) / 2) + lean, Longer) - Drop(((Hanging + On) / 2) - lean)) / Spacing;
            if (!(Math.Abs(t) < 1))
            {
                return double.PositiveInfinity;
            }
        }

        return t;
    }
}
