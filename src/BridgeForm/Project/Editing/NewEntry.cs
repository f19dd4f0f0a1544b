using BridgeForm.Project.Definition;

namespace BridgeForm.Project.Editing;

/// <summary>Text of a key that the file does not have, with the mappings that it needs above it.</summary>
/// <param name="Way">To the key.</param>
/// <param name="Value">As a person writes it.</param>
internal sealed record NewEntry(KeyWay Way, string Value)
{
    /// <summary>The entry from a depth on, on one line for braces.</summary>
    public string? InFlow(int depth, out string? problem) => Entry(depth, flow: true, out problem);

    /// <summary>What stands under the names above a depth, on one line.</summary>
    public string? Below(int depth, bool flow, out string? problem)
    {
        if (depth == Way.Names.Length)
        {
            return WrittenValue.For(Way.Last, Value, flow, out problem);
        }

        if (Way.IsEntry(depth))
        {
            problem = Way.Names[depth] is "0" ? null : $"{Way.Path(depth)} has no entry before number {Way.Names[depth]}";
            return problem is null && Below(depth + 1, flow: true, out problem) is { } item ? $"[{item}]" : null;
        }

        return Entry(depth, flow: true, out problem) is { } entry ? "{ " + entry + " }" : null;
    }

    /// <summary>The entry from a depth on as lines of a block; mappings deeper in it in braces where the file has braces.</summary>
    /// <param name="depth">Of the entry's key.</param>
    /// <param name="step">Blanks by which a mapping in a block is set in.</param>
    /// <param name="braces">The file writes small mappings in braces.</param>
    /// <param name="problem">Why it cannot be written.</param>
    public IReadOnlyList<string>? InBlock(int depth, int step, bool braces, out string? problem)
    {
        var isNested = depth + 1 < Way.Names.Length && Way.Specs[depth].Shape is KeyShape.Map or KeyShape.Named && (depth == 0 || !braces);
        if (!isNested)
        {
            return Entry(depth, flow: false, out problem) is { } entry ? [entry] : null;
        }

        var margin = new string(' ', step);
        return InBlock(depth + 1, step, braces, out problem) is { } lines
            ? [Word(depth, flow: false) + ":", .. lines.Select(l => margin + l)]
            : null;
    }

    private string? Entry(int depth, bool flow, out string? problem) =>
        Below(depth + 1, flow, out problem) is { } value ? $"{Word(depth, flow)}: {value}" : null;

    private string Word(int depth, bool flow) => WrittenValue.Single(Way.Names[depth], flow);
}
