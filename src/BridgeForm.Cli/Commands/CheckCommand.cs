using System.CommandLine;
using BridgeForm.Checks;
using BridgeForm.Cli.Files;
using BridgeForm.Output.Report;

namespace BridgeForm.Cli.Commands;

/// <summary><c>check FILE</c>: prints the shape, the load cases and the checks.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal, Option<bool> quiet)
    {
        var file = new Argument<string>("FILE") { Description = "project file" };
        var json = new Option<string?>("--json") { Description = "write the report here as well", HelpName = "PATH" };
        var command = new Command("check", "Print the shape, the load cases and the checks; write nothing") { file, json };
        command.SetAction(parsed =>
        {
            var model = ModelSource.Build(ProjectSource.Read(parsed.GetValue(file)!));
            if (parsed.GetValue(json) is { } path)
            {
                WriteReport(path, model);
            }

            CheckText.Write(terminal.Out, model, parsed.GetValue(quiet));
            return model.Checks.Any(c => c.Status == CheckStatus.Fail) ? ExitCode.CheckFails : ExitCode.Done;
        });
        return command;
    }

    private static void WriteReport(string path, BridgeModel model)
    {
        var beside = path + ".writing";
        using (var stream = File.Create(beside))
        {
            ReportWriter.Write(model, [], stream);
        }

        File.Move(beside, path, overwrite: true);
    }
}
