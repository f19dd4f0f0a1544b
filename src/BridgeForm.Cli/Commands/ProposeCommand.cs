using System.CommandLine;
using System.Globalization;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Streams;
using BridgeForm.Cli.Text;
using BridgeForm.Proposals;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary><c>propose FILE</c>: ways from a file to a design that passes.</summary>
internal static class ProposeCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal, Option<bool> quiet)
    {
        var file = new Argument<string>("FILE") { Description = "project file" };
        file.Validators.Add(PathText.Check);
        var (free, prefer, slope) = (SearchOptions.Free(), SearchOptions.Prefer(), SearchOptions.Slope());
        var command = new Command("propose", "Look for designs that pass, from a project file; write nothing unless asked")
        {
            file, free, prefer, slope,
        };
        var write = new WayOptions();
        write.AddTo(command);
        command.SetAction(parsed =>
        {
            var preference = SearchOptions.PreferenceOf(parsed.GetValue(prefer));
            write.Demand(parsed, parsed.GetValue(file)!);
            using var progress = terminal.Progress(parsed.GetValue(quiet));
            var reading = ProjectSource.Read(parsed.GetValue(file)!);
            var searched = ProjectSource.TextOf(parsed.GetValue(file)!);
            if (preference == Preference.Cheap && reading.Parameters!.PriceList is null)
            {
                throw new Stop(
                    ExitCode.WrongInput,
                    "bridgeform: error: --prefer cheap: the file names no price list; write one with the columns "
                        + "stock,section,length,price, and its name under prices");
            }

            var result = Search.Propose(reading, reading.Parameters!.PriceList, new SearchAsk
            {
                Free = SearchOptions.Listed(parsed.GetValue(free)),
                Prefer = preference,
                MostSlope = SearchOptions.SlopeOf(parsed.GetValue(slope)),
                Run = Together.Run,
                Looked = count => progress.Say(string.Create(CultureInfo.InvariantCulture, $"{count} designs looked at")),
            });
            progress.Dispose();
            using var text = new StringWriter(CultureInfo.InvariantCulture);
            ProposeText.Write(
                text, reading.Parameters.Name, reading.Parameters.Units, result, preference == Preference.Cheap,
                write.IsAsked(parsed) ? null : $"{terminal.Name} propose {PlainLine.Of(parsed.GetValue(file)!)}");
            terminal.Out.Write(text.ToString());
            if (!result.Proposals.IsEmpty)
            {
                write.Write(terminal, parsed, parsed.GetValue(file)!, searched, result);
            }

            return result.Proposals.IsEmpty && !result.IsPassing ? ExitCode.CheckFails : ExitCode.Done;
        });
        return command;
    }
}
