using System.Collections.Immutable;
using System.Net;
using System.Text;
using System.Text.Json;
using BridgeForm.Checks;
using BridgeForm.Roles;

namespace BridgeForm.Output.Preview;

/// <summary>What stands at the top of the page before its script has run: headlines, and what fails. The script writes the same.</summary>
internal static class PreviewVerdict
{
    /// <summary>
    /// A telephone names so many titles and counts the others where there are more than one over: the bridge must be seen too.
    /// </summary>
    private const int Few = 3;

    /// <summary>
    /// Headlines and wood without values: one line that names them and unfolds, open from the start where people fall; hidden when there
    /// are none.
    /// </summary>
    public static string HeadlineList(BridgeModel model)
    {
        var headlines = Headlines(model);
        var html = new StringBuilder("<details id=\"headlines\"")
            .Append(headlines.IsEmpty ? " hidden" : "").Append(headlines.Any(h => h.IsDanger) ? " open" : "")
            .Append("><summary>").Append(Html(Named(headlines))).Append("</summary><ul>");
        foreach (var headline in headlines)
        {
            html.Append(headline.IsDanger ? "<li class=\"danger\"><strong>" : "<li><strong>").Append(Html(headline.Label))
                .Append(":</strong> ").Append(Html(headline.Text)).Append(".</li>");
        }

        return html.Append("</ul></details>").ToString();
    }

    /// <summary>What fails, in one line; hidden when nothing does.</summary>
    public static string FailLine(BridgeModel model)
    {
        var titles = Failing(model);
        if (titles.IsEmpty)
        {
            return """<p id="fails" hidden></p>""";
        }

        var few = titles.Length > Few + 1 ? Few : titles.Length;
        var rest = titles.Length == few ? ""
            : $"""<span class="rest">; {Joined(titles[few..])}</span><span class="more"> and {titles.Length - few} more</span>""";
        return $"""<p id="fails">Does not hold: {Joined(titles[..few])}{rest}. See the checks.</p>""";
    }

    /// <summary>Both, for the script.</summary>
    public static void Write(Utf8JsonWriter json, BridgeModel model)
    {
        PreviewJson.List(json, "headlines", Headlines(model), (j, h) =>
        {
            j.WriteStartObject();
            j.WriteString("label", h.Label);
            j.WriteString("text", h.Text);
            j.WriteBoolean("danger", h.IsDanger);
            j.WriteEndObject();
        });
        PreviewJson.List(json, "fails", Failing(model), (j, title) => j.WriteStringValue(title));
    }

    /// <summary>The caution at the foot, with what was not looked at: the first screen has no room for it beside the bridge.</summary>
    public static string CautionText(BridgeModel model) => $"{Caution.Text} Not looked at: {Verdict.NotAskedText(model.Parameters)}.";

    private static ImmutableArray<Headline> Headlines(BridgeModel model)
    {
        ImmutableArray<Headline> headlines =
        [
            .. Verdict.Headlines(model.Ropework, model.Wind, model.Parameters).Where(h => h.Label is not Verdict.NotAsked)
                .Select(h => h with { Text = PlainWords.Of(h.Text) }),
        ];
        if (Verdict.MissingText(model.Checks) is { Length: > 0 } missing)
        {
            headlines = headlines.Add(new Headline("Not checked", missing, IsDanger: true));
        }

        // That it must not be built so is the verdict's, above them all.
        return headlines;
    }

    /// <summary>The line over the headlines.</summary>
    private static string Named(ImmutableArray<Headline> headlines) =>
        "Read first: " + string.Join(", ", headlines.Select(h => h.Label.ToLowerInvariant()));

    private static ImmutableArray<string> Failing(BridgeModel model) =>
        [.. CheckOrder.WorstFirst(model.Checks).Where(c => c.Status == CheckStatus.Fail).Select(c => c.Title.ToLowerInvariant())];

    private static string Joined(ImmutableArray<string> titles) => Html(string.Join("; ", titles));

    private static string Html(string text) => WebUtility.HtmlEncode(text);
}
