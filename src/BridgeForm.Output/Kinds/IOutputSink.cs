namespace BridgeForm.Output.Kinds;

/// <summary>Where files go: a folder, memory, a zip archive. Kinds that are made side by side write into one at a time.</summary>
public interface IOutputSink
{
    /// <summary>Takes one file.</summary>
    /// <param name="name">Relative, with forward slashes.</param>
    /// <param name="write">Writes its bytes; called once, before this returns.</param>
    void Write(string name, Action<Stream> write);
}
