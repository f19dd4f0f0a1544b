using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Editing;

/// <summary>A value as it can stand in the file: as it is given where YAML reads it so, else in quotes.</summary>
internal static class WrittenValue
{
    /// <summary>The text for a key, or null with a problem.</summary>
    /// <param name="spec">What stands under the key.</param>
    /// <param name="value">As a person writes it; lists and mappings in brackets and braces.</param>
    /// <param name="flow">It is to stand in brackets or braces.</param>
    /// <param name="problem">Why it cannot stand there.</param>
    public static string? For(KeySpec spec, string value, bool flow, out string? problem)
    {
        var trimmed = value.Trim();
        problem = null;
        if (!PlainLine.IsText(trimmed))
        {
            problem = "the value must be one line of text";
            return null;
        }

        if (spec.Shape == KeyShape.Value && !(spec.Type == ValueForm.Rope && trimmed.StartsWith('{')))
        {
            return Single(trimmed, flow);
        }

        // What can stand in braces can stand anywhere.
        if (Parsed("{ k: " + trimmed + " }") is MapNode { Entries: [{ Value: var node }] } && Fits(spec.Shape, node))
        {
            return trimmed;
        }

        problem = spec.Shape == KeyShape.List
            ? $"{QuantityReader.Quote(trimmed)} is no list in square brackets"
            : $"{QuantityReader.Quote(trimmed)} is no mapping in braces";
        return null;
    }

    /// <summary>A word or single value.</summary>
    public static string Single(string value, bool flow) =>
        Parsed(flow ? "{ k: " + value + " }" : "k: " + value) is MapNode { Entries: [{ Value: ScalarNode node }] }
            && (node.Quoted ? value[0] is '"' or '\'' : string.Equals(node.Text, value, StringComparison.Ordinal) && value.Length > 0)
            ? value
            : "'" + value.Replace("'", "''", StringComparison.Ordinal) + "'";

    private static bool Fits(KeyShape shape, FileNode node) => shape == KeyShape.List ? node is ListNode : node is MapNode;

    private static FileNode? Parsed(string text)
    {
        var faults = new FaultList();
        var node = YamlTree.Read(text, faults);
        return faults.Any ? null : node;
    }
}
