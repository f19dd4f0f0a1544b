using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Loads;

/// <summary>What people who handle the ropes must know. Common practice of rigging, no source.</summary>
public static class RopeCautions
{
    /// <summary>The cautions for a project's ropes, most dangerous first.</summary>
    public static ImmutableArray<string> Of(RopeParameters ropes)
    {
        var all = ImmutableArray.CreateBuilder<string>();
        all.AddRange(
            "A rope under load that parts or slips whips back: nobody stands in line with it or inside its bight.",
            "Nobody stands under a rope, frame or tool that is being hoisted.",
            "Whoever works over the drop is tied to something other than the bridge: fall protection until the guard stands.",
            "Anchors, and the posts or trees that hold the ropes, are designed by an engineer before any rope is drawn tight.",
            "Seize the rope on both sides of each cut before cutting it: an end that springs open hurts, and the lay is lost.",
            "Uncoil rope and strand by rolling the coil or turning the reel, never by pulling loops off: a kink is a broken rope.",
            "Cut both ropes from one reel, so that they stretch alike and the bridge hangs level.",
            "Wear gloves and eye protection: broken wires cut, and chips fly from cut rope.");
        if (Terminations.IsClips(ropes))
            all.AddRange(
                "Clips: the saddle on the live rope, the U-bolt on the turned-back end.",
                "Tighten clips again to their torque after the first full load, and then once a year.");
        all.Add("Look along every rope and at every end once a year: broken wires, rust, slip at clips, wood worn by the rope.");
        return all.ToImmutable();
    }
}
