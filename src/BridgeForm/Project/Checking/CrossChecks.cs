using BridgeForm.Project.Reading;

namespace BridgeForm.Project.Checking;

/// <summary>Faults of how the file's values go together: what could not be built or computed at all.</summary>
internal static class CrossChecks
{
    public static void Run(FileValues values, BridgeParameters parameters, FaultList faults)
    {
        var file = new CheckedFile(values, parameters, faults);
        SpanChecks.Run(file);
        ChannelChecks.Run(file);
        PostAndBraceChecks.Run(file);
        DeckChecks.Run(file);
        RailChecks.Run(file);
        StockChecks.Run(file);
        HoleChecks.Run(file);
        ListChecks.Run(file);
        LoadChecks.Run(file);
    }
}
