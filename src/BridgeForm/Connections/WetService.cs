namespace BridgeForm.Connections;

/// <summary>CM of dowels that are pushed sideways, outdoors.</summary>
public static class WetService
{
    /// <summary>Where it is from.</summary>
    public const string Source = "NDS 2018 Table 11.3.3";

    private const double Wet = 0.7;
    private const double Shrinking = 0.4;

    /// <summary>
    /// 0.7 for wood that is wet in service. Several rows along the grain under one plate: wood that is put together wet and dries
    /// once in a dry summer splits between them, 0.4. Of thin fasteners never less than 0.7.
    /// </summary>
    /// <param name="rows">Rows along the grain that one plate ties together.</param>
    /// <param name="diameter">Metres.</param>
    public static double Factor(int rows, double diameter) =>
        rows > 1 && diameter >= DowelBearing.ThinFastener - Quantities.Tolerances.RoundOff ? Shrinking : Wet;
}
