using System.Collections.Immutable;

namespace BridgeForm.Roles;

/// <summary>
/// Names of the two ropes, and their ids beside those of parts: <c>ropes/left</c>, <c>ropes/right</c>. Written here alone.
/// </summary>
public static class RopeIds
{
    /// <summary>Name of both together, and what an id begins with.</summary>
    public const string Group = "ropes";

    /// <summary>Name of the rope at negative z.</summary>
    public const string Left = "left";

    /// <summary>Name of the rope at positive z.</summary>
    public const string Right = "right";

    /// <summary>Ids, left before right.</summary>
    public static ImmutableArray<string> Both { get; } = [Of(Left), Of(Right)];

    /// <summary>Id of the rope of a name.</summary>
    public static string Of(string name) => $"{Group}/{name}";
}
