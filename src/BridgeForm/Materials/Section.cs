namespace BridgeForm.Materials;

/// <summary>A dressed rectangular section of lumber.</summary>
/// <param name="Name">As people write it: <c>2x6</c>, or <c>38 x 89 mm</c>.</param>
/// <param name="Width">The larger dressed size, metres.</param>
/// <param name="Thickness">The smaller dressed size, metres.</param>
public sealed record Section(string Name, double Width, double Thickness)
{
    /// <summary>Nominal width in inches for counting board feet; 0 for a section given by its dressed size.</summary>
    public double NominalWidth { get; init; }

    /// <summary>Nominal thickness in inches for counting board feet; 0 for a section given by its dressed size.</summary>
    public double NominalThickness { get; init; }
}
