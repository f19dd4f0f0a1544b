using BridgeForm.Roles;

namespace BridgeForm.Project;

/// <summary>A hole the user asks for in every member of a kind. Metres.</summary>
/// <param name="Part">Which members: of a role that takes holes.</param>
/// <param name="Face">The face the bit enters.</param>
/// <param name="FromEnd">Along the piece from the named end: the long point of the foot end (left end of a base) or of the far end.</param>
/// <param name="FromFarEnd">Measured from the head (right end of a base) instead of the foot.</param>
/// <param name="Across">From the middle of the face.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Depth">Depth; null when through.</param>
public sealed record HoleParameters(
    Role Part, DrilledFace Face, double FromEnd, bool FromFarEnd, double Across, double Diameter, double? Depth);

/// <summary>Faces as people name them.</summary>
public enum DrilledFace
{
    /// <summary>A wide face (of a square base: the one towards A).</summary>
    Wide,

    /// <summary>The narrow face; of a base its top.</summary>
    Top,

    /// <summary>The opposite narrow face; of a base its bottom.</summary>
    Bottom,
}
