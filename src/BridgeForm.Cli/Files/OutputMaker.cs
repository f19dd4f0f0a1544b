using BridgeForm.Output;

namespace BridgeForm.Cli.Files;

/// <summary>One kind of files that <c>make --only</c> takes.</summary>
/// <param name="Kind">Its word on the command line.</param>
/// <param name="Make">Writes its files; called beside others, and touches nothing but the output.</param>
internal sealed record OutputMaker(string Kind, Action<BridgeModel, PeopleUnits, OutputFolder> Make)
{
    /// <summary>
    /// Folder that this kind fills with a file a piece or board: files of an earlier run go away even when there is nothing to
    /// write this time. Null for kinds with fixed names.
    /// </summary>
    public string? Folder { get; init; }
}
