using BridgeForm.Cli;
using BridgeForm.Cli.Streams;

var watch = Interruption.Watch();
try
{
    return Application.Run(args, StandardStreams.Out, StandardStreams.Error, OwnName.Find());
}
catch (IOException)
{
    // Standard error cannot be written either: there is nowhere left to say so.
    return ExitCode.FileTrouble;
}
finally
{
    GC.KeepAlive(watch);
}
