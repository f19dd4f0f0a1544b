using System.Security.Cryptography;

namespace BridgeForm.Tests.Samples;

/// <summary>What docs/pictures/sources.txt says of the pictures: own hash, hash of the source, name.</summary>
internal static class Picture
{
    public const string Stale = "is stale: run viewer-samples/refresh.sh";

    private static string Folder { get; } = Path.Combine(Sample.Root, "docs", "pictures");

    private static string[] Sources => File.ReadAllLines(Path.Combine(Folder, "sources.txt"));

    public static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>The picture is the one that was recorded, made from this source.</summary>
    public static void AssertFresh(string name, string source)
    {
        var own = Hash(File.ReadAllBytes(Path.Combine(Folder, name)));
        Assert.True(Sources.Contains($"{own} {source} {name}", StringComparer.Ordinal), $"docs/pictures/{name} {Stale}");
    }

    /// <summary>The scripts are those that made the pictures; in the order of a shell's *.mjs.</summary>
    public static void AssertScripts()
    {
        byte[] all = [.. Directory.GetFiles(Folder, "*.mjs").Order(StringComparer.Ordinal).SelectMany(File.ReadAllBytes)];
        Assert.True(Sources.Contains(Hash(all) + " scripts", StringComparer.Ordinal), "docs/pictures " + Stale);
    }
}
