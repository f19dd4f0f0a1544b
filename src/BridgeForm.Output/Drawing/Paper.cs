namespace BridgeForm.Output.Drawing;

/// <summary>A size of paper and the edge that printers leave white. Metres.</summary>
/// <param name="Name">Name as in the project file.</param>
/// <param name="Width">Short side; of a roll its width.</param>
/// <param name="Height">Long side; of a roll the longest page cut from it.</param>
/// <param name="IsRoll">Pages are cut to the length they need.</param>
public sealed record Paper(string Name, double Width, double Height, bool IsRoll)
{
    /// <summary>
    /// White edge on every side: 1/4 in, a hair over 6 mm, within what office printers and plotters can print (common practice,
    /// no source).
    /// </summary>
    public const double Margin = 0.25 * Inch;

    private const double Inch = Quantities.Units.MetresPerInch;

    /// <summary>Longest page taken off a roll: a good table's length.</summary>
    private const double RollLength = 72 * Inch;

    /// <summary>Where the sizes come from.</summary>
    public const string Source = "ANSI/ASME Y14.1 (A is letter, B is tabloid), Arch D 24 x 36 in, ISO 216";

    /// <summary>The paper of a name of the project file. Sizes: <see cref="Source"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No paper of the project file's list.</exception>
    public static Paper Named(string name) => name switch
    {
        "letter" => Inches(name, 8.5, 11),
        "tabloid" => Inches(name, 11, 17),
        "arch-d" => Inches(name, 24, 36),
        "a4" => new(name, 0.210, 0.297, false),
        "a3" => new(name, 0.297, 0.420, false),
        "a1" => new(name, 0.594, 0.841, false),
        "roll-24" => new(name, 24 * Inch, RollLength, true),
        "roll-36" => new(name, 36 * Inch, RollLength, true),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such paper."),
    };

    private static Paper Inches(string name, double width, double height) => new(name, width * Inch, height * Inch, false);
}
