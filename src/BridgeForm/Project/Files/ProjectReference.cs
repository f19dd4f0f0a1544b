using System.Text;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Files;

/// <summary>The reference page of the project file: every key with its default, range and meaning.</summary>
public static class ProjectReference
{
    private const string Head = """
        # The project file

        This page is generated from the program's own definition of the keys. The JSON schema beside it
        (`project-file.schema.json`) comes from the same definition; an editor with a YAML language server completes and checks
        by it.

        - Lengths carry a unit: `36 ft`, `37 ft 6-1/2 in`, `37' 6-1/2"`, `5/8 in`, `1219 mm`, `1.2 m`. So do all other
          quantities: `10 deg`, `0.2 rad`, `80 %`, `60 psf`, `2.9 kPa`, `300 lbf`, `1.3 kN`, `3 lb`, `1.4 kg`, `60 F`, `15 C`.
          Decimals are written with a point, thousands without a separator.
        - A section is a nominal size of PS 20 such as `2x4` or `5/4x6` (`6x6 green` for green timbers), or a dressed size such
          as `38 x 89 mm`.
        - Ropes, species, grades, nominal sizes and papers stand in [tables.md](tables.md), as `bridgeform list` prints them.
        - A key that is left out takes its default: the first one in files with `units: imperial`, the second one with
          `units: metric`.
        - Anchors, aliases, tags and second documents are refused. A file holds at most 1 MB, a bridge at most 50,000 frames.
        - `NAME` stands for a name of your own, `[]` for each entry of a list.

        Beyond the ranges below, a file is refused when its values cannot go together: a sag outside 0.05 % to 30 % of the span;
        supports steeper than 1 in 3; a deck steeper than 45° at its end (4 · sag / span + rise / span above 1); no frame
        between the end frames; a channel or keeper hole that leaves the base or cuts through it; posts and braces that do
        not stand on the base or do not meet; boards, treads or rails that do not fit; names of stock or species that are
        not there.

        """;

    /// <summary>Markdown, with lines ended by a line feed. The same text each time.</summary>
    public static string Markdown()
    {
        var page = new StringBuilder(Head.ReplaceLineEndings("\n"));
        Table(page, "The file", ProjectKeys.Root.Keys.Where(k => k.Shape == KeyShape.Value), "");
        foreach (var key in ProjectKeys.Root.Keys.Where(k => k.Shape != KeyShape.Value))
        {
            Table(page, $"`{key.Name}`", [key], "");
        }

        return page.ToString();
    }

    /// <summary>Description, choices, range and default note in one line.</summary>
    internal static string Describe(KeySpec spec) => Describe(spec, Range(spec));

    /// <summary>The same without the range, which would crowd a line of a file.</summary>
    internal static string DescribeBriefly(KeySpec spec) => Describe(spec, "");

    private static string Describe(KeySpec spec, string range)
    {
        var text = new StringBuilder(spec.Description);
        _ = spec.Choices.Length > 1 ? text.Append(": ").AppendJoin(" | ", spec.Choices) : text;
        _ = range.Length > 0 ? text.Append("; ").Append(range) : text;
        _ = spec.DefaultNote is null ? text : text.Append("; left out: ").Append(spec.DefaultNote);
        return text.ToString();
    }

    private static string Range(KeySpec spec) => AllowedRange.InWords(spec, UnitSystem.Imperial);

    private static void Table(StringBuilder page, string title, IEnumerable<KeySpec> keys, string path)
    {
        page.Append("\n## ").Append(title).Append("\n\n| key | what | default | range |\n|---|---|---|---|\n");
        foreach (var key in keys)
        {
            Rows(page, key, path);
        }
    }

    private static void Rows(StringBuilder page, KeySpec spec, string path)
    {
        var here = path.Length == 0 || spec.Name.Length == 0 ? path + spec.Name : path + "." + spec.Name;
        Row(page, spec, here);
        foreach (var key in spec.Keys)
        {
            Rows(page, key, here);
        }

        if (spec.Item is { } item)
        {
            Rows(page, item, here + (spec.Shape == KeyShape.Named ? ".NAME" : "[]"));
        }
    }

    private static void Row(StringBuilder page, KeySpec spec, string path)
    {
        var choices = spec.Choices.Length > 1 ? ": " + string.Join(", ", spec.Choices.Select(c => $"`{c}`")) : "";
        page.Append("| `").Append(path).Append("` | ").Append(spec.Description).Append(choices).Append(" | ")
            .Append(DefaultCell(spec)).Append(" | ").Append(RangeCell(spec)).Append(" |\n");
    }

    private static string DefaultCell(KeySpec spec)
    {
        if (spec.Required)
        {
            return spec.Instead is { } other ? $"required, or `{other}`" : "required";
        }

        if (spec.DefaultIn(UnitSystem.Imperial) is not { } imperial)
        {
            return spec.DefaultNote ?? (spec.Shape == KeyShape.Map ? "" : "none");
        }

        var metric = spec.DefaultIn(UnitSystem.Metric)!;
        return string.Equals(imperial, metric, StringComparison.Ordinal) ? Code(imperial) : $"{Code(imperial)}, {Code(metric)}";
    }

    private static string RangeCell(KeySpec spec)
    {
        var range = Range(spec);
        if (range.Length > 0 && spec.Kinds.Length > 0)
        {
            var metric = AllowedRange.InWords(spec, UnitSystem.Metric);
            return string.Equals(range, metric, StringComparison.Ordinal) ? range : $"{range} ({metric})";
        }

        return spec.Kinds.Length > 1 ? string.Join(" or ", spec.Kinds.Select(k => Units.Of(k).Noun)) : range;
    }

    private static string Code(string text) => string.Join("<br>", text.Split('\n').Select(line => $"`{line.Trim()}`"));
}
