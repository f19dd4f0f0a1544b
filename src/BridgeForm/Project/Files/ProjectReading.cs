using System.Collections.Immutable;
using BridgeForm.Project.Reading;

namespace BridgeForm.Project.Files;

/// <summary>A project file, read: its parameters, or everything that is wrong with it.</summary>
/// <param name="FileName">Name of the file, for messages.</param>
/// <param name="Parameters">Null when there are faults.</param>
/// <param name="Faults">In the order of the file; empty when there are none.</param>
public sealed record ProjectReading(string FileName, BridgeParameters? Parameters, ImmutableArray<ProjectFault> Faults)
{
    /// <summary>One line a fault, as printed on standard error.</summary>
    public IEnumerable<string> Lines => Faults.Select(f => f.In(FileName));

    /// <summary>What the file says, key by key, for faults that only the whole bridge shows; null for what is no project file.</summary>
    internal FileValues? Values { get; init; }

    /// <summary>The parameters when one key is written otherwise and all others are kept; null when the reader finds fault with that.</summary>
    internal Func<string, string, BridgeParameters?> With { get; init; } = (_, _) => null;
}
