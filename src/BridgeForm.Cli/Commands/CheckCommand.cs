using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Streams;
using BridgeForm.Cli.Text;
using BridgeForm.Output.Report;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary><c>check FILE</c>: prints the shape, the load cases and the checks.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal, Option<bool> quiet)
    {
        var file = new Argument<string>("FILE") { Description = "project file" };
        var json = new Option<string?>("--json") { Description = "write the report here as well", HelpName = "PATH" };
        file.Validators.Add(PathText.Check);
        json.Validators.Add(PathText.Check);
        var all = new Option<bool>("--all") { Description = "print everything: shape, load cases, hoisting, marks, every check" };
        var explain = new Option<string?>("--explain")
        {
            Description = "print one check: what it compares, its numbers, its source, what would pass",
            HelpName = "ID",
        };
        explain.CompletionSources.Add(_ => AllChecks.Declared.Select(d => d.Id));
        explain.Validators.Add(Known);
        var command = new Command("check", "Print the verdict of all checks on one screen; write nothing") { file, json, all, explain };
        command.SetAction(parsed =>
        {
            using var progress = terminal.Progress(parsed.GetValue(quiet));
            var reading = ProjectSource.Read(parsed.GetValue(file)!);
            var report = parsed.GetValue(json);
            if (report is not null && WholeFile.Is(report, ProjectSource.FilesOf(parsed.GetValue(file), reading.Parameters!)))
            {
                throw new Stop(
                    ExitCode.WrongInput,
                    $"{PlainLine.Of(report)}: error: the bridge is read from this file; name another one for the report");
            }

            var model = ModelSource.Build(reading, progress, withStock: report is not null);
            if (report is not null)
            {
                WholeFile.Write(report, stream => ReportWriter.Write(model, () => [], stream));
            }

            progress.Dispose();

            // All at once: a call of the system for every line would cost a tenth of the whole run.
            using var text = new StringWriter(CultureInfo.InvariantCulture);
            if (parsed.GetValue(explain) is { } id)
            {
                ExplainText.Write(text, model, AllChecks.Declared.First(d => string.Equals(d.Id, id, StringComparison.Ordinal)));
            }
            else if (parsed.GetValue(all) || parsed.GetValue(quiet))
            {
                CheckText.Write(text, model, parsed.GetValue(quiet));
            }
            else
            {
                ShortText.Write(text, model, PlainLine.Of(parsed.GetValue(file)!), terminal.Name);
            }

            terminal.Out.Write(text.ToString());
            return Verdict.IsClear(model.Checks) ? ExitCode.Done : ExitCode.CheckFails;
        });
        return command;
    }

    private static void Known(OptionResult result)
    {
        var ids = AllChecks.Declared.Select(d => d.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var token in result.Tokens.Where(t => !ids.Contains(t.Value)))
        {
            var nearest = NearestWord.Find(token.Value, ids) is { } id ? $"did you mean {id}? " : "";
            result.AddError(
                $"--explain: {QuantityReader.Quote(token.Value)} is not a check; {nearest}'bridgeform list checks' names them all");
        }
    }
}
