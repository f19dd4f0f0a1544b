namespace BridgeForm.Checks.Timber;

/// <summary>
/// What brings a characteristic strength of EN 338 to a stress that the NDS's formulas may take: k_mod for moisture and the load's
/// duration, γ_M for the wood, γ_F for the load, for which those formulas have no factor of their own.
/// </summary>
internal static class EuropeanFactors
{
    private const double Material = 1.3;
    private const double Load = 1.5;
    private const double Cracked = 0.67;

    /// <summary>What is said in every result, after a space.</summary>
    public const string Note = " (EN 338 characteristic value, converted; a licensed engineer confirms)";

    /// <summary>What is said of lumber thinner than the NDS has values for.</summary>
    public const string BoardNote =
        " (EN 338 characteristic value, converted; boards are of the class only if so stamped; a licensed engineer confirms)";

    /// <summary>Why none of the NDS's factors stands beside these.</summary>
    public const string NoOthers =
        "CD, CM, CF, Cfu and Cr are 1: kmod has duration and moisture in it, EN 338 knows no other size (kh of EN 1995-1-1 3.2 would "
            + "add to thin pieces and is left out)";

    /// <summary>k_mod.</summary>
    public static Factor Modification(LoadDuration load) => new(
        "kmod",
        load.Modification,
        $"EN 1995-1-1 Table 3.1, solid timber, service class 3, {load.ClassName} (as a handbook of structural design prints it)");

    /// <summary>1/(γM·γF).</summary>
    public static Factor Safety => new(
        "1/(γM·γF)",
        1 / (Material * Load),
        "1/(1.3·1.5): EN 1995-1-1 Table 2.3, solid timber, and EN 1990 Table A1.2(B), variable loads (from memory)");

    /// <summary>k_cr on shear: the effective width of cracked wood.</summary>
    public static Factor Crack => new(
        "kcr", Cracked, "EN 1995-1-1:2004+A1:2008 6.1.7, effective width b·kcr, solid timber (0.67 from memory)");

    /// <summary>What is said of E: the mean, with no factor.</summary>
    public const string Deflection =
        "E0,mean bends down under the load at once; wet service adds creep alone (kdef of EN 1995-1-1), none here";

    /// <summary>What is said of the E that columns and beams buckle by.</summary>
    public const string Buckling = "E0,05 lowered like the strength, so that their ratio is that of EN 1995-1-1 6.3";
}
