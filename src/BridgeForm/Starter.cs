using BridgeForm.Frames;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm;

/// <summary>The project file that <c>start</c> writes: its landings lie flush with the deck of the bridge that it describes.</summary>
public static class Starter
{
    /// <summary>The file's text, with lines ended by a line feed. The same text each time.</summary>
    /// <param name="units">Units.</param>
    public static string Text(UnitSystem units)
    {
        var bare = Read(StarterFile.Text(units, landing: null, []));
        return StarterFile.Text(units, Landing(bare), bare.Chosen);
    }

    // Alike at both ends, for the file's supports lie level.
    private static double Landing(BridgeParameters parameters) => Bridge.TryLayout(parameters, out _, out var layout, out var fault)
        ? DeckEnd.Surface(layout, 0) - layout.Poses[0].Node.Y
        : throw new InvalidOperationException("The starter's bridge cannot be laid out: " + fault.Message);

    private static BridgeParameters Read(string text)
    {
        var reading = ProjectReader.Read(text, "starter", RopeTable.Catalogue);
        return reading.Parameters ?? throw new InvalidOperationException("The starter cannot be read: " + string.Join("; ", reading.Lines));
    }
}
