using System.Collections.Immutable;

namespace BridgeForm.Materials;

/// <summary>The ropes that a project file may name.</summary>
/// <param name="Keys">All keys.</param>
/// <param name="Find">The rope of a key; null when there is none.</param>
public sealed record RopeCatalogue(ImmutableArray<string> Keys, Func<string, RopeProperties?> Find);
