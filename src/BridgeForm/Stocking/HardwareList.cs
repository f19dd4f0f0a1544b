using System.Collections.Immutable;
using System.Globalization;
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

    private const int RopeEnds = 4;
    private const int Ropes = 2;
    private const string Model = "counted from the model";
    private const string File = "counted from the model; fasteners of one joint from the project file";

    /// <summary>Keepers, fasteners by joint, rope and its ends.</summary>
    public static ImmutableArray<HardwareItem> Of(BridgeModel model)
    {
        var joints = Joints.Of(model.Pieces);
        return
        [
            .. Keepers(model, joints),
            .. joints.Select(j => Fasteners(j, model.Parameters.Fasteners)),
            .. Unknown(joints, model.Parameters.Fasteners),
            .. Rope(model),
        ];
    }

    private static IEnumerable<HardwareItem> Keepers(BridgeModel model, ImmutableArray<Joint> joints)
    {
        var words = new QuantityText(model.Parameters.Units);
        var keeper = model.Parameters.Frames.Keeper;
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
            : new HardwareItem($"Fasteners, {joint.Name}", null, where, $"count not given: write fasteners: {{ {joint.Name}: 2 }} into the project file; {FastenerNote}", Model);
    }

    /// <summary>Names under <c>fasteners</c> that are no joint of this bridge: not dropped, but told.</summary>
    private static IEnumerable<HardwareItem> Unknown(ImmutableArray<Joint> joints, ImmutableSortedDictionary<string, int> given) =>
        given.Where(g => !joints.Any(j => IsNamed(j, g.Key))).Select(g => new HardwareItem(
            $"Fasteners, {g.Key}",
            null,
            "no such joint in this bridge",
            $"its joints are {string.Join(", ", joints.Select(j => j.Name))}",
            "project file"));

    private static bool IsNamed(Joint joint, string key) =>
        string.Equals(joint.Name, key.Replace('_', '-'), StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<HardwareItem> Rope(BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        var ropes = model.Parameters.Ropes;
        var length = model.Rope.Segments.Sum(s => s.UnstressedLength);
        yield return new HardwareItem(
            $"Rope {ropes.Rope.Name}",
            Ropes,
            $"{words.Length(length)} each between the supports, unstressed",
            "add what runs on to the anchors, and the turn-back at each end",
            Model);
        if (ropes.TerminationKind is not "clips")
        {
            yield return new HardwareItem(
                $"Rope ends, {ropes.TerminationKind}", RopeEnds, "two ropes, two ends", "to the maker's instructions for this rope", Model);
            yield break;
        }

        yield return Clips(ropes.Rope.Diameter, words);
        yield return new HardwareItem(
            "Thimbles", RopeEnds, "one a rope end", $"for rope of {words.Size(ropes.Rope.Diameter)}; heavy pattern, hot-dip galvanised or stainless", Model);
    }

    private static HardwareItem Clips(double diameter, QuantityText words)
    {
        const double metresPerInch = 0.0254;
        if (RopeClips.For(diameter) is not { } row)
        {
            return new HardwareItem(
                "Rope clips", null, "two ropes, two ends", $"rope of {words.Size(diameter)} is beyond the table of clips: an engineer decides", "none");
        }

        var note = string.Create(
            CultureInfo.InvariantCulture,
            $"{row.Count} an end, at least; for rope up to {words.Size(row.Diameter * metresPerInch)}; turn back {words.Size(row.TurnBack * metresPerInch)}; torque {row.Torque:0.#} ft lb, checked again under load; U-bolt on the dead end; drop-forged");
        return new HardwareItem("Rope clips", RopeEnds * row.Count, "two ropes, two ends", note, row.Source);
    }
}
