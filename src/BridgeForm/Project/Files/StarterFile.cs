using System.Text;
using BridgeForm.Project.Definition;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Files;

/// <summary>The commented project file that a beginner starts from.</summary>
public static class StarterFile
{
    /// <summary>Name of the schema that the first line points an editor to.</summary>
    public const string SchemaName = "project-file.schema.json";

    private const int CommentColumn = 44;
    private const int Indent = 2;

    /// <summary>
    /// The file in a system of units. Every value in it is the default of its key, so that it may be left out, but for those of
    /// <see cref="Holding"/>, whose lines say what the default is.
    /// </summary>
    public static string Text(UnitSystem units = UnitSystem.Imperial)
    {
        var text = new StringBuilder();
        text.Append("# yaml-language-server: $schema=").Append(SchemaName).Append('\n');
        text.Append("# Lengths carry a unit: 36 ft, 37 ft 6-1/2 in, 5/8 in, 1219 mm, 1.2 m. Only name and site.span are needed; every\n");
        text.Append("# other line shows its default and may be left out, but for those that say what they are when left out. Lines that\n");
        text.Append(
            "# start with # are left out already. As it stands `check` fails nothing; whatever you change, look at the checks again.\n\n");
        foreach (var key in ProjectKeys.Root.Keys.Where(k => k.InStarter))
        {
            Write(text, units, key, key.Name, 0);
        }

        Line(text, "# prices: prices.csv", "File with your own prices, beside this one");
        return text.ToString();
    }

    /// <summary>Keys whose default is too weak for people who push the guard, with a section that holds.</summary>
    public static IReadOnlyDictionary<string, string> Holding(UnitSystem units) => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["frames.base.section"] = units == UnitSystem.Metric ? "64 x 140 mm" : "3x6",
        ["frames.post.section"] = units == UnitSystem.Metric ? "64 x 89 mm" : "3x4",
        ["guard.rails.section"] = units == UnitSystem.Metric ? "38 x 89 mm" : "2x4",
    };

    private static void Write(StringBuilder text, UnitSystem units, KeySpec spec, string path, int depth)
    {
        var margin = new string(' ', depth * Indent);
        var value = spec.Name is "units" ? units.ToString().ToLowerInvariant() : spec.DefaultIn(units);
        switch (spec.Shape)
        {
            case KeyShape.Map:
                Line(text, $"{margin}{spec.Name}:", spec.Description);
                foreach (var key in spec.Keys.Where(k => k.InStarter))
                {
                    Write(text, units, key, $"{path}.{key.Name}", depth + 1);
                }

                break;
            case KeyShape.Named when value is not null:
                Line(text, $"{margin}{spec.Name}:", spec.Description);
                foreach (var line in value.Split('\n'))
                {
                    Line(text, $"{margin}  {line.TrimEnd()}", "");
                }

                break;
            default:
                var holds = Holding(units).GetValueOrDefault(path);
                var shown = holds ?? value ?? spec.ExampleIn(units);
                var leftOut = value is null && !spec.Required ? "# " : "";
                var whenLeftOut = holds is null ? "" : $"; {value} when left out, which is too weak here";
                Line(text, $"{margin}{leftOut}{spec.Name}: {shown ?? "…"}", ProjectReference.DescribeBriefly(spec) + whenLeftOut);
                break;
        }
    }

    private static void Line(StringBuilder text, string line, string comment)
    {
        text.Append(line);
        if (comment.Length > 0)
        {
            text.Append(' ', Math.Max(2, CommentColumn - line.Length)).Append("# ").Append(comment);
        }

        text.Append('\n');
    }
}
