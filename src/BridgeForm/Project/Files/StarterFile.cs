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

    /// <summary>The file in a system of units. Every value in it is the default of its key, so that it may be left out.</summary>
    public static string Text(UnitSystem units = UnitSystem.Imperial)
    {
        var text = new StringBuilder();
        text.Append("# yaml-language-server: $schema=").Append(SchemaName).Append('\n');
        text.Append("# Lengths carry a unit: 36 ft, 37 ft 6-1/2 in, 5/8 in, 1219 mm, 1.2 m. Only name and site.span are needed;\n");
        text.Append("# every other line shows its default and may be left out. Lines that start with # are left out already.\n");
        var (stickBase, post, rail) = Holding(units);
        text.Append("# As it stands, `check` finds base, posts and rails too weak for people who push the guard: a base of ")
            .Append(stickBase).Append(",\n# posts of ").Append(post).Append(" and rails of ").Append(rail).Append(" hold. Whatever else you change, look at the checks again.\n\n");
        foreach (var key in ProjectKeys.Root.Keys.Where(k => k.InStarter))
        {
            Write(text, units, key, 0);
        }

        Line(text, "# prices: prices.csv", "File with your own prices, beside this one");
        return text.ToString();
    }

    /// <summary>Sections of base, post and rail with which the file fails no check.</summary>
    public static (string Base, string Post, string Rail) Holding(UnitSystem units) =>
        units == UnitSystem.Metric ? ("64 x 140 mm", "64 x 89 mm", "38 x 89 mm") : ("3x6", "3x4", "2x4");

    private static void Write(StringBuilder text, UnitSystem units, KeySpec spec, int depth)
    {
        var margin = new string(' ', depth * Indent);
        var value = spec.Name is "units" ? units.ToString().ToLowerInvariant() : spec.DefaultIn(units);
        switch (spec.Shape)
        {
            case KeyShape.Map:
                Line(text, $"{margin}{spec.Name}:", spec.Description);
                foreach (var key in spec.Keys.Where(k => k.InStarter))
                {
                    Write(text, units, key, depth + 1);
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
                var shown = value ?? spec.ExampleIn(units);
                var leftOut = value is null && !spec.Required ? "# " : "";
                Line(text, $"{margin}{leftOut}{spec.Name}: {shown ?? "…"}", ProjectReference.DescribeBriefly(spec));
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
