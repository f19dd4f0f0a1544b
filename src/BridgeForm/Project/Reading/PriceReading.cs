using System.Collections.Immutable;

namespace BridgeForm.Project.Reading;

/// <summary>A price list, read: its prices, or everything that is wrong with it.</summary>
/// <param name="FileName">Name of the file, for messages.</param>
/// <param name="List">Null when there are faults.</param>
/// <param name="Faults">In the order of the file.</param>
public sealed record PriceReading(string FileName, PriceList? List, ImmutableArray<ProjectFault> Faults)
{
    /// <summary>One line a fault, as printed on standard error.</summary>
    public IEnumerable<string> Lines => Faults.Select(f => f.In(FileName));
}
