using System.CommandLine;
using System.Text;
using BridgeForm.Cli.Files;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary><c>start [FILE]</c>: a commented project file to begin from.</summary>
internal static class StartCommand
{
    private const string DefaultName = "bridge.yaml";

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal, Option<bool> quiet)
    {
        var file = new Argument<string>("FILE")
        {
            Description = "project file to write",
            DefaultValueFactory = _ => DefaultName,
        };
        file.Validators.Add(PathText.Check);
        var force = new Option<bool>("--force") { Description = "overwrite the file when it is there" };
        var command = new Command("start", "Write a commented project file to begin from") { file, force };
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(file)!;
            Write(path, parsed.GetValue(force));
            if (!parsed.GetValue(quiet))
            {
                terminal.Out.WriteLine($"{PlainLine.Of(path)} written. Change it, then: bridgeform make {PlainLine.Of(path)}");
            }

            return ExitCode.Done;
        });
        return command;
    }

    private static void Write(string path, bool force)
    {
        if (Directory.Exists(path))
        {
            throw new Stop(ExitCode.FileTrouble, $"{path}: error: this is a folder; name a file to write");
        }

        if (File.Exists(path) && !force)
        {
            throw new Stop(ExitCode.FileTrouble, $"{path}: error: the file is there already; --force overwrites it");
        }

        WholeFile.Write(path, stream => stream.Write(Encoding.UTF8.GetBytes(StarterFile.Text())));

        // Beside it, where its first line says: editors complete and check the file by it.
        var schema = Path.Combine(Path.GetDirectoryName(path) ?? "", StarterFile.SchemaName);
        WholeFile.Write(schema, stream => stream.Write(Encoding.UTF8.GetBytes(ProjectSchema.Json())));
    }
}
