using System.Collections.Immutable;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;

namespace BridgeForm.Project;

/// <summary>A router bit. Metres.</summary>
/// <param name="Diameter">Diameter.</param>
/// <param name="Reach">How deep it cuts; null where the file does not say: then nothing is judged by it, and the files say so.</param>
public sealed record RouterBit(double Diameter, double? Reach = null);

/// <summary>The router table: what it takes and which bits there are. Metres.</summary>
public sealed record RouterParameters
{
    /// <summary>Longest stick that lies on it; null for any.</summary>
    public double? BedLength { get; init; }

    /// <summary>Widest stick that lies on it; null for any.</summary>
    public double? BedWidth { get; init; }

    /// <summary>Thickest stick that goes under it; null for any.</summary>
    public double? Height { get; init; }

    /// <summary>Bits on hand, thickest first; at least one.</summary>
    public required ImmutableArray<RouterBit> Bits { get; init; }

    /// <summary>Write each piece's mark into it.</summary>
    public bool Engrave { get; init; }

    /// <summary>
    /// Whether a stick of that size lies on the bed. Where both sides of the bed are known it may lie along either.
    /// </summary>
    public bool HasRoomFor(double length, double across) => (BedLength, BedWidth) is ({ } one, { } other)
        ? length <= Math.Max(one, other) && across <= Math.Min(one, other)
        : !(length > BedLength) && !(across > BedWidth);
}

/// <summary>Keys under <c>shop.router</c>, and how they are read.</summary>
internal static class RouterSection
{
    private const string Path = "shop.router";

    public static KeySpec Keys => Define.Map(
        "router",
        "The router table; left out, it takes every stick",
        [
            Define.Length("bed_length", "Longest stick or board that lies on its bed", "6 in", "100 ft"),
            Define.Length("bed_width", "Widest stick or board that lies on its bed", "1 in", "20 ft"),
            Define.Length("height", "Thickest stick that goes under it", "1/4 in", "3 ft"),
            Define.List(
                "bits",
                "Bits on hand, in place of router_bit; each piece takes the thickest that makes it",
                Define.Map(
                    "",
                    "A bit",
                    [
                        Define.Length("diameter", "Its diameter", "1/64 in", "2 in").Needed("1/4 in", "6 mm"),
                        Define.Length(
                            "reach", "How deep it cuts; left out, not checked, and each file says how deep it must", "1/64 in", "12 in"),
                    ]),
                0,
                20),
            Define.Flag("engrave", "Write each piece's mark into the face that is up", "false"),
        ]);

    public static RouterParameters Read(FileValues v, double only)
    {
        var bits = v.Items(Path + ".bits")
            .Select(p => new RouterBit(v.Number(p + ".diameter"), v.NumberOrNull(p + ".reach"))).ToList();
        return new RouterParameters
        {
            BedLength = v.NumberOrNull(Path + ".bed_length"),
            BedWidth = v.NumberOrNull(Path + ".bed_width"),
            Height = v.NumberOrNull(Path + ".height"),
            Bits = bits.Count > 0 ? [.. bits.OrderByDescending(b => b.Diameter)] : [new RouterBit(only)],
            Engrave = v.Flag(Path + ".engrave"),
        };
    }
}
