using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace BridgeForm.Output.Preview;

/// <summary>Sentences of the lists for people who know neither signs of units nor ids: the figures stay as they are.</summary>
internal static partial class PlainWords
{
    private static readonly ImmutableArray<(string Sign, string Words)> s_units =
    [
        ("psf", "pounds a square foot"),
        ("plf", "pounds a foot"),
        ("lbf/ft", "pounds a foot"),
        ("lbf", "pounds"),
    ];

    /// <summary>The same sentence with its units in words, without the ids of checks, which stand with these.</summary>
    public static string Of(string text)
    {
        var plain = Id().Replace(text, "");
        foreach (var (sign, words) in s_units)
        {
            plain = Regex.Replace(
                plain, $@"(?<=\d ){Regex.Escape(sign)}\b(?!/)", words, RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
        }

        return plain.Replace("the section comes nearest to rolling", "the bridge comes nearest to rolling", StringComparison.Ordinal);
    }

    /// <summary>Ids in brackets: small letters with strokes between.</summary>
    [GeneratedRegex(@" \([a-z0-9]+(-[a-z0-9]+)+\)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Id();
}
