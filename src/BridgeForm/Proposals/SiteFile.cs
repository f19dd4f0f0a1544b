using System.Text;
using BridgeForm.Checks.Codes;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Proposals;

/// <summary>A site as a short project file, and the design that was found for it written in.</summary>
public static class SiteFile
{
    /// <summary>The site alone: all else is left to the defaults.</summary>
    public static string Text(SiteWish wish)
    {
        var text = new StringBuilder(StarterFile.SchemaLine);
        StarterFile.Paragraph(text, Caution.Text);
        StarterFile.Paragraph(
            text, $"Found by a search for: {Told(wish)}. All else follows the defaults. What is said of other values was tried with "
                + "landings flush with the deck that they make: where base or deck change, write new levels of the landings.");
        text.Append("name: ").Append(wish.Name).Append('\n');
        text.Append("units: ").Append(wish.Units == UnitSystem.Metric ? "metric" : "imperial").Append('\n');
        text.Append("use: ").Append(wish.Use == BridgeUse.Public ? "public" : "private").Append('\n');
        text.Append("site:\n  span: ").Append(wish.Span).Append('\n');
        _ = wish.Rise is { } rise ? text.Append("  rise: ").Append(rise).Append('\n') : text;
        if (!wish.Ground.IsEmpty)
        {
            text.Append("  ground:\n");
            foreach (var (x, y) in wish.Ground)
            {
                text.Append("    - [").Append(x).Append(", ").Append(y).Append("]\n");
            }
        }

        _ = wish.Lumber.IsEmpty ? text : text.Append(Stock(wish));
        _ = wish.Prices is { } prices
            ? text.Append("prices: '").Append(prices.Replace("'", "''", StringComparison.Ordinal)).Append("'\n") : text;
        return text.ToString();
    }

    /// <summary>
    /// The site with a design: only what differs from the defaults, each with the reason that was found for it, and what the builder
    /// is to do: landings flush with the deck, fasteners that last, grit where the deck is steep.
    /// </summary>
    /// <exception cref="InvalidOperationException">The text is not one of <see cref="Text"/>: a defect.</exception>
    public static string Finished(string site, Proposal design) => Promised(design).Aggregate(
        ProposalFile.Written(site, design), (text, promise) => ProposalFile.Set(text, promise.Path, promise.After, promise.Comment));

    private static IEnumerable<(string Path, string After, string Comment)> Promised(Proposal design)
    {
        var p = design.Model.Parameters;
        if (Bridge.TryLayout(p, out _, out var layout, out _))
        {
            foreach (var (end, frame) in (IEnumerable<(string, int)>)[("a", 0), ("b", layout.Poses.Length - 1)])
            {
                yield return ($"site.{end}.landing.level", Level(p.Units, layout, frame), "flush with the deck: build the landing to it");
                yield return ($"site.{end}.landing.gap", p.Units == UnitSystem.Metric ? "6 mm" : "1/4 in", "between landing and deck");
            }
        }

        if (design.Figures.Slope > Limits.Grip.Slope)
        {
            yield return ("deck.grip", "grit", "the deck is steeper than 1 : 8; keep it up");
        }

        yield return ("treatment.fasteners", "hot-dip-galvanized", "in treated wood; or stainless");
    }

    private static string Level(UnitSystem units, BridgeLayout layout, int frame) => new QuantityText(units).Size(
        Rounding.ToTape(DeckEnd.Surface(layout, frame) - layout.Poses[frame].Node.Y, units));

    private static string Told(SiteWish wish)
    {
        string?[] all =
        [
            $"span {wish.Span}", wish.Rise is { } rise ? $"rise {rise}" : null, wish.Use == BridgeUse.Public ? "public use" : "private use",
            .. wish.Wishes,
        ];
        return string.Join(", ", all.OfType<string>());
    }

    // The default stocks, with the yard's own sections.
    private static string Stock(SiteWish wish)
    {
        var stocks = ProjectKeys.At("stock").DefaultIn(wish.Units)!.ReplaceLineEndings("\n");
        var lines = stocks.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return "stock:\n" + string.Concat(lines.Select(l => Block(l, $"sections: [{string.Join(", ", wish.Lumber)}]")));
    }

    // NAME: { key: value, … } a line each, and one more.
    private static string Block(string line, string further)
    {
        var name = line[..line.IndexOf(':', StringComparison.Ordinal)].Trim();
        var inner = line[(line.IndexOf('{', StringComparison.Ordinal) + 1)..];
        var text = new StringBuilder($"  {name}:\n    ");
        var depth = 0;
        foreach (var letter in inner.TrimEnd().TrimEnd('}').Trim())
        {
            depth += letter == '[' ? 1 : letter == ']' ? -1 : 0;
            _ = letter == ',' && depth == 0 ? text.Append("\n   ") : text.Append(letter);
        }

        return text.Append("\n    ").Append(further).Append('\n').ToString();
    }
}
