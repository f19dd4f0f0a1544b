namespace BridgeForm.Tests.Ropes.Pairs;

/// <summary>Two straight links without weight that meet at a load in the middle, by hand. Metres and newtons.</summary>
internal static class Links
{
    /// <summary>Load that hangs them so deep: 2·T·d/c with T = EA·(c/l − 1).</summary>
    public static double Load(double half, double length, double stiffness, double drop)
    {
        var chord = Math.Sqrt((half * half) + (drop * drop));
        return 2 * stiffness * ((chord / length) - 1) * drop / chord;
    }

    /// <summary>How deep they hang, by halves.</summary>
    public static double Drop(double half, double length, double stiffness, double load)
    {
        var (low, high) = (Math.Sqrt(Math.Max(0, (length * length) - (half * half))), half);
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Load(half, length, stiffness, middle) < load ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>dP/dd = 2·EA·(1/l − 1/c + d²/c³).</summary>
    public static double Stiffness(double half, double length, double stiffness, double drop)
    {
        var chord = Math.Sqrt((half * half) + (drop * drop));
        return 2 * stiffness * ((1 / length) - (1 / chord) + (drop * drop / (chord * chord * chord)));
    }
}
