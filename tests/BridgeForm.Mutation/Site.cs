namespace BridgeForm.Mutation;

/// <summary>A place in the source and what is put in its stead.</summary>
/// <param name="File">Path from the repository's root, with slashes.</param>
/// <param name="Member">Type and member it stands in, such as Stability.Effective.</param>
/// <param name="Kind">sign, factor, limit, least or most, comparison; listed for a planted one.</param>
/// <param name="Original">The expression, its white space collapsed.</param>
/// <param name="Mutated">What it becomes, as it is compiled.</param>
/// <param name="Occurrence">How many places before it in the member read and are changed alike.</param>
/// <param name="Start">Where the expression begins in the file, characters.</param>
/// <param name="Line">Its line, from 1.</param>
internal sealed record Site(
    string File, string Member, string Kind, string Original, string Mutated, int Occurrence, int Start, int Line)
{
    /// <summary>Full name of the constant field it stands in; null for none.</summary>
    public string? Constant { get; init; }

    /// <summary>src/BridgeForm/Checks gives Checks, src/BridgeForm.Output/Dxf gives Output.</summary>
    public string Area => File.StartsWith("src/BridgeForm/", StringComparison.Ordinal)
        ? File.Split('/')[2]
        : File.Split('/')[1].Replace("BridgeForm.", "", StringComparison.Ordinal);

    /// <summary>Stays the same when lines move.</summary>
    public string Key => $"{File}|{Member}|{Original}|{Collapsed(Mutated)}|{Occurrence}";

    /// <summary>Where the site falls in the drawing of lots: sites elsewhere that come and go leave it alone.</summary>
    public ulong Lot(string seed) =>
        BitConverter.ToUInt64(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(seed + "|" + Key)));

    public static string Collapsed(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
