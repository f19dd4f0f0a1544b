namespace BridgeForm.Output.Kinds;

/// <summary>One kind of files that <c>make --only</c> takes.</summary>
/// <param name="Word">Its word on the command line.</param>
/// <param name="Make">Writes its files; called beside others, and touches nothing but the sink.</param>
public sealed record OutputKind(string Word, Action<BridgeModel, IOutputSink> Make);
