using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using BridgeForm.Materials;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Live;

/// <summary>Searches for the live page: ways from its file to a bridge that passes, and a first design for a site.</summary>
public static class PageSearch
{
    private const string Name = "project.yaml";

    /// <summary>
    /// <c>{ looked, passing, why: [sentence], ways: [{ name, text, changes: [{ path, before, after, reason }],
    /// figures: [{ name, text }] }] }</c>: <c>text</c> is the whole file with the way written in.
    /// </summary>
    /// <param name="text">The file, without a fault.</param>
    /// <param name="prices">A price list's text; null without one.</param>
    /// <param name="looked">
    /// Told how many designs have been looked at, and of the lightest that passes so far; nothing while none does.
    /// </param>
    public static byte[] Propose(string text, string? prices, Action<int, string> looked)
    {
        var reading = ProjectReader.Read(text, Name, RopeTable.Catalogue);
        if (reading.Parameters is not { } parameters)
        {
            return Told(0, isPassing: false, [.. reading.Lines], []);
        }

        var list = prices is null ? null : PriceReader.Read(prices, "prices", parameters.Stock).List;
        var result = Search.Propose(reading, list, Asked(parameters.Units, looked));
        return Told(result, proposal => ProposalFile.Written(text, proposal));
    }

    /// <summary>The same for a site: at most one way, its text a short file that passes.</summary>
    /// <param name="span">As people write it.</param>
    /// <param name="rise">The same; empty for level.</param>
    /// <param name="isPublic">Who walks there.</param>
    /// <param name="isMetric">Units of the file.</param>
    /// <param name="looked">
    /// Told how many designs have been looked at, and of the lightest that passes so far; nothing while none does.
    /// </param>
    public static byte[] Start(string span, string rise, bool isPublic, bool isMetric, Action<int, string> looked)
    {
        var site = SiteFile.Text(new SiteWish(span)
        {
            Rise = rise.Length == 0 ? null : rise,
            Use = isPublic ? BridgeUse.Public : BridgeUse.Private,
            Units = isMetric ? UnitSystem.Metric : UnitSystem.Imperial,
        });
        var reading = ProjectReader.Read(site, Name, RopeTable.Catalogue);
        return reading.Parameters is not { } parameters
            ? Told(0, isPassing: false, [.. reading.Faults.Select(f => f.Message)], [])
            : Told(
                Search.Best(reading, prices: null, Asked(parameters.Units, looked) with { Free = Search.SiteKeys }),
                proposal => SiteFile.Finished(site, proposal));
    }

    private static SearchAsk Asked(UnitSystem units, Action<int, string> looked)
    {
        var (words, best) = (new QuantityText(units), "");
        return new SearchAsk
        {
            Better = f => best = $"the lightest that passes so far weighs {words.Force(f.Weight)}, its steepest deck "
                + PageAnswer.Slope(f.Slope),
            Looked = count => looked(count, best),
        };
    }

    private static byte[] Told(SearchResult result, Func<Proposal, string> written) =>
        Told(result.Looked, result.IsPassing, result.Why, [.. result.Proposals.Select(p => (p, written(p)))]);

    private static byte[] Told(
        int looked, bool isPassing, ImmutableArray<string> why, ImmutableArray<(Proposal Proposal, string Text)> ways) =>
        PageJson.Object(json =>
        {
            json.WriteNumber("looked", looked);
            json.WriteBoolean("passing", isPassing);
            PageJson.Texts(json, "why", why);
            PageJson.Objects(json, "ways", ways, way => Way(json, way.Proposal, way.Text));
        });

    private static void Way(Utf8JsonWriter json, Proposal proposal, string text)
    {
        json.WriteString("name", proposal.Name);
        json.WriteString("text", text);
        PageJson.Objects(json, "changes", proposal.Changes, change =>
        {
            json.WriteString("path", change.Path);
            json.WriteString("before", change.Before);
            json.WriteString("after", change.After);
            json.WriteString("reason", change.Reason);
        });
        PageJson.Objects(json, "figures", Figures(proposal), figure =>
        {
            json.WriteString("name", figure.Name);
            json.WriteString("text", figure.Text);
        });
    }

    private static IEnumerable<(string Name, string Text)> Figures(Proposal proposal)
    {
        var (words, figures) = (new QuantityText(proposal.Model.Parameters.Units), proposal.Figures);
        yield return ("weight, ropes included", words.Force(figures.Weight));
        yield return ("steepest deck", PageAnswer.Slope(figures.Slope));
        yield return ("falls at most", words.Size(figures.Drop));
        if (figures.Price is { } price)
        {
            yield return ("price", NumberText.Fixed(price, 2));
        }

        yield return ("distinct pieces", figures.Pieces.ToString(CultureInfo.InvariantCulture));
        yield return ("saw settings", SawSheet.Settings(proposal.Model).ToString(CultureInfo.InvariantCulture));
    }
}
