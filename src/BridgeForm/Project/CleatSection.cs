using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Strips across the deck for shoes to hold on.</summary>
/// <param name="Section">Lies flat. Metres.</param>
/// <param name="Spacing">Middle to middle along the deck at most, metres.</param>
/// <param name="Stock">Stock that they are cut from.</param>
public sealed record CleatParameters(Section Section, double Spacing, string Stock);

/// <summary>Keys under <c>deck.cleats</c>, how they are read, and whether the deck asks for them.</summary>
internal static class CleatSection
{
    private const string Path = "deck.cleats";
    private const string Spacing = Path + ".spacing";
    private const int LeastWidths = 2;

    public static KeySpec Keys => Define.Map(
        "cleats",
        "Strips across the deck; with grip cleats only",
        [
            Define.Section("section", "Lies flat", "1x4", "22 x 95 mm"),
            Define.Length("spacing", "Middle to middle along the deck at most", "2 in", "6 ft", "12 in", "300 mm"),
            Define.StockName("treated"),
        ]);

    /// <summary>None unless the deck's grip is cleats.</summary>
    public static CleatParameters? Read(FileValues v) => v.Text("deck.grip") is "cleats"
        ? new CleatParameters(v.Section(Path + ".section"), v.Number(Spacing), v.Text(Path + ".stock"))
        : null;

    public static void Check(CheckedFile f)
    {
        if (f.Parameters.Deck.Cleats is not { } cleats)
        {
            if (f.Values.Given(Path) && f.Good("deck.grip"))
            {
                f.Stop(FaultCode.CleatsUnused, Path, $"cleats: with grip: {f.Written("deck.grip")} there are none; write grip: cleats, or "
                    + "take them out");
            }
        }
        else if (f.Good(Path, Spacing, Path + ".section") && cleats.Spacing < (LeastWidths * cleats.Section.Width) - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.CleatsTooClose, Spacing, $"spacing: with '{f.Written(Spacing)}' cleats of {f.Size(cleats.Section.Width)} "
                + $"leave no foothold between them; write at least {f.AtLeast(LeastWidths * cleats.Section.Width)}, or a narrower section",
                Path + ".section");
        }
    }
}
