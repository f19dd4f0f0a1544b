namespace BridgeForm.Materials;

/// <summary>Which sections a row of design values holds for.</summary>
/// <remarks>Words as the project file writes them.</remarks>
public static class SizeClass
{
    /// <summary>Lumber 2 to 4 in thick; bending, tension and compression still take the size factor CF.</summary>
    public const string Dimension = "dimension";

    /// <summary>Timbers 5 in and thicker, more than 2 in wider than thick.</summary>
    public const string Beams = "beams";

    /// <summary>Timbers 5 in and thicker, at most 2 in wider than thick.</summary>
    public const string Posts = "posts";

    /// <summary>Every timber 5 in and thicker.</summary>
    public const string Timbers = "timbers";

    /// <summary>Every section: EN 338 knows no sizes.</summary>
    public const string Any = "any";
}

/// <summary>Reference design values of a species, grade and size, pascals.</summary>
public sealed record DesignValue
{
    /// <summary>Key of the species.</summary>
    public required string Species { get; init; }

    /// <summary>Grade: <c>ss</c>, <c>no1</c>, <c>no2</c>, <c>no3</c>; a class such as <c>C24</c>.</summary>
    public required string Grade { get; init; }

    /// <summary>A word of <see cref="SizeClass"/>, or a width such as <c>2x6</c> when the values include the size factor.</summary>
    public required string Size { get; init; }

    /// <summary>Fb.</summary>
    public required double Bending { get; init; }

    /// <summary>Ft.</summary>
    public required double Tension { get; init; }

    /// <summary>Fv.</summary>
    public required double Shear { get; init; }

    /// <summary>Fc⊥, across the grain.</summary>
    public required double CompressionAcross { get; init; }

    /// <summary>Fc, along the grain.</summary>
    public required double Compression { get; init; }

    /// <summary>E.</summary>
    public required double Modulus { get; init; }

    /// <summary>Emin; null where it was not to be had.</summary>
    public double? ModulusMin { get; init; }

    /// <summary>Values are for wet service already.</summary>
    public bool Wet { get; init; }

    /// <summary>Bending, tension and compression include the size factor.</summary>
    public bool SizeAdjusted { get; init; }

    /// <summary>
    /// Characteristic strengths of EN 338, which a check lowers by k_mod, γ_M and γ_F before it uses them; Emin is E_0,05. Else
    /// reference design values of the NDS.
    /// </summary>
    public bool IsCharacteristic { get; init; }

    /// <summary>Where the numbers come from.</summary>
    public required string Source { get; init; }
}
