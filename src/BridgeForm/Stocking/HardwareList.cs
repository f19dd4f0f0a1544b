using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>A line of the hardware list.</summary>
/// <param name="Item">What to buy.</param>
/// <param name="Quantity">How many; null when the project file does not say.</param>
/// <param name="Where">For which places, with their number.</param>
/// <param name="Note">Sizes, how it is fitted, what is missing.</param>
/// <param name="Source">Where the count comes from.</param>
public sealed record HardwareItem(string Item, int? Quantity, string Where, string Note, string Source);

/// <summary>Everything to buy that is not wood.</summary>
public static class HardwareList
{
    /// <summary>What fasteners must be made of.</summary>
    public const string FastenerNote = "hot-dip galvanised or stainless: copper in treated wood corrodes plain and electroplated steel";

    private const string Model = "counted from the model";
    private const string File = "counted from the model; fasteners of one joint from the project file";

    /// <summary>Keepers, fasteners by joint, rope and its ends.</summary>
    public static ImmutableArray<HardwareItem> Of(BridgeParameters parameters, ImmutableArray<Piece> pieces, RopeWork ropework)
    {
        var joints = Joints.Of(pieces);
        return
        [
            .. Keepers(parameters, joints),
            .. joints.Select(j => Fasteners(j, parameters.Fasteners)),
            .. Unknown(joints, parameters.Fasteners),
            .. RopeHardware.Of(parameters, ropework),
        ];
    }

    private static IEnumerable<HardwareItem> Keepers(BridgeParameters parameters, ImmutableArray<Joint> joints)
    {
        var words = new QuantityText(parameters.Units);
        var keeper = parameters.Frames.Keeper;
        if (joints.FirstOrDefault(j => j.Name is "keeper") is { } straps)
        {
            var holes = keeper.Hole > 0
                ? $"holes {words.Size(keeper.Hole)}, {words.Size(keeper.Spread)} apart, {words.Size(keeper.Depth)} deep"
                : "no holes in the project file";
            yield return new HardwareItem(
                "Keeper straps", straps.Count, $"{straps.Count} channels", $"holds the base to the rope; {holes}; {FastenerNote}", Model);
        }
    }

    private static HardwareItem Fasteners(Joint joint, ImmutableSortedDictionary<string, int> given)
    {
        int? each = given.Where(g => IsNamed(joint, g.Key)).Select(g => (int?)g.Value).FirstOrDefault();
        var where = string.Create(CultureInfo.InvariantCulture, $"{joint.Count} joints: {joint.What}");
        return each is { } n
            ? new HardwareItem($"Fasteners, {joint.Name}", n * joint.Count, where, string.Create(CultureInfo.InvariantCulture, $"{n} a joint; {FastenerNote}"), File)
            : new HardwareItem($"Fasteners, {joint.Name}", null, where, $"count not given: write fasteners: {{ {joint.Name}: N }} into the project file, N from your engineer; {FastenerNote}", Model);
    }

    /// <summary>Joints under <c>fasteners</c> that this bridge has none of: not dropped, but told.</summary>
    private static IEnumerable<HardwareItem> Unknown(ImmutableArray<Joint> joints, ImmutableSortedDictionary<string, int> given) =>
        given.Where(g => !joints.Any(j => IsNamed(j, g.Key))).Select(g => new HardwareItem(
            $"Fasteners, {g.Key}",
            null,
            "no such joint in this bridge",
            $"its joints are {string.Join(", ", joints.Select(j => j.Name))}",
            "project file"));

    private static bool IsNamed(Joint joint, string key) =>
        string.Equals(joint.Name, key, StringComparison.Ordinal);
}
