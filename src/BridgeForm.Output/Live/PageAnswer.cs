using System.Globalization;
using System.Text.Json;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Output.Preview;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Proposals;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Live;

/// <summary>What the live page is told of a bridge: what is drawn, and what the checks come to.</summary>
public static class PageAnswer
{
    /// <summary>Hands over a file of the preview that this build is without.</summary>
    public static void Give(string name, string text) => PageFiles.Give(name, text);

    /// <summary>The description that goes with model.glb: <c>BridgeView</c> of the preview.</summary>
    public static byte[] View(BridgeModel model) => PreviewJson.Bytes(model);

    /// <summary>
    /// <c>{ verdict, caution, headlines: [{ label, text, danger }], figures: [{ name, text, number? }],
    /// checks: [{ id, title, status, ratio?, sentence, detail, source, help, parts: [id] }] }</c>, checks worst first; numbers in SI units.
    /// </summary>
    public static byte[] Checked(BridgeModel model) => PageJson.Object(json =>
    {
        json.WriteString("verdict", PlainVerdict.Of(model));
        json.WriteString("caution", PreviewVerdict.CautionText(model));
        PageJson.Objects(json, "headlines", Verdict.Headlines(model.Ropework, model.Wind, model.Parameters), headline =>
        {
            json.WriteString("label", headline.Label);
            json.WriteString("text", headline.Text);
            json.WriteBoolean("danger", headline.IsDanger);
        });
        PageJson.Objects(json, "figures", Figures(model), figure =>
        {
            json.WriteString("name", figure.Name);
            json.WriteString("text", figure.Text);
            PageJson.Maybe(json, "number", figure.Number);
        });
        PageJson.Objects(json, "checks", CheckOrder.WorstFirst(model.Checks), check => Check(json, check));
    });

    /// <summary><c>1 : 8.2</c>, from rise over run.</summary>
    internal static string Slope(double slope) => slope > Tolerances.Level ? $"1 : {NumberText.Fixed(1 / slope, 1)}" : "level";

    /// <summary>What a builder keeps an eye on while changing values: name, text in the project's units, SI number.</summary>
    private static IEnumerable<(string Name, string Text, double? Number)> Figures(BridgeModel model)
    {
        var (words, parameters) = (new QuantityText(model.Parameters.Units), model.Parameters);
        yield return ("span", PreviewFacts.Plain(parameters.Site.Span, words), parameters.Site.Span);
        yield return ("sag", PreviewFacts.Plain(model.Rope.Sag, words), model.Rope.Sag);
        if (PreviewFacts.Measured(model, "deck-slope") is { } slope)
        {
            yield return ("steepest deck", Slope(slope), slope);
        }

        foreach (var (name, id) in (IEnumerable<(string, string)>)[("guard height", "guard-height"), ("clear width", "clear-width")])
        {
            if (PreviewFacts.Measured(model, id) is { } length)
            {
                yield return (name, words.LeastSize(length), length);
            }
        }

        if (RollState.Least(model.Ropework.Roll)?.Factor is { } factor && double.IsFinite(factor.Value))
        {
            yield return ("roll factor", NumberText.Fixed(Rounding.Down(factor.Value, 0.01), 2), factor.Value);
        }

        if (model.Ropework.Governing is { } most)
        {
            var tension = most.Shape!.LargestTension;
            var ratio = model.Checks.FirstOrDefault(c => string.Equals(c.Id, "rope-strength", StringComparison.Ordinal));
            var share = ratio?.Ratio is null ? "" : $", {RatioText.Of(ratio)} of what it may";
            yield return ("rope tension", words.Force(tension) + share, tension);
        }

        yield return ("weight on ropes", words.Force(2 * model.Rope.Loads.Sum()), 2 * model.Rope.Loads.Sum());
        yield return ("distinct pieces", model.Pieces.Length.ToString(CultureInfo.InvariantCulture), model.Pieces.Length);
        var settings = SawSheet.Settings(model);
        yield return ("saw settings", settings.ToString(CultureInfo.InvariantCulture), settings);
        yield return Price(model);
    }

    // The answer comes without a stock plan: it is made here, where there is something to reckon by.
    private static (string Name, string Text, double? Number) Price(BridgeModel model)
    {
        if (model.Parameters.PriceList is not { } list)
        {
            return ("price", "no price file", null);
        }

        var plan = model.StockPlan.Jobs.IsEmpty ? StockPlanner.Plan(model.Pieces, model.Parameters, list) : model.StockPlan;
        return plan.Price is { } price ? ("price", NumberText.Fixed(price, 2), price) : ("price", "not of every board", null);
    }

    private static void Check(Utf8JsonWriter json, CheckResult check)
    {
        json.WriteString("id", check.Id);
        json.WriteString("title", check.Title);
        json.WriteString("status", check.Status.Word());
        PageJson.Maybe(json, "ratio", check.Ratio);
        json.WriteString("sentence", PlainVerdict.Of(check));
        json.WriteString("detail", check.Detail);
        json.WriteString("source", check.Source);
        json.WriteString("help", Search.Help(check.Id));
        PageJson.Texts(json, "parts", check.Parts);
    }
}
