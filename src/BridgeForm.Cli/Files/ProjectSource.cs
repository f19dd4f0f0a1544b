using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Ropes;
using BridgeForm.Stocking;

namespace BridgeForm.Cli.Files;

/// <summary>Project files on disk, and the demo inside the program.</summary>
internal static class ProjectSource
{
    private const string DemoResource = "BridgeForm.Cli.demo.yaml";

    /// <summary>Reads and checks a project file. Stops with all its faults, or when it cannot be read.</summary>
    public static BridgeParameters Read(string path)
    {
        var parameters = Parse(ReadText(path), path);
        return parameters.Prices is { } prices ? parameters with { PriceList = ReadPrices(prices, path, parameters) } : parameters;
    }

    /// <summary>Files that a bridge is read from: the project file, and the price list it names; none for the demo.</summary>
    public static IEnumerable<string> FilesOf(string? path, BridgeParameters parameters) =>
        path is null ? []
        : parameters.Prices is { } prices ? [path, Beside(path, prices)]
        : [path];

    /// <summary>The bundled demo.</summary>
    public static BridgeParameters Demo()
    {
        using var stream = typeof(ProjectSource).Assembly.GetManifestResourceStream(DemoResource)
            ?? throw new InvalidOperationException("The demo is missing from the program.");
        using var reader = new StreamReader(stream);
        return Parse(reader.ReadToEnd(), "demo.yaml");
    }

    private static string ReadText(string path)
    {
        if (Directory.Exists(path))
        {
            throw new Stop(ExitCode.FileTrouble, $"{path}: error: this is a folder; name a project file in it");
        }

        var file = new FileInfo(path);
        if (!file.Exists)
        {
            throw new Stop(ExitCode.FileTrouble, $"{path}: error: there is no such file; 'bridgeform start {path}' writes one to begin from");
        }

        if (file.Length > ProjectKeys.LargestFile)
        {
            throw new Stop(
                ExitCode.WrongInput, $"{path}: error: {file.Length} bytes are no project file; at most {ProjectKeys.LargestFile} are read");
        }

        return File.ReadAllText(path);
    }

    /// <summary>The price list that a project file names, beside it.</summary>
    private static PriceList ReadPrices(string prices, string projectPath, BridgeParameters parameters)
    {
        var path = Beside(projectPath, prices);
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            throw new Stop(
                ExitCode.FileTrouble,
                $"{path}: error: there is no such price list, though {projectPath} names it under prices; write one with the columns stock,section,length,price or take the key out");
        }

        if (file.Length > ProjectKeys.LargestFile)
        {
            throw new Stop(
                ExitCode.WrongInput, $"{path}: error: {file.Length} bytes are no price list; at most {ProjectKeys.LargestFile} are read");
        }

        var reading = PriceReader.Read(File.ReadAllText(path), path, parameters.Stock);
        return reading.List ?? throw new Stop(ExitCode.WrongInput, string.Join(Environment.NewLine, reading.Lines));
    }

    private static string Beside(string projectPath, string name) => Path.Combine(Path.GetDirectoryName(projectPath) ?? "", name);

    private static BridgeParameters Parse(string text, string name)
    {
        var reading = ProjectReader.Read(text, name, RopeTable.Catalogue);
        return reading.Parameters
            ?? throw new Stop(ExitCode.WrongInput, string.Join(Environment.NewLine, reading.Lines));
    }
}
