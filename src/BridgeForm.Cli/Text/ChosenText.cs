using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm.Cli.Text;

/// <summary>What rules chose for keys that the file leaves out.</summary>
internal static class ChosenText
{
    private const string Rules = " (--all: by which rule)";

    // Two lines, wherever between them the long name of a rope breaks.
    private const int Most = 160;

    /// <summary>As many as two lines hold, and an empty line; nothing where the file leaves nothing to rules.</summary>
    public static void WriteBriefly(TextWriter output, ImmutableArray<ChosenDefault> chosen)
    {
        if (chosen.IsEmpty)
        {
            return;
        }

        var line = "chosen by default: " + Value(chosen[0]);
        var shown = 1;
        while (shown < chosen.Length && Fits(line + ", " + Value(chosen[shown]), shown + 1 == chosen.Length))
        {
            line += ", " + Value(chosen[shown++]);
        }

        Columns.Wrapped(output, line + (shown < chosen.Length ? ", …" : "") + Rules, "", "  ");
        output.WriteLine();
    }

    /// <summary>All of them, each with its rule.</summary>
    public static void Write(TextWriter output, ImmutableArray<ChosenDefault> chosen)
    {
        if (chosen.IsEmpty)
        {
            return;
        }

        output.WriteLine("CHOSEN BY DEFAULT, for keys that the file leaves out");
        foreach (var one in chosen)
        {
            Columns.Wrapped(output, $"  {Value(one)}", "");
            Columns.Wrapped(output, "by: " + one.Rule, "    ");
        }

        output.WriteLine();
    }

    private static string Value(ChosenDefault chosen) => $"{chosen.Path} {chosen.Text}";

    private static bool Fits(string line, bool isLast) => line.Length + (isLast ? 0 : ", …".Length) + Rules.Length <= Most;
}
