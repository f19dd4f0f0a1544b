using System.CommandLine;
using BridgeForm.Checks;
using BridgeForm.Cli.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary><c>make [FILE]</c>: builds the model and writes its files.</summary>
internal static class MakeCommand
{
    private const string DemoFolder = "demo-out";

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal, Option<bool> quiet)
    {
        var file = new Argument<string?>("FILE")
        {
            Description = "project file; without one the bundled demo is made into ./" + DemoFolder,
            Arity = ArgumentArity.ZeroOrOne,
        };
        var folder = new Option<string?>("--output", "-o")
        {
            Description = "folder for the files; by default FILE's name without its ending + -out, beside FILE",
            HelpName = "DIR",
        };
        var only = new Option<string?>("--only")
        {
            Description = "make just these, separated by commas: " + string.Join(", ", OutputKinds.Names),
            HelpName = "KIND,…",
        };
        file.Validators.Add(PathText.Check);
        folder.Validators.Add(PathText.Check);
        var command = new Command("make", "Build the model and write its files") { file, folder, only };
        command.SetAction(parsed => Make(
            terminal, parsed.GetValue(quiet), parsed.GetValue(file), parsed.GetValue(folder), parsed.GetValue(only)));
        return command;
    }

    private static int Make(Terminal terminal, bool quiet, string? file, string? folder, string? only)
    {
        var kinds = OutputKinds.Parse(only);
        using var progress = terminal.Progress(quiet);
        var reading = file is null ? ProjectSource.Demo() : ProjectSource.Read(file);
        var model = ModelSource.Build(reading, progress);
        var target = folder ?? (file is null ? DemoFolder : Path.ChangeExtension(file, null) + "-out");
        int count;
        using (var output = new OutputFolder(target))
        {
            OutputFiles.Write(model, kinds, output, progress);
            output.Commit();
            count = output.Names.Count;
        }

        progress.Dispose();
        NameFailures(terminal, model);
        if (!quiet)
        {
            terminal.Out.WriteLine($"{model.Parameters.Name}: {model.Pieces.Length} pieces, {model.Pieces.Sum(p => p.Occurrences.Length)} parts; {count} files in {PlainLine.Of(target)}");
            terminal.Out.WriteLine(Caution.Text);
        }

        return ExitCode.Done;
    }

    private static void NameFailures(Terminal terminal, BridgeModel model)
    {
        foreach (var check in model.Checks.Where(c => c.Status == CheckStatus.Fail))
        {
            terminal.Error.WriteLine($"check fails: {check.Id}: {check.Title}: {check.Detail}");
        }
    }
}
