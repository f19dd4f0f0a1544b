using BridgeForm.Output.Kinds;

namespace BridgeForm.Cli.Files;

/// <summary>The folder of results as the maker of one kind sees it.</summary>
internal sealed record KindFiles(OutputFolder Folder, string Kind) : IOutputSink
{
    /// <inheritdoc/>
    public void Write(string name, Action<Stream> write) => Folder.Write(Kind, name, write);
}
