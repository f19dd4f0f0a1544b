using System.Collections.Immutable;
using System.Text;
using BridgeForm.Cli.Streams;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Cli.Files;

/// <summary>Project files on disk, and the demo inside the program.</summary>
internal static class ProjectSource
{
    private const string DemoResource = "BridgeForm.Cli.demo.yaml";

    /// <summary>Reads and checks a project file. Stops with all its faults, or when it cannot be read.</summary>
    public static ProjectReading Read(string path)
    {
        var reading = Parse(ReadText(path), path);
        return reading.Parameters is { Prices: { } prices } parameters
            ? reading with { Parameters = parameters with { PriceList = ReadPrices(prices, path, parameters.Stock) } }
            : reading;
    }

    /// <summary>Files that a bridge is read from: the project file, and the price list it names; none for the demo.</summary>
    public static IEnumerable<string> FilesOf(string? path, BridgeParameters parameters) =>
        path is null ? []
        : parameters.Prices is { } prices ? [path, Beside(path, prices)]
        : [path];

    /// <summary>The bundled demo.</summary>
    public static ProjectReading Demo()
    {
        using var stream = typeof(ProjectSource).Assembly.GetManifestResourceStream(DemoResource)
            ?? throw new InvalidOperationException("The demo is missing from the program.");
        using var reader = new StreamReader(stream);
        return Parse(reader.ReadToEnd(), "demo.yaml");
    }

    /// <summary>The text of a project file as it stands, a byte order mark of UTF-8 included.</summary>
    public static string TextOf(string path) =>
        ReadText(path) is var text && File.ReadAllBytes(path) is [0xEF, 0xBB, 0xBF, ..] ? '\uFEFF' + text : text;

    private static string ReadText(string path)
    {
        if (Directory.Exists(path))
        {
            throw new Stop(ExitCode.FileTrouble, $"{path}: error: this is a folder; name a project file in it");
        }

        if (!File.Exists(path))
        {
            throw new Stop(
                ExitCode.FileTrouble, $"{path}: error: there is no such file; 'bridgeform start {path}' writes one to begin from");
        }

        return PlaceTrouble.Reading(path, () => LimitedText.Read(path)) ?? throw new Stop(
            ExitCode.WrongInput,
            $"{path}: error: more than {ProjectKeys.LargestFile} bytes are no project file [{ProjectReader.TooLarge}]");
    }

    /// <summary>The price list that a project file names, beside it.</summary>
    /// <param name="prices">Its name as the project file gives it.</param>
    /// <param name="projectPath">Where the project file is, or is to be.</param>
    /// <param name="stock">Stocks that prices are given for.</param>
    public static PriceList ReadPrices(string prices, string projectPath, ImmutableArray<StockParameters> stock)
    {
        var path = Beside(projectPath, prices);
        if (!File.Exists(path))
        {
            throw new Stop(
                ExitCode.FileTrouble,
                $"{path}: error: there is no such price list, though {projectPath} names it under prices; write one with the columns "
                    + "stock,section,length,price or take the key out");
        }

        var text = PlaceTrouble.Reading(path, () => LimitedText.Read(path))
            ?? throw new Stop(
                ExitCode.WrongInput,
                $"{path}: error: more than {ProjectKeys.LargestFile} bytes are no price list [{ProjectReader.TooLarge}]");
        var reading = PriceReader.Read(text, path, stock);
        return reading.List ?? throw new Stop(ExitCode.WrongInput, reading.Lines);
    }

    private static string Beside(string projectPath, string name) => Path.Combine(Path.GetDirectoryName(projectPath) ?? "", name);

    private static ProjectReading Parse(string text, string name)
    {
        var reading = ProjectReader.Read(text, name, RopeTable.Catalogue);
        return reading.Parameters is not null
            ? reading
            : throw new Stop(ExitCode.WrongInput, reading.Lines);
    }
}

/// <summary>Text from a file, a pipe or a device, which need not know how long it is, nor ever end.</summary>
internal static class LimitedText
{
    /// <summary>The text, UTF-8 or as its byte order mark says; null when there is more of it than a project file may hold.</summary>
    public static string? Read(string path)
    {
        var bytes = new byte[ProjectKeys.LargestFile + 1];
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        if (length > ProjectKeys.LargestFile)
        {
            return null;
        }

        using var reader = new StreamReader(new MemoryStream(bytes, 0, length), Encoding.UTF8, detectEncodingFromByteOrderMarks: true);
        return reader.ReadToEnd();
    }
}
