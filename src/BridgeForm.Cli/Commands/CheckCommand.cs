using System.CommandLine;
using System.Globalization;
using BridgeForm.Checks;
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
        var command = new Command("check", "Print the shape, the load cases and the checks; write nothing") { file, json };
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

            var model = report is null ? ModelSource.BuildWithoutStock(reading, progress) : ModelSource.Build(reading, progress);
            if (report is not null)
            {
                WholeFile.Write(report, stream => ReportWriter.Write(model, () => [], stream));
            }

            progress.Dispose();

            // All at once: a call of the system for every line would cost a tenth of the whole run.
            using var text = new StringWriter(CultureInfo.InvariantCulture);
            CheckText.Write(text, model, parsed.GetValue(quiet));
            terminal.Out.Write(text.ToString());
            return Verdict.IsClear(model.Checks) ? ExitCode.Done : ExitCode.CheckFails;
        });
        return command;
    }
}
