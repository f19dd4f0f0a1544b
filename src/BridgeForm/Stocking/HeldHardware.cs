using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>Screws and brackets of joints of deck and guard that the file describes; the force beside those it leaves open.</summary>
internal static class HeldHardware
{
    /// <summary>The row of one joint; null where the file does not describe it.</summary>
    public static IReadOnlyList<HardwareItem>? Rows(BridgeParameters parameters, Joint joint)
    {
        var words = new QuantityText(parameters.Units);
        var where = string.Create(CultureInfo.InvariantCulture, $"{joint.Count} joints: {joint.What}");
        var metal = HardwareList.FastenerNote(parameters.FastenerMetal);
        return Find(parameters, joint) switch
        {
            { Screws: { } screws } =>
            [
                new(
                    $"Screws, {screws.Size.Words} {words.Size(screws.Length)}, {joint.Name}",
                    screws.Count * joint.Count,
                    where,
                    string.Create(CultureInfo.InvariantCulture, $"{screws.Count} a joint, across the part in its middle; drilled first, ")
                        + $"{words.Size(screws.Size.Diameter)} through the part and about {words.Size(PilotShare * screws.Size.Root)} into "
                        + $"what holds it; into side grain only; {metal}",
                    "project file; lead holes NDS 2018 12.1.4 and 12.1.5 (from memory)"),
            ],
            { Bracket: { } bracket } =>
            [
                new(
                    $"Brackets, {joint.Name}", null, where,
                    $"as many a joint as carry {words.Force(bracket.Uplift)} off and {words.Force(bracket.Shear)} along what carries it, "
                        + $"with the fasteners that their maker names, none in end grain: {bracket.Source}; {metal}",
                    "project file"),
            ],
            _ => null,
        };
    }

    /// <summary>What an engineer's fasteners must hold; empty where no check knows, or none is described.</summary>
    public static string Asks(BridgeParameters parameters, Joint joint, IReadOnlyDictionary<string, double> forces)
    {
        var name = joint.Name.EndsWith(AtEnd, StringComparison.Ordinal) ? joint.Name[..^AtEnd.Length] : joint.Name;
        return !(parameters.Frames.Joints.IsEmpty && parameters.HeldJoints.IsEmpty)
            && HeldSection.Names.Contains(name, StringComparer.Ordinal) && forces.TryGetValue(name, out var force) && force > 0
            ? $"by your engineer: {new QuantityText(parameters.Units).Force(force)} (joint-{name}); "
            : "";
    }

    private const string AtEnd = "-end";

    // Softwood: 70 % of the root for what pulls, a little more for lag screws in dense wood (NDS 12.1.4.2, 12.1.5.3, from memory).
    private const double PilotShare = 0.7;

    private static HeldJoint? Find(BridgeParameters parameters, Joint joint) =>
        parameters.HeldJoints.FirstOrDefault(j => string.Equals(j.Counted, joint.Name, StringComparison.Ordinal));
}
