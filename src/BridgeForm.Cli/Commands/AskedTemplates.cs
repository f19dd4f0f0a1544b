using System.Collections.Immutable;
using BridgeForm.Cli.Streams;
using BridgeForm.Output.Templates;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary>What <c>make --templates</c> takes: <c>all</c>, or marks of pieces.</summary>
internal static class AskedTemplates
{
    /// <summary>The word for every template there is.</summary>
    public const string Everything = "all";

    /// <summary>The choice of a comma-separated list; what is needed when there is none.</summary>
    public static TemplateChoice Parse(string? list)
    {
        if (list is null)
        {
            return TemplateChoice.Needed;
        }

        var words = list.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0
            ? throw new Stop(ExitCode.WrongInput, "bridgeform: error: --templates: write all, or marks such as P1L,K1")
            : words.Contains(Everything, StringComparer.OrdinalIgnoreCase) ? TemplateChoice.Everything
            : new TemplateChoice(false, words.ToImmutableHashSet(StringComparer.Ordinal));
    }

    /// <summary>Stops at a mark that no piece has.</summary>
    public static void Check(TemplateChoice choice, BridgeModel model)
    {
        var marks = model.Pieces.Select(p => p.Mark).ToHashSet(StringComparer.Ordinal);
        if (choice.Marks.Order(StringComparer.Ordinal).FirstOrDefault(m => !marks.Contains(m)) is { } unknown)
        {
            throw new Stop(
                ExitCode.WrongInput,
                $"bridgeform: error: --templates: no piece of this bridge has the mark '{PlainLine.Of(unknown)}'; it has "
                    + string.Join(", ", model.Pieces.Select(p => p.Mark)));
        }
    }
}
