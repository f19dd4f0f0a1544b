using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;

namespace BridgeForm.Project;

/// <summary>The saddles over which the ropes go at both supports.</summary>
/// <param name="Radius">Of the groove's bottom, where the rope lies, metres; null: not given.</param>
public sealed record SaddleParameters(double? Radius);

/// <summary>Keys under <c>saddle</c>, and how they are read.</summary>
internal static class SaddleSection
{
    public static KeySpec Keys => Define.Map(
        "saddle",
        "The saddles over which the ropes go at both supports",
        [Define.Length("radius", "Radius of the groove's bottom, where the rope lies; the smallest of all saddles", "1/8 in", "30 ft")]);

    public static SaddleParameters Read(FileValues v) => new(v.NumberOrNull("saddle.radius"));
}
