using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using BridgeForm.Proposals;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary>Options of the commands that search for a design.</summary>
internal static class SearchOptions
{
    private const int MostRun = 1000;

    /// <summary><c>--prefer</c>.</summary>
    public static Option<string?> Prefer()
    {
        var option = new Option<string?>("--prefer")
        {
            Description = "what is best among designs that pass: light (default), flat, or cheap by your own prices",
            HelpName = "light|flat|cheap",
        };
        return Among(option, "light", "flat", "cheap");
    }

    /// <summary>An option that takes one of a few words, and says so in one line.</summary>
    public static Option<string?> Among(Option<string?> option, params string[] words)
    {
        option.CompletionSources.Add(words);
        option.Validators.Add(result => Told(result, text => words.Contains(text, StringComparer.Ordinal) ? null
            : $"{option.Name}: {QuantityReader.Quote(text)} is none of {string.Join(", ", words)}"));
        return option;
    }

    /// <summary><c>--slope 1:N</c>.</summary>
    public static Option<string?> Slope()
    {
        var option = new Option<string?>("--slope")
        {
            Description = "steepest the empty deck may be, as 1:12",
            HelpName = "1:N",
        };
        option.Validators.Add(result => Told(result, text => SlopeOf(text) is null
            ? $"--slope: {QuantityReader.Quote(text)} is no slope; write it as 1:12, from 1:1 to 1:{MostRun}" : null));
        return option;
    }

    /// <summary><c>--free</c>.</summary>
    public static Option<string?> Free()
    {
        var option = new Option<string?>("--free")
        {
            Description = "keys that may change, separated by commas; by default those that a failing check names",
            HelpName = "KEY,…",
        };
        option.CompletionSources.Add(context => AskedKinds.After(Search.Keys, context.WordToComplete));
        option.Validators.Add(result => Told(result, text => Listed(text).Where(k => !Search.Keys.Contains(k, StringComparer.Ordinal))
            .Select(Unknown).FirstOrDefault()));
        return option;
    }

    /// <summary>The preference of its word.</summary>
    public static Preference PreferenceOf(string? word) => word switch
    {
        "flat" => Preference.Flat,
        "cheap" => Preference.Cheap,
        _ => Preference.Light,
    };

    /// <summary>Rise over run of <c>1:N</c>; null for what is none.</summary>
    public static double? SlopeOf(string? text) =>
        text?.Replace(" ", "", StringComparison.Ordinal).Split(':') is ["1", var run]
        && double.TryParse(run, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var length)
        && length is >= 1 and <= MostRun
            ? 1 / length
            : null;

    /// <summary>Words of a comma-separated list; none for null.</summary>
    public static ImmutableArray<string> Listed(string? list) =>
        [.. (list ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    private static string Unknown(string key)
    {
        var hint = NearestWord.Find(key, Search.Keys) is { } nearest ? $"did you mean {nearest}? " : "";
        return $"--free: {QuantityReader.Quote(key)} is nothing that a search can move; {hint}it moves {string.Join(", ", Search.Keys)}";
    }

    private static void Told(OptionResult result, Func<string, string?> fault)
    {
        if (result.Tokens.Select(t => fault(t.Value)).OfType<string>().FirstOrDefault() is { } message)
        {
            result.AddError(message);
        }
    }
}
