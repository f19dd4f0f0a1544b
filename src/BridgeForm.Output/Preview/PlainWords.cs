using System.Collections.Immutable;

namespace BridgeForm.Output.Preview;

/// <summary>Sentences of the lists for people who know neither signs of units nor ids: the figures stay as they are.</summary>
internal static class PlainWords
{
    /// <summary>What is written, longest first where one begins another, and what is said.</summary>
    private static readonly ImmutableArray<(string Written, string Said)> s_words =
    [
        (" psf", " pounds a square foot"),
        (" plf", " pounds a foot"),
        (" lbf/ft", " pounds a foot"),
        (" lbf", " pounds"),
        ("the section comes nearest to rolling", "the bridge comes nearest to rolling"),
    ];

    /// <summary>The same sentence with its units in words, without the ids of checks, which stand with these.</summary>
    public static string Of(string text) =>
        s_words.Aggregate(WithoutIds(text), (plain, w) => plain.Replace(w.Written, w.Said, StringComparison.Ordinal));

    /// <summary>Ids are small letters with strokes between, in brackets.</summary>
    private static string WithoutIds(string text)
    {
        for (var from = 0; text.IndexOf(" (", from, StringComparison.Ordinal) is >= 0 and var open;)
        {
            from = open + 1;
            var close = text.IndexOf(')', open);
            var inside = close > 0 ? text[(open + 2)..close] : "";
            if (inside.Contains('-') && inside.All(c => c is '-' || char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c)))
            {
                text = text[..open] + text[(close + 1)..];
                from = open;
            }
        }

        return text;
    }
}
