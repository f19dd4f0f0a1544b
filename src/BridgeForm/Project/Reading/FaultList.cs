using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>Collects faults while a file is read.</summary>
internal sealed class FaultList
{
    /// <summary>A file with more faults than this is of another kind; the rest would only scroll.</summary>
    private const int Most = 200;

    private readonly List<ProjectFault> faults = [];

    /// <summary>Takes no more; what costs time to put into words may be left unsaid.</summary>
    public bool Full => faults.Count >= Most;

    public bool Any => faults.Count > 0;

    public void Add(FaultCode code, Place place, string message)
    {
        // Several keys may fail for one reason at one place: it is told once.
        var fault = new ProjectFault(place.Line, place.Column, code.Id(), message);
        if (!Full && !faults.Contains(fault))
        {
            faults.Add(fault);
        }
    }

    /// <summary>In the order of the file; of faults at one place the first told comes first.</summary>
    public ImmutableArray<ProjectFault> InOrder() => [.. faults.OrderBy(f => f.Line).ThenBy(f => f.Column)];
}

/// <summary>Something wrong in a project file, for people; on one line, whatever the file holds.</summary>
/// <param name="Line">Line of the offending key or value, from 1.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Code">Stable id of what is wrong, of <c>docs/faults.md</c>.</param>
/// <param name="Message">What is wrong, with the offending value, the allowed range and what would be right.</param>
public sealed record ProjectFault(int Line, int Column, string Code, string Message)
{
    /// <summary>What is wrong, with the offending value, the allowed range and what would be right.</summary>
    public string Message { get; } = PlainLine.Of(Message);

    /// <summary>One line: <c>FILE:LINE:COLUMN: error: … [CODE]</c>.</summary>
    public string In(string fileName) => string.Create(
        CultureInfo.InvariantCulture, $"{PlainLine.Of(fileName)}:{Line}:{Column}: error: {Message} [{Code}]");
}
