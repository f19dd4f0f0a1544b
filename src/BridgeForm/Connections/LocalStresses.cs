namespace BridgeForm.Connections;

/// <summary>Wood around a group of fasteners that pull along the grain, by NDS 2018 appendix E (from memory).</summary>
public static class LocalStresses
{
    /// <summary>Where the equations are from.</summary>
    public const string Source = "NDS 2018 appendix E.2 to E.4 (from memory)";

    /// <summary>Net section in tension, newtons: Ft' · Anet.</summary>
    /// <param name="tension">Ft', pascals.</param>
    /// <param name="area">Left beside the holes, m².</param>
    public static double NetSection(double tension, double area) => tension * area;

    /// <summary>A row torn out, two planes of shear whose stress falls to nothing: n · Fv' · t · s, newtons.</summary>
    /// <param name="shear">Fv', pascals.</param>
    /// <param name="thickness">Of the wood, metres.</param>
    /// <param name="count">Fasteners in the row.</param>
    /// <param name="critical">The smaller of end distance and spacing, metres.</param>
    public static double Row(double shear, double thickness, int count, double critical) => count * shear * thickness * critical;

    /// <summary>A whole group torn out: half of both outer rows, and the net section between them, newtons.</summary>
    /// <param name="outerRows">What the two outer rows would take, newtons together.</param>
    /// <param name="tension">Ft', pascals.</param>
    /// <param name="between">Net area between the outer rows, m².</param>
    public static double Group(double outerRows, double tension, double between) => (outerRows / 2) + (tension * between);

    /// <summary>Where the rule of a load hung near a member's end is from.</summary>
    public const string HungSource = "NDS 2018 3.4.3.3 (from memory)";

    /// <summary>Depths from a member's end within which the smaller value holds.</summary>
    public const double NearEnd = 5;

    /// <summary>
    /// Shear of a bending member that is pulled across its grain, newtons: ⅔ · Fv' · b · de, and (de/d)² of that nearer than five
    /// depths to its end.
    /// </summary>
    /// <param name="shear">Fv', pascals.</param>
    /// <param name="breadth">b, metres.</param>
    /// <param name="depth">d, metres.</param>
    /// <param name="effective">de: from the loaded edge to the fastener furthest from it, metres.</param>
    /// <param name="end">From the fasteners to the nearer end, metres.</param>
    public static double Hung(double shear, double breadth, double depth, double effective, double end)
    {
        var whole = 2.0 / 3 * shear * breadth * effective;
        return end < NearEnd * depth ? whole * (effective / depth) * (effective / depth) : whole;
    }
}
