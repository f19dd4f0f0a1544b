using BridgeForm.Output;

namespace BridgeForm.Cli.Files;

/// <summary>One kind of files that <c>make --only</c> takes.</summary>
/// <param name="Kind">Its word on the command line.</param>
/// <param name="Make">Writes its files; called beside others, and touches nothing but the output.</param>
internal sealed record OutputMaker(string Kind, Action<BridgeModel, PeopleUnits, KindFiles> Make);
