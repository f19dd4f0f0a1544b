using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Size of the drawing sheets, landscape. Metres.</summary>
/// <param name="Name">As written in the title block.</param>
internal sealed record SheetSize(string Name, double Width, double Height)
{
    /// <summary>
    /// ANSI B (11 × 17 in) for imperial and ISO A3 for metric projects: the largest sheets that office printers and copy shops
    /// take, still readable when a letter or A4 printer reduces them. A larger sheet, or the other system's, when
    /// <c>shop.paper</c> names one; rolls give Arch D sheets.
    /// </summary>
    public static SheetSize Of(BridgeParameters parameters)
    {
        var name = parameters.Shop.Paper switch
        {
            "arch-d" or "roll-24" or "roll-36" => "arch-d",
            "a1" or "a3" or "tabloid" => parameters.Shop.Paper,
            _ => parameters.Units == UnitSystem.Imperial ? "tabloid" : "a3",
        };
        var paper = Paper.Of(name);
        return new SheetSize(Title(name), paper.Height, paper.Width);
    }

    private static string Title(string name) => name switch
    {
        "tabloid" => "ANSI B (11 × 17 in)",
        "arch-d" => "Arch D (24 × 36 in)",
        "a3" => "ISO A3 (297 × 420 mm)",
        _ => "ISO A1 (594 × 841 mm)",
    };
}
