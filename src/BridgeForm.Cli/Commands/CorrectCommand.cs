using System.CommandLine;
using System.Globalization;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Streams;
using BridgeForm.Cli.Text;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary><c>correct FILE</c>: what to turn so that ropes that hang otherwise than designed come to the wanted sag.</summary>
internal static class CorrectCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal, Option<bool> quiet)
    {
        var file = new Argument<string>("FILE") { Description = "project file with what was measured, under as_built" };
        file.Validators.Add(PathText.Check);
        var command = new Command("correct", "Print the turns of each turnbuckle that bring the ropes to the wanted sag; write nothing")
        {
            file,
        };
        command.SetAction(parsed =>
        {
            using var progress = terminal.Progress(parsed.GetValue(quiet));
            var reading = ProjectSource.Read(parsed.GetValue(file)!);
            var parameters = reading.Parameters!;
            if (parameters.AsBuilt is null)
            {
                throw new Stop(
                    ExitCode.WrongInput,
                    $"{PlainLine.Of(parsed.GetValue(file)!)}: error: nothing was measured; write what hangs, such as as_built: {{ stage: "
                        + "bare, temperature: 55 F, sag: { left: 20 in, right: 20-1/4 in } }");
            }

            progress.Say("working out the bridge as drawn and as it hangs");
            if (!Correcting.TryFind(parameters, Together.Run, out var correction, out var fault))
            {
                throw new Stop(ExitCode.NoSolution, $"bridgeform: error: {fault.Message} [{fault.Code}]");
            }

            progress.Dispose();
            using var text = new StringWriter(CultureInfo.InvariantCulture);
            CorrectText.Write(text, correction);
            terminal.Out.Write(text.ToString());
            return correction.IsBeyondReach || correction.IsOtherThanMarked || correction.IsOffLimits || correction.FailsAfter
                ? ExitCode.CheckFails
                : ExitCode.Done;
        });
        return command;
    }
}
