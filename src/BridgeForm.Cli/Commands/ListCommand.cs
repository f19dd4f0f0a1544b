using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using BridgeForm.Cli.Streams;
using BridgeForm.Cli.Text;
using BridgeForm.Output.Lists;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary><c>list WHAT</c>: a table of what a project file may name.</summary>
internal static class ListCommand
{
    private static readonly string s_words = string.Join(", ", AllLists.Words);

    /// <summary>The command. It prints what was asked for, whatever <c>--quiet</c> says.</summary>
    public static Command Create(Terminal terminal)
    {
        var what = new Argument<string>("WHAT") { Description = "one of: " + s_words };
        what.CompletionSources.Add(_ => AllLists.Words);
        what.Validators.Add(Known);
        var command = new Command("list", "Print a table of what a project file may name, or of the checks") { what };
        command.Validators.Add(result => Asked(result, what));
        command.SetAction(parsed =>
        {
            var word = parsed.GetValue(what)!;
            using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
            ListText.Write(text, AllLists.Kinds[AllLists.Words.IndexOf(word)].Make());
            terminal.Out.Write(text.ToString());
            return ExitCode.Done;
        });
        return command;
    }

    private static void Asked(CommandResult result, Argument<string> what)
    {
        if (result.GetResult(what) is not { Tokens.Count: > 0 })
        {
            result.AddError($"list what? There are {s_words}");
        }
    }

    private static void Known(ArgumentResult result)
    {
        foreach (var token in result.Tokens.Where(t => !AllLists.Words.Contains(t.Value, StringComparer.Ordinal)))
        {
            var nearest = NearestWord.Find(token.Value, AllLists.Words) is { } word ? $"did you mean {word}? " : "";
            result.AddError($"list: {QuantityReader.Quote(token.Value)} is nothing that can be listed; {nearest}there are {s_words}");
        }
    }
}
