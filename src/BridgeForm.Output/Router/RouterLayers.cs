using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Router;

/// <summary>
/// Layers of router files: what is done on each and how deep, in words and in the file's unit, so that a machine's programme
/// picks them by name. The tool stays inside every line; <see cref="Piece"/> and <see cref="Blank"/> are not cut.
/// </summary>
/// <param name="System">Unit of the depths.</param>
internal sealed record RouterLayers(UnitSystem System)
{
    /// <summary>Outline of a piece as it comes out, to look at.</summary>
    public const string Piece = "PIECE";

    /// <summary>Outline of the stick or board as it is laid down, to look at.</summary>
    public const string Blank = "BLANK";

    /// <summary>Cleared through the whole thickness.</summary>
    public const string Through = Clear + "THROUGH";

    /// <summary>Followed at a scratch's depth.</summary>
    public const string Engrave = "ENGRAVE";

    private const string Clear = "CLEAR-";
    private const string Hole = "HOLE-";
    private const string Leave = "LEAVE-";

    /// <summary>Cleared to a depth in metres.</summary>
    public string ClearOf(double depth) => Clear + Length(depth) + "-DEEP";

    /// <summary>Drilled to a depth in metres; null for through.</summary>
    public string HoleOf(double? depth) => Hole + (depth is { } deep ? Length(deep) + "-DEEP" : "THROUGH");

    /// <summary>Where wood is left standing so high at the bottom, metres.</summary>
    public string LeaveOf(double height) => Leave + Length(height) + "-HIGH";

    /// <summary>The layers that entities lie on: what is not cut, then the others by name.</summary>
    public static ImmutableArray<SheetLayer> Gather(IEnumerable<SheetEntity> entities) =>
    [
        .. entities.Select(e => e.Layer)
            .Distinct(StringComparer.Ordinal)
            .OrderBy(name => Purpose(name) != LayerPurpose.Wood)
            .ThenBy(name => name, StringComparer.Ordinal)
            .Select(name => new SheetLayer(name, Purpose(name))),
    ];

    /// <summary>What a layer asks for, in a sentence for its file's head.</summary>
    public static string Words(string name) => name + ": " + (name switch
    {
        Piece => "outline of the piece as it comes out; not cut",
        Blank => "the wood as it is laid down; not cut",
        Through => "clear inside the line, through the whole thickness",
        Hole + "THROUGH" => "drill through",
        Engrave => "follow the line, 0.5 mm (0.02 in) deep",
        _ => name.StartsWith(Clear, StringComparison.Ordinal) ? "clear inside the line, that deep from the face that is up"
            : name.StartsWith(Hole, StringComparison.Ordinal) ? "drill that deep from the face that is up"
            : "leave so much wood standing at the bottom",
    });

    private static LayerPurpose Purpose(string name) => name switch
    {
        Piece or Blank => LayerPurpose.Wood,
        Through => LayerPurpose.Cut,
        Engrave => LayerPurpose.Engraving,
        _ => name.StartsWith(Hole, StringComparison.Ordinal) ? LayerPurpose.Drill
            : name.StartsWith(Leave, StringComparison.Ordinal) ? LayerPurpose.Layout
            : LayerPurpose.Pocket,
    };

    private string Length(double metres) => System == UnitSystem.Imperial
        ? Numbers.Fixed(metres / Units.MetresPerInch, 3) + "-IN"
        : Numbers.Fixed(metres * 1000, 1) + "-MM";
}
