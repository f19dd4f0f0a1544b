namespace BridgeForm.Project;

/// <summary>Tools and paper. Metres and radians.</summary>
public sealed record ShopParameters
{
    /// <summary>Largest mitre the saw sets, radians.</summary>
    public required double MitreLimit { get; init; }

    /// <summary>Largest bevel the saw sets, radians.</summary>
    public required double BevelLimit { get; init; }

    /// <summary>Width of the saw cut, metres.</summary>
    public required double Kerf { get; init; }

    /// <summary>Diameter of the router bit, metres.</summary>
    public required double RouterBit { get; init; }

    /// <summary>Pieces closer than this at every corner are one piece, metres.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Paper name.</summary>
    public required string Paper { get; init; }

    /// <summary>Length cut off each end of a stock board before use, metres.</summary>
    public required double Trim { get; init; }

    /// <summary>Shortest offcut worth keeping, metres.</summary>
    public required double Offcut { get; init; }

    /// <summary>Neighbours on a board with equal mitre and bevel where they touch share one cut.</summary>
    public bool ShareCuts { get; init; }

    /// <summary>Leave holding tabs in board files.</summary>
    public required bool Tabs { get; init; }
}

/// <summary>Field treatment of cuts.</summary>
/// <param name="Coats">Number of coats.</param>
/// <param name="Coverage">Area one litre covers in one coat, m²/m³ (square metres per cubic metre).</param>
public sealed record TreatmentParameters(int Coats, double Coverage);
