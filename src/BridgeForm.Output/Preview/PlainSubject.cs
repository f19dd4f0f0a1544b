using System.Collections.Frozen;
using BridgeForm.Checks;

namespace BridgeForm.Output.Preview;

/// <summary>
/// What each check is about, for somebody who has never reckoned a beam: what could break, slip, tip or be missed. The check's
/// own title, formula and source stand behind it.
/// </summary>
internal static class PlainSubject
{
    private const string Area = "full of people";
    private const string Heel = "with somebody heavy on one foot";

    /// <summary>The same of boards, treads and stringers: what follows the word, by the rest of the check's id.</summary>
    private static readonly FrozenDictionary<string, string> s_deck = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["bending-area"] = $"strong enough {Area}",
        ["bending-patch"] = "strong enough under one heavy person",
        ["bending-point"] = $"strong enough {Heel}",
        ["shear"] = "strong enough close to where it lies on",
        ["deflection-area"] = $"stiff enough {Area}",
        ["deflection-point"] = $"stiff enough {Heel}",
        ["bearing-length"] = "ends that lie on far enough",
        ["bearing"] = "ends that are not crushed where they lie on",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> s_words = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["safety-factor"] = "How much stronger the ropes are than what hangs on them",
        ["live-load"] = "How many people the bridge is reckoned for",
        ["point-load"] = "How heavy one person may be",
        ["mild-inputs"] = "Loads in the file that are lighter than usual",
        ["guard-height"] = "How high the guard is",
        ["guard-openings"] = "Gaps in the guard that a small child could slip through",
        ["guard-at-landing"] = "The gap between the bridge's guard and what stands beside it on the bank",
        ["newel-height"] = "How high the posts beside the way onto the bridge are",
        ["newel-bending"] = "The posts beside the way onto the bridge: strong enough for somebody who falls against them",
        ["newel-foot"] = "The posts beside the way onto the bridge: held by the bank",
        ["landing-bearer"] = "What the landing rests on: safe from rot and rust",
        ["net-load"] = "The net: strong enough for somebody who falls against it",
        ["handrail-height"] = "How high the handrail is",
        ["handrail-size"] = "A handrail that a hand can close around",
        ["handrail-clearance"] = "Room for the fingers behind the handrail",
        ["clear-width"] = "How wide the way across is",
        ["deck-slope"] = "How steep the deck is with nobody on it",
        ["deck-slope-loaded"] = "How steep the deck gets with people on it",
        ["deck-grip"] = "Whether shoes hold on the deck",
        ["deck-gaps"] = "Gaps in the deck that a heel or a cane could go into",
        ["cross-slope"] = "How far the deck tilts to one side when people stand on that side",
        ["landing-step"] = "The step between the bank and the deck",
        ["landing-gap"] = "The gap between the bank and the deck",
        ["wood-outdoors"] = "Wood that does not rot outdoors",
        ["wood-values"] = "Strengths of wood that you wrote yourself",
        ["copper-on-zinc"] = "Treated wood that would eat the rope's zinc",
        ["fasteners-in-treated-wood"] = "Screws and bolts that last in treated wood",
        ["base-bending"] = "The bases, the beams across under the deck: strong enough between ropes and posts",
        ["base-channel-bending"] = "The bases: strong enough where the ropes run through them",
        ["base-shear"] = "The bases: safe from splitting along their length",
        ["base-channel-shear"] = "The bases: safe from splitting where the ropes run through them",
        ["end-base-bending"] = "The first and the last base: strong enough when somebody leans on the guard",
        ["end-base-shear"] = "The first and the last base: safe from splitting when somebody leans on the guard",
        ["base-channel-notch"] = "The grooves for the ropes: not so deep that the bases split",
        ["hole-size"] = "Holes in the wood: small enough",
        ["hole-distance"] = "Your own holes: far enough from ends and edges",
        ["rope-bearing"] = "The bases where they press on the rope",
        ["base-end-distance"] = "Wood left at the ends of the bases, beyond the ropes",
        ["guard-post"] = "The guard's posts: strong enough when somebody falls against them",
        ["guard-post-shear"] = "The guard's posts: strong enough at their feet",
        ["guard-post-along"] = "The guard's posts: strong enough when pushed along the bridge",
        ["guard-brace"] = "The braces that hold the posts upright",
        ["guard-joint-post-foot"] = "What fastens the posts to the bases",
        ["guard-joint-brace-foot"] = "What fastens the braces to the bases",
        ["guard-joint-brace-head"] = "What fastens the braces to the posts",
        ["joint-rail"] = "What fastens the rails to the posts",
        ["joint-cap"] = "What fastens the cap to the posts",
        ["joint-board"] = "What fastens the deck boards to the bases",
        ["joint-stringer"] = "What fastens the bearers under the deck to the bases",
        ["guard-bearing-post-foot"] = "The wood under the posts: not crushed",
        ["guard-bearing-brace-foot"] = "The wood under the braces: not crushed",
        ["guard-bearing-brace-head"] = "The wood where the braces press on the posts: not crushed",
        ["cap-bending-level"] = "The cap on the posts: strong enough when pushed to the side",
        ["cap-bending-down"] = "The cap on the posts: strong enough when somebody sits on it",
        ["rail-bending"] = "The rails: strong enough when somebody leans against them",
        ["picket-bending"] = "The pickets: strong enough when somebody leans against them",
        ["handrail-bending"] = "The handrail: strong enough to pull and to lean on",
        ["keeper-uplift-guard"] = "Straps that hold the bases on the ropes when somebody pushes the guard",
        ["keeper-uplift-wind"] = "Straps that hold the bases on the ropes when wind blows under the deck",
        ["keeper-uplift-load"] = "Straps that hold the bases on the ropes when people crowd to one side",
        ["keeper-slip"] = "Straps that keep the bases from sliding along the ropes",
        ["end-frame-down"] = "What holds the first and the last frame down on the bank",
        ["end-frame-along"] = "What keeps the first and the last frame from sliding along",
        ["channel-shallow-mouth"] = "The grooves for the ropes: deep enough on their shallow side",
        ["channel-deep-mouth"] = "The grooves for the ropes: not too deep on their deep side",
        ["channel-shallow-mouth-end"] = "The grooves in the first and the last base: deep enough on their shallow side",
        ["channel-deep-mouth-end"] = "The grooves in the first and the last base: not too deep on their deep side",
        ["channel-clearance"] = "Play of the rope in its groove",
        ["keeper-strap-reach"] = "A flat strap that reaches the rope in its groove",
        ["keeper-hole-distance"] = "Wood between the straps' screws and the groove",
        ["parts-overlap"] = "Parts that would be in each other's way",
        ["parts-bear"] = "Parts that rest on what carries them",
        ["rope-in-channels"] = "Ropes that touch wood nowhere but in their grooves",
        ["cases-solved"] = "Every load that was tried could be reckoned",
        ["roll"] = "Whether the bridge rolls over to one side",
        ["rope-strength"] = "The ropes: strong enough for the heaviest load",
        ["rope-strength-new"] = "The ropes when they are new and have not stretched yet: strong enough",
        ["rope-termination"] = "How the ropes' ends are made fast",
        ["saddle-bend"] = "The ropes where they bend over their supports",
        ["turnbuckle-size"] = "Turnbuckles: strong enough",
        ["shackle-size"] = "Shackles: strong enough",
        ["rope-take-up"] = "Turnbuckles that can tighten the ropes when they have stretched",
        ["end-bay-room"] = "Room at both ends when the ropes are tightened",
        ["rope-end-room"] = "Room for the ropes' ends behind the supports",
        ["anchor-a"] = "What holds the ropes at end A",
        ["anchor-b"] = "What holds the ropes at end B",
        ["support-move"] = "How far the middle sinks when a support gives way a little",
        ["load-tips"] = "Whether a crowd on one side tips a frame",
        ["wind-side"] = "Wind from the side: how hard it pushes the supports",
        ["wind-keeper"] = "Wind from the side: whether it lifts the bases off the ropes",
        ["wind-end-frame"] = "Wind from the side: whether it lifts the ends off the banks",
        ["wind-swing"] = "Wind from the side: how far the bridge swings, and whether it turns over",
        ["guard-line-load"] = "A crowd that leans on one guard",
        ["loss-of-one-rope"] = "What would hold if one rope broke",
        ["rope-setting"] = "Two ropes that do not hang quite alike",
        ["joint-room"] = "Room for caps, rails and deck to move against each other",
        ["survey-agreement"] = "Whether what was measured on site agrees with itself",
        ["ground-clearance"] = "Room between the bridge and the ground",
        ["water-clearance"] = "Room between the bridge and the highest water",
        ["bounce-vertical"] = "How much the bridge bounces under somebody who walks",
        ["sway-lateral"] = "How much the bridge sways under somebody who walks",
        ["stock-length"] = "Pieces that can be cut from the lengths on sale",
        ["section-on-sale"] = "Sizes of lumber that are on sale",
        ["rope-on-sale"] = "A rope that is on sale",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>In plain words; null for a check that has none.</summary>
    public static string? Find(string id)
    {
        foreach (var part in (ReadOnlySpan<string>)["board", "tread", "stringer"])
        {
            if (id.StartsWith(part + "-", StringComparison.Ordinal))
            {
                var noun = part is "board" ? "deck boards" : part + "s";
                return s_deck.GetValueOrDefault(id[(part.Length + 1)..]) is { } words ? $"The {noun}: {words}" : null;
            }
        }

        return s_words.GetValueOrDefault(id);
    }

    /// <summary>In plain words, or as the check calls itself.</summary>
    public static string Of(CheckResult check) => Find(check.Id) ?? check.Title;
}
