using System.CommandLine;
using System.Reflection;
using BridgeForm.Cli.Commands;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Streams;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Cli;

/// <summary>Parses the command line, runs a command, turns trouble into exit codes.</summary>
internal static class Application
{
    /// <summary>Runs one command line and returns its exit code.</summary>
    /// <param name="arguments">The words behind the program's name.</param>
    /// <param name="output">Results.</param>
    /// <param name="error">Errors, failing checks.</param>
    /// <param name="name">What a person types in front of them.</param>
    public static int Run(string[] arguments, TextWriter output, TextWriter error, string name = OwnName.Installed)
    {
        var terminal = new Terminal(output, error, name);
        (output, error) = (terminal.Out, terminal.Error);
        try
        {
            return Parsed(arguments, terminal);
        }
        catch (Exception) when (Interruption.IsOver)
        {
            return Interruption.Wait();
        }
        catch (Stop stop)
        {
            error.WriteLine(OwnName.In(stop.Message, name));
            return stop.Code;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            error.WriteLine("bridgeform: error: " + PlainLine.Of(PlaceTrouble.Words(trouble)));
            return ExitCode.FileTrouble;
        }
        catch (Exception defect)
        {
            error.WriteLine("bridgeform: this is a defect in the program, not in your file. Please report it with your project file:");
            error.WriteLine(defect.ToString());
            return ExitCode.Defect;
        }
    }

    private static int Parsed(string[] arguments, Terminal terminal)
    {
        var (output, error) = (terminal.Out, terminal.Error);
        // Everywhere on the line, as --help is: no command may take it for the name of a file.
        if (arguments.TakeWhile(a => a is not "--").Contains("--version", StringComparer.Ordinal))
        {
            output.WriteLine(Version);
            return ExitCode.Done;
        }

        var parsed = Root(terminal).Parse(arguments);
        if (parsed.Errors.Count > 0)
        {
            foreach (var problem in parsed.Errors)
            {
                error.WriteLine("bridgeform: error: " + OwnName.In(PlainLine.Of(problem.Message), terminal.Name));
            }

            if (Meant(parsed) is { } meant)
            {
                error.WriteLine(OwnName.In($"did you mean 'bridgeform {PlainLine.Of(meant)}'?", terminal.Name));
            }

            error.WriteLine(OwnName.In("'bridgeform --help' lists the commands.", terminal.Name));
            return ExitCode.WrongInput;
        }

        return parsed.Invoke(new InvocationConfiguration
        {
            EnableDefaultExceptionHandler = false,
            Output = output,
            Error = error,
        });
    }

    // Only where no command was understood: then the first word was meant for one.
    private static string? Meant(ParseResult parsed) =>
        parsed.CommandResult.Command is RootCommand root && parsed.UnmatchedTokens is [var word, ..]
            ? NearestWord.Find(word, root.Subcommands.Select(c => c.Name))
            : null;

    private static string Version =>
        typeof(Application).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    private static RootCommand Root(Terminal terminal)
    {
        var quiet = new Option<bool>("--quiet") { Description = "say nothing but errors, failing checks and dangers", Recursive = true };
        return new RootCommand(
            "Designs small timber footbridges hung on two ropes: solid model, drawings of every piece, cut list, checks.\n\n"
            + Caution.Text)
        {
            quiet,
            StartCommand.Create(terminal, quiet),
            MakeCommand.Create(terminal, quiet),
            CheckCommand.Create(terminal, quiet),
            ProposeCommand.Create(terminal, quiet),
            CorrectCommand.Create(terminal, quiet),
            ListCommand.Create(terminal),
        };
    }
}
