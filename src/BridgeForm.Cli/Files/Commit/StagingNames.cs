using System.Buffers;
using System.Globalization;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>Names of the hidden folders in which a run gathers its files: random, so that no two runs share one.</summary>
internal static class StagingNames
{
    /// <summary>How a hidden folder within the folder of results begins.</summary>
    public const string Prefix = ".bridgeform-";

    /// <summary>Within a hidden folder: the files of this run.</summary>
    public const string New = "new";

    /// <summary>Within a hidden folder: the files of the run before.</summary>
    public const string Old = "old";

    private const int RandomDigits = 16;

    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789abcdef");

    /// <summary>A name that nothing has.</summary>
    public static string Fresh() => Prefix + Random.Shared.NextInt64().ToString("x16", CultureInfo.InvariantCulture);

    /// <summary>A name like those of hidden folders within the folder of results.</summary>
    public static bool IsWithin(string name) => Is(name, Prefix);

    /// <summary>How hidden things beside a folder begin, as a full path.</summary>
    public static string Beside(string folder) =>
        Path.Combine(Path.GetDirectoryName(folder) ?? folder, "." + Path.GetFileName(folder) + Prefix);

    /// <summary>Hidden folders in the folder; links and other people's names are none.</summary>
    public static string[] Within(string folder) => Named(folder, Prefix);

    /// <summary>Hidden folders beside the folder; none where the place is not there or cannot be read.</summary>
    public static string[] BesideOf(string folder)
    {
        try
        {
            return Path.GetDirectoryName(folder) is { } parent ? Named(parent, Path.GetFileName(Beside(folder))) : [];
        }
        catch (Exception trouble) when (trouble is UnauthorizedAccessException or DirectoryNotFoundException)
        {
            return [];
        }
    }

    private static string[] Named(string folder, string prefix) =>
        [.. new DirectoryInfo(folder).EnumerateDirectories(".*")
            .Where(d => Is(d.Name, prefix) && d.LinkTarget is null)
            .Select(d => d.FullName)
            .Order(StringComparer.Ordinal)];

    private static bool Is(string name, string prefix) =>
        name.Length == prefix.Length + RandomDigits
        && name.StartsWith(prefix, StringComparison.Ordinal)
        && !name.AsSpan(prefix.Length).ContainsAnyExcept(Digits);
}
