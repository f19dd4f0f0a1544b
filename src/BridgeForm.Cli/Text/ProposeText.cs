using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Proposals;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Cli.Text;

/// <summary>What <c>propose</c> prints: ways that pass side by side, and why each says what it says.</summary>
internal static class ProposeText
{
    private const string Same = "-";

    /// <summary>Prints the ways, in at most 100 columns.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="name">Name of the bridge.</param>
    /// <param name="units">Its units.</param>
    /// <param name="result">What was found.</param>
    /// <param name="isByPrice">The cheapest was asked for.</param>
    /// <param name="command">How the command begins that writes a way into a file; null where one is written.</param>
    public static void Write(TextWriter output, string name, UnitSystem units, SearchResult result, bool isByPrice, string? command)
    {
        output.WriteLine(name);
        if (result.Proposals.IsEmpty)
        {
            Nothing(output, result);
        }
        else
        {
            Columns.Wrapped(output, Count(result), "");
            output.WriteLine();
            Columns.Table(output, [.. Rows(units, result)]);
            foreach (var (proposal, i) in result.Proposals.Select((p, i) => (p, i)))
            {
                Why(output, proposal, i + 1);
            }

            var unpriced = isByPrice ? result.Proposals.SelectMany(p => p.Unpriced).Distinct(StringComparer.Ordinal).ToList() : [];
            if (unpriced.Count > 0)
            {
                Columns.Wrapped(output, PriceText.Missing(unpriced), "");
            }

            if (command is not null)
            {
                Columns.Wrapped(output, $"Next: {command} --write 1 OUT.yaml writes the first way; check it as any other file.", "", "  ");
            }
        }

        Columns.Wrapped(output, Caution.Text, "");
    }

    private static string Count(SearchResult result) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(result.Proposals.Length == 1 ? "One way" : $"{result.Proposals.Length} ways")} in which no check fails, of {result.Looked} ")
        + "designs looked at, all checks of each. What licensed engineers decide is left to them.";

    private static void Nothing(TextWriter output, SearchResult result)
    {
        if (result.IsPassing)
        {
            Columns.Wrapped(output, "No check fails: nothing need change. Name what may with --free, to look for something better.", "");
            if (!result.Unsold.IsEmpty)
            {
                Columns.Wrapped(
                    output,
                    $"Not on sale (section-on-sale): {string.Join(", ", result.Unsold)}. With --free {string.Join(',', result.Unsold)} "
                        + "sections that are on sale are looked for.", "");
            }

            return;
        }

        Columns.Wrapped(
            output,
            string.Create(CultureInfo.InvariantCulture, $"NOTHING FOUND that passes, of {result.Looked} designs looked at."), "");
        foreach (var sentence in result.Why)
        {
            Columns.Wrapped(output, "- " + sentence, "", "  ");
        }
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(UnitSystem units, SearchResult result)
    {
        var ways = result.Proposals;
        yield return ["", "as written", .. ways.Select((w, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1} {w.Name}"))];
        foreach (var path in ways.SelectMany(w => w.Changes).Select(c => c.Path).Distinct(StringComparer.Ordinal))
        {
            var before = ways.SelectMany(w => w.Changes).First(c => string.Equals(c.Path, path, StringComparison.Ordinal)).Before;
            yield return
            [
                path, before,
                .. ways.Select(w => w.Changes.FirstOrDefault(c => string.Equals(c.Path, path, StringComparison.Ordinal))?.After ?? Same),
            ];
        }

        yield return Row("weight, ropes included", result, f => new QuantityText(units).Force(f.Weight));
        if (result.AsWritten?.Price is not null || ways.Any(w => w.Figures.Price is not null))
        {
            yield return Row("price of the boards", result, f => f.Price is { } price ? NumberText.Fixed(price, 2) : "");
        }

        yield return Row("steepest deck, empty", result, f => KeyFigures.Slope(f.Slope));
        yield return Row("falls at most", result, f => new QuantityText(units).Size(f.Drop));
        yield return Row("clearance below", result, f => f.Clearance is { } room ? new QuantityText(units).Length(room) : "not given");
        yield return Row("distinct pieces", result, f => f.Pieces.ToString(CultureInfo.InvariantCulture));
        yield return ["settings of the saw", Settings(result.Written), .. ways.Select(w => Settings(w.Model))];
    }

    private static string Settings(BridgeModel? model) =>
        model is null ? "" : SawSheet.Settings(model).ToString(CultureInfo.InvariantCulture);

    private static ImmutableArray<string> Row(string label, SearchResult result, Func<Figures, string> text) =>
        [label, result.AsWritten is { } now ? text(now) : "", .. result.Proposals.Select(w => text(w.Figures))];

    private static void Why(TextWriter output, Proposal proposal, int number)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{number} {proposal.Name}"));
        foreach (var change in proposal.Changes)
        {
            Columns.Wrapped(output, $"{change.Path} {change.After}: {change.Reason}", "  ", "      ");
        }

        output.WriteLine();
    }
}
