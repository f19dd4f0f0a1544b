using BridgeForm.Cli;

namespace BridgeForm.Tests.Cli;

/// <summary>Runs command lines in a folder of their own.</summary>
internal sealed class CommandRun : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("bridgeform-test-").FullName;

    public string Path(string name) => System.IO.Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(Path(name), text);
        return Path(name);
    }

    public static (int Code, string Out, string Error) Run(params string[] arguments)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = Application.Run(arguments, output, error);
        return (code, output.ToString(), error.ToString());
    }

    /// <summary>Every file below the folder with its bytes, hidden ones too.</summary>
    public Dictionary<string, byte[]> Snapshot() => Directory
        .EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
        .ToDictionary(f => System.IO.Path.GetRelativePath(Folder, f), File.ReadAllBytes, StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
