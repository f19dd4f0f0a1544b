using System.Collections.Immutable;
using BridgeForm.Ropes;

namespace BridgeForm.Project;

/// <summary>The ropes that a project file may name.</summary>
/// <param name="Keys">All keys.</param>
/// <param name="Find">The rope of a key; null when there is none.</param>
public sealed record RopeCatalogue(ImmutableArray<string> Keys, Func<string, RopeProperties?> Find);
