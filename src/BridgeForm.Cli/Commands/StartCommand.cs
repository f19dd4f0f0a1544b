using System.CommandLine;
using System.Text;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;
using BridgeForm.Output.Pdf;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary><c>start [FILE]</c>: a commented project file to begin from.</summary>
internal static class StartCommand
{
    private const string DefaultName = "bridge.yaml";
    private const string SurveyName = "survey.pdf";

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
        var units = SearchOptions.Among(
            new Option<string?>("--units")
            {
                Description = "units of the file; by default imperial, or those of the span",
                HelpName = "imperial|metric",
            },
            "imperial", "metric");
        var site = new SiteOptions();
        var command = new Command("start", "Write a commented project file to begin from") { file, force, units };
        site.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(file)!;
            var isMetric = parsed.GetValue(units) is { } named ? named is "metric" : site.IsMetric(parsed);
            var system = isMetric ? UnitSystem.Metric : UnitSystem.Imperial;
            Free(path, parsed.GetValue(force));
            if (site.IsAsked(parsed))
            {
                var code = SiteSearch.Run(
                    terminal, parsed.GetValue(quiet), path, site.Wish(parsed, path, system), site.Ask(parsed));
                if (code == ExitCode.Done)
                {
                    _ = WriteSchema(terminal, path);
                    WriteSurvey(terminal, parsed.GetValue(quiet), path, system);
                }

                return code;
            }

            WholeFile.Write(path, stream => stream.Write(Encoding.UTF8.GetBytes(Starter.Text(system))));
            _ = WriteSchema(terminal, path);
            WriteSurvey(terminal, parsed.GetValue(quiet), path, system);
            if (!parsed.GetValue(quiet))
            {
                terminal.Out.WriteLine($"{PlainLine.Of(path)} written. Change it, then: {terminal.Name} check {PlainLine.Of(path)}");
            }

            return ExitCode.Done;
        });
        return command;
    }

    private static void Free(string path, bool force)
    {
        if (File.Exists(path) && !force)
        {
            throw new Stop(ExitCode.FileTrouble, $"{path}: error: the file is there already; --force overwrites it");
        }
    }

    // Beside the file, to take along to the site; one that is there may have readings in it: it stays.
    private static void WriteSurvey(Terminal terminal, bool isQuiet, string path, UnitSystem units)
    {
        var survey = Path.Combine(Path.GetDirectoryName(path) ?? "", SurveyName);
        var isFree = Place.At(survey) is PlaceKind.Free;
        if (isFree)
        {
            WholeFile.Write(survey, stream => PdfWriter.Write(SurveySheet.Blank(units), stream));
        }

        if (!isQuiet)
        {
            terminal.Out.WriteLine(PlainLine.Of(survey) + (isFree
                ? " written: print it, measure the site by it"
                : " is there already and stays as it is; its units may be another file's"));
        }
    }

    // Beside the file, where its first line says: editors complete and check it by it. Whose another one is cannot be told: it stays.
    private static bool WriteSchema(Terminal terminal, string path)
    {
        var schema = Path.Combine(Path.GetDirectoryName(path) ?? "", StarterFile.SchemaName);
        var text = ProjectSchema.Json();
        if (Place.At(schema) is PlaceKind.Free)
        {
            WholeFile.Write(schema, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
            return true;
        }

        var isThisOne = Place.At(schema) is PlaceKind.File && string.Equals(File.ReadAllText(schema), text, StringComparison.Ordinal);
        if (!isThisOne)
        {
            terminal.Error.WriteLine($"{schema} is there already and is not this version's schema; it is left as it is. Delete it and "
                + "run start again to have this version's.");
        }

        return isThisOne;
    }
}
