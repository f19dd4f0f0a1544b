using System.Globalization;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

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
