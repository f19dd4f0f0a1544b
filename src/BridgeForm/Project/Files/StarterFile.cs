using System.Collections.Immutable;
using System.Text;
using BridgeForm.Project.Definition;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Project.Files;

/// <summary>The commented project file that a beginner starts from.</summary>
public static class StarterFile
{
    /// <summary>Name of the schema that the first line points an editor to.</summary>
    public const string SchemaName = "project-file.schema.json";

    /// <summary>First line of a file that stands beside its schema.</summary>
    internal const string SchemaLine = "# yaml-language-server: $schema=" + SchemaName + "\n";

    private const int CommentColumn = 44;
    private const int Indent = 2;
    private const int HeadWidth = 116;

    private const string Head =
        "Lengths carry a unit: 36 ft, 37 ft 6-1/2 in, 5/8 in, 1219 mm, 1.2 m. Only name and site.span are needed. Change name, use, "
        + "span, rise and the landings first. A line that starts with # is left out: what it shows the program chooses by a rule, and "
        + "chooses anew when the span changes, or another way to say what the line above says. A value that is written in its "
        + "place is held. Every other line shows its default and may be left out, but for those that say otherwise. "
        + "As it stands `check` fails nothing; whatever you change, look at the checks again.";

    /// <summary>
    /// The file in a system of units. A value in it is the default of its key, so that it may be left out, but for those of
    /// <see cref="Said"/>, whose lines say so; what a rule chooses stands behind a comment sign.
    /// </summary>
    /// <param name="units">Units.</param>
    /// <param name="landing">
    /// Level of both landings above the rope axis at the support, with which they lie flush with the deck, metres; null: none is said.
    /// </param>
    /// <param name="chosen">What rules choose for this file.</param>
    internal static string Text(UnitSystem units, double? landing, ImmutableArray<ChosenDefault> chosen)
    {
        var text = new StringBuilder();
        text.Append(SchemaLine);
        Paragraph(text, Caution.Text);
        text.Append("#\n");
        Paragraph(text, Head);
        text.Append('\n');
        var values = new StarterValues(units, Said(units, landing), chosen.ToDictionary(c => c.Path, c => c.Text, StringComparer.Ordinal));
        foreach (var key in ProjectKeys.Root.Keys.Where(k => k.InStarter))
        {
            Write(text, values, key, key.Name, 0);
        }

        Line(text, "# prices: prices.csv", "File with your own prices, beside this one");
        return text.ToString();
    }

    /// <summary>What the file says beyond defaults: what only the builder can promise, and where the landings lie.</summary>
    /// <param name="units">Units.</param>
    /// <param name="landing">Level of both landings, metres; null: none is said.</param>
    internal static ImmutableSortedDictionary<string, string> Said(UnitSystem units, double? landing)
    {
        var said = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        said["deck.grip"] = "grit";
        said["treatment.fasteners"] = "hot-dip-galvanized";
        Joints(said, units == UnitSystem.Metric);
        Screws(said, units == UnitSystem.Metric);
        if (landing is { } level)
        {
            foreach (var end in (string[])["a", "b"])
            {
                said[$"site.{end}.landing.level"] = new QuantityText(units).Size(Rounding.ToTape(level, units));
                said[$"site.{end}.landing.gap"] = units == UnitSystem.Metric ? "6 mm" : "1/4 in";
            }
        }

        return said.ToImmutable();
    }

    // Braces as thick as posts and bases, and further out than those of other files, so that plates hold them: the lightest of
    // Trials' list that pass, which a test looks for anew.
    private static void Joints(ImmutableSortedDictionary<string, string>.Builder said, bool metric)
    {
        said["frames.brace.section"] = metric ? "95 x 95 mm" : "4x4";
        said["frames.brace.lean"] = metric ? "22 deg" : "12 deg";
        said["frames.brace.foot"] = metric ? "875 mm" : "33-1/2 in";
        said["joints.post-foot"] = metric
            ? "bolt: 8 mm\ncount: 2\nspacing: 60 mm\nlines: 2\napart: 31 mm\nend: 62 mm\n"
                + "carrier: { bolt: 8 mm, count: 2, spacing: 40 mm, lines: 2, apart: 76 mm, depth: 89 mm, shift: 0 mm }"
            : "bolt: 1/4 in\ncount: 2\nspacing: 1-1/4 in\nend: 1-3/4 in\n"
                + "carrier: { bolt: 1/4 in, count: 2, spacing: 1-1/4 in, lines: 2, apart: 1-5/8 in, depth: 2-7/8 in, shift: 1/2 in }";
        said["joints.brace-foot"] = metric
            ? "bolt: 10 mm\ncount: 2\nspacing: 75 mm\nend: 70 mm\n"
                + "carrier: { bolt: 8 mm, count: 2, spacing: 40 mm, lines: 2, apart: 76 mm, depth: 89 mm, shift: -25 mm }"
            : "bolt: 1/4 in\ncount: 2\nspacing: 1-1/4 in\nlines: 2\napart: 1-1/2 in\nend: 2-1/8 in\n"
                + "carrier: { bolt: 1/4 in, count: 2, spacing: 1-1/4 in, lines: 2, apart: 1 in, depth: 3-1/4 in, shift: 0 in }";
        said["joints.brace-head"] = metric
            ? "bolt: 8 mm\ncount: 4\nspacing: 40 mm\nend: 64 mm\n"
                + "carrier: { bolt: 10 mm, count: 2, spacing: 50 mm, depth: 47 mm, shift: -50 mm }"
            : "bolt: 1/4 in\ncount: 4\nspacing: 1-1/4 in\nend: 3 in\n"
                + "carrier: { bolt: 3/8 in, count: 2, spacing: 1-7/8 in, depth: 1-3/4 in, shift: -2 in }";
    }

    // What the check of a rail's end passes on rails and posts of the starter.
    private static void Screws(ImmutableSortedDictionary<string, string>.Builder said, bool metric)
    {
        said["joints.rail"] = metric ? "screw: m6\nlength: 80 mm\ncount: 3" : "screw: no10\nlength: 3 in\ncount: 3";
        said["joints.board"] = metric ? "screw: m6\nlength: 100 mm\ncount: 2" : "screw: no10\nlength: 3-1/2 in\ncount: 2";
    }

    private sealed record StarterValues(
        UnitSystem Units, ImmutableSortedDictionary<string, string> Said, IReadOnlyDictionary<string, string> Chosen);

    private static void Write(StringBuilder text, StarterValues values, KeySpec spec, string path, int depth)
    {
        var margin = new string(' ', depth * Indent);
        var value = spec.Name is "units" ? values.Units.ToString().ToLowerInvariant() : spec.DefaultIn(values.Units);
        switch (spec.Shape)
        {
            case KeyShape.Map when values.Said.GetValueOrDefault(path) is { } whole:
                Line(text, $"{margin}{spec.Name}:", spec.Description);
                text.Append(string.Concat(whole.Split('\n').Select(l => $"{margin}  {l}\n")));
                break;
            case KeyShape.Map when spec.Optional && !values.Said.Keys.Any(k => k.StartsWith(path + ".", StringComparison.Ordinal)):
                break;
            case KeyShape.Map:
                Map(text, values, spec, path, depth);
                break;
            case KeyShape.Named when value is not null:
                Line(text, $"{margin}{spec.Name}:", spec.Description);
                foreach (var line in value.Split('\n'))
                {
                    Line(text, $"{margin}  {line.TrimEnd()}", "");
                }

                break;
            default:
                Value(text, values, spec, path, margin);
                break;
        }
    }

    // A mapping of which nothing would be written is left out too.
    private static void Map(StringBuilder text, StarterValues values, KeySpec spec, string path, int depth)
    {
        var inner = new StringBuilder();
        foreach (var key in spec.Keys.Where(k => k.InStarter))
        {
            Write(inner, values, key, $"{path}.{key.Name}", depth + 1);
        }

        if (inner.Length > 0)
        {
            Line(text, $"{new string(' ', depth * Indent)}{spec.Name}:", spec.Description);
            text.Append(inner);
        }
    }

    private static void Value(StringBuilder text, StarterValues values, KeySpec spec, string path, string margin)
    {
        var fixedText = spec.Name is "units" ? values.Units.ToString().ToLowerInvariant() : spec.DefaultIn(values.Units);
        if (values.Said.GetValueOrDefault(path) is { } said)
        {
            Line(text, $"{margin}{spec.Name}: {said}", $"{ProjectReference.DescribeBriefly(spec)}; left out: {fixedText ?? "not said"}");
        }
        else if (spec.ByRule)
        {
            var chosen = values.Chosen.GetValueOrDefault(path) ?? spec.ExampleIn(values.Units);
            Line(text, $"{margin}# {spec.Name}: {chosen}", $"{spec.Description}; follows {spec.Follows}");
        }
        else
        {
            var leftOut = fixedText is null && !spec.Required ? "# " : "";
            var shown = fixedText ?? spec.ExampleIn(values.Units) ?? "…";
            Line(text, $"{margin}{leftOut}{spec.Name}: {shown}", ProjectReference.DescribeBriefly(spec));
        }
    }

    /// <summary>Words as comment lines.</summary>
    internal static void Paragraph(StringBuilder text, string words)
    {
        var line = "#";
        foreach (var word in words.Split(' '))
        {
            if (line.Length + 1 + word.Length > HeadWidth)
            {
                text.Append(line).Append('\n');
                line = "#";
            }

            line += " " + word;
        }

        text.Append(line).Append('\n');
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
