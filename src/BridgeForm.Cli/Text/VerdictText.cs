using BridgeForm.Checks;

namespace BridgeForm.Cli.Text;

/// <summary>What all checks come to, in a few lines.</summary>
internal static class VerdictText
{
    private static readonly Action<string> s_silent = static _ => { };

    /// <summary>Counts, headlines, and that it must not be built where checks fail, in at most 100 columns.</summary>
    public static void Write(TextWriter output, BridgeModel model) => Tell(model, Wraps(output), Wraps(output));

    /// <summary>
    /// The same on two streams, once: what is dangerous on the second, each on one line as errors are, whatever was asked for;
    /// with <paramref name="quiet"/> nothing else.
    /// </summary>
    public static void Write(TextWriter output, TextWriter error, BridgeModel model, bool quiet)
    {
        if (quiet)
        {
            TellHeadlines(model, s_silent, error.WriteLine);
        }
        else
        {
            Tell(model, Wraps(output), error.WriteLine);
        }
    }

    /// <summary>The headlines and what was not checked; with <paramref name="quiet"/> only those of danger.</summary>
    public static void WriteHeadlines(TextWriter output, BridgeModel model, bool quiet) =>
        TellHeadlines(model, quiet ? s_silent : Wraps(output), Wraps(output));

    private static Action<string> Wraps(TextWriter output) => line => Columns.Wrapped(output, line, "", "  ");

    private static string Line(Headline headline) => $"{headline.Label.ToUpperInvariant()}: {headline.Text}.";

    private static void Tell(BridgeModel model, Action<string> say, Action<string> warn)
    {
        say($"VERDICT: {Verdict.CountText(model.Checks)}.");
        TellHeadlines(model, say, warn);
        if (Verdict.ToBuild(model.Checks) is { } failing)
        {
            warn(Line(failing));
        }
    }

    private static void TellHeadlines(BridgeModel model, Action<string> say, Action<string> warn)
    {
        foreach (var headline in Verdict.Headlines(model.Ropework, model.Wind, model.Parameters))
        {
            (headline.IsDanger ? warn : say)(Line(headline));
        }

        if (model.Parameters.AsBuilt is not null)
        {
            warn("AS BUILT: what was measured of the ropes (as_built) is in none of these checks, which are of the drawing; correct tells "
                + "of it.");
        }

        if (Verdict.NotCheckedText(model.Checks) is { Length: > 0 } missing)
        {
            warn(missing);
        }
    }
}
