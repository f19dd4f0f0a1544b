using System.Globalization;
using BridgeForm.Connections;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>Bolts, plates and brackets of joints that the file describes; the force beside those it leaves to an engineer.</summary>
internal static class JointHardware
{
    private const int Faces = 2;

    /// <summary>Rows of one joint; null where it is none of those that can be described, or the file describes none at all.</summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="joint">The joint and its count.</param>
    /// <param name="forces">What the guard asks of each joint, newtons, by its name.</param>
    public static IReadOnlyList<HardwareItem>? Rows(
        BridgeParameters parameters, Joint joint, IReadOnlyDictionary<string, double> forces)
    {
        var frames = parameters.Frames;
        if (frames.Joints.IsEmpty || !Enum.GetValues<JointPlace>().Any(p => IsOf(p, joint))
            || !forces.TryGetValue(joint.Name, out var force))
        {
            return null;
        }

        var words = new QuantityText(parameters.Units);
        var where = string.Create(CultureInfo.InvariantCulture, $"{joint.Count} joints: {joint.What}");
        var metal = HardwareList.FastenerNote(parameters.FastenerMetal);
        return frames.Joints.FirstOrDefault(j => string.Equals(j.Name, joint.Name, StringComparison.Ordinal)) switch
        {
            { Plates: { } plates } =>
            [
                .. Bolts(frames, joint, plates, words, where, metal),
                Plates(parameters, joint, plates, where, metal),
            ],
            { Bracket: { } bracket } =>
            [
                new($"Brackets, {joint.Name}", null, where,
                    $"as many a joint as carry {words.Force(bracket.Uplift)} up and {words.Force(bracket.Shear)} along the face, with the "
                        + $"fasteners that their maker names: {bracket.Source}; {metal}",
                    "project file"),
            ],
            _ =>
            [
                new($"Fasteners, {joint.Name}", null, where,
                    $"by your engineer: {words.Force(force)} (guard-joint-{joint.Name}); {metal}",
                    "counted from the model"),
            ],
        };
    }

    private static bool IsOf(JointPlace place, Joint joint) =>
        string.Equals(JointSection.NameOf(place), joint.Name, StringComparison.Ordinal);

    // One row for bolts of one size; one more where the carrier's are of another.
    private static IEnumerable<HardwareItem> Bolts(
        FrameParameters frames, Joint joint, PlateJoint plates, QuantityText words, string where, string metal)
    {
        var wood = JointSticks.Of(frames, JointSection.PlaceOf(joint.Name)).Carrier.Thickness;
        var grip = wood + (Faces * plates.Thickness);
        foreach (var alike in ((BoltPattern[])[plates.Strut, plates.Carrier]).GroupBy(p => p.Bolt))
        {
            var (each, fit) = (alike.Sum(p => p.Total), BoltSizes.Fit(BoltSizes.Find(alike.Key)!, wood, plates.Thickness));
            var length = fit.Length;
            yield return new(
                $"Bolts {words.Size(alike.Key)} x {words.Size(length)}, {joint.Name}",
                each * joint.Count,
                where,
                string.Create(
                    CultureInfo.InvariantCulture, $"hex, each with {Washers(fit)} and a nut; {each} a joint; grip {words.Size(grip)}; ")
                    + Shank(fit, alike.Key, words)
                    + $"holes {words.Size(alike.First().Hole)}; square to both faces, no bevel washer; nuts stand out "
                    + $"{words.Size(plates.Thickness + length - grip)} beyond the wood, which landings must leave; {metal}",
                $"project file; {BoltSizes.Source}; {BoltSizes.ThreadSource}");
        }
    }

    private static string Washers(BoltFit fit) =>
        fit.Washers == 1 ? "a washer" : $"{NumberText.By("0", fit.Washers)} washers under the nut, past which its thread begins,";

    private static string Shank(BoltFit fit, double bolt, QuantityText words) => fit.Counts < bolt - Tolerances.RoundOff
        ? "thread lies in the nut's plate, and they count by its root; "
        : $"{words.Size(fit.Shank)} of smooth shank, which must reach through the nut's plate; ";

    // Strength and mass are reckoned for mild steel, whatever the metal.
    private static HardwareItem Plates(BridgeParameters parameters, Joint joint, PlateJoint plates, string where, string metal)
    {
        var words = new QuantityText(parameters.Units);
        var steel = parameters.FastenerMetal switch
        {
            FastenerMetal.Stainless => "stainless steel, of at least the strength of the mild steel that is reckoned with",
            FastenerMetal.HotDipGalvanized => "mild steel",
            _ => "mild steel, or stainless of at least its strength",
        };
        return new(
            $"Plates {words.Size(plates.Width)} x {words.Size(plates.Length)} x {words.Size(plates.Thickness)}, {joint.Name}",
            Faces * joint.Count,
            where,
            $"{steel}, {words.Mass(plates.PlateMass)} each, counted on the ropes beside frames.hardware; "
                + $"profiles/plate-{joint.Name}.dxf, on one face as drawn, on the other turned over; {metal}",
            "project file");
    }
}
