namespace BridgeForm.Cli.Files;

/// <summary>The folder of results as the maker of one kind sees it.</summary>
internal sealed record KindFiles(OutputFolder Folder, string Kind)
{
    /// <summary>Writes one file; <paramref name="name"/> is relative, with forward slashes.</summary>
    public void Write(string name, Action<Stream> write) => Folder.Write(Kind, name, write);
}
