using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Something wrong in a project file, for people; on one line, whatever the file holds.</summary>
/// <param name="Line">Line of the offending key or value, from 1.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Message">What is wrong, with the offending value, the allowed range and what would be right.</param>
public sealed record ProjectFault(int Line, int Column, string Message)
{
    /// <summary>What is wrong, with the offending value, the allowed range and what would be right.</summary>
    public string Message { get; } = PlainLine.Of(Message);

    /// <summary>One line: <c>FILE:LINE:COLUMN: error: …</c>.</summary>
    public string In(string fileName) => string.Create(
        CultureInfo.InvariantCulture, $"{PlainLine.Of(fileName)}:{Line}:{Column}: error: {Message}");
}

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
