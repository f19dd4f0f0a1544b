using System.Collections.Frozen;
using System.Collections.Immutable;

namespace BridgeForm.Proposals;

/// <summary>Which value helps a check, and which way.</summary>
internal readonly record struct Cure(string Key, Way Way);

/// <summary>What may help each check that can fail, what helps most first; a sentence for those that no design cures.</summary>
internal static class Cures
{
    private const string ByTheFile = "it hangs on what the file says of the site, the loads or the materials, not on the design: ";

    private static readonly Cure s_wider = More("ropes.spacing");
    private static readonly Cure s_flatter = Less("ropes.sag");
    private static readonly Cure s_closer = More("frames.spacing");
    private static readonly Cure s_base = More("frames.base.section");

    private static readonly ImmutableArray<Cure> s_upright = [s_wider, More("ropes.type"), s_flatter, More("ropes.sag")];
    private static readonly ImmutableArray<Cure> s_rope =
    [
        More("ropes.type"), More("ropes.sag"), Less("guard.rails.section"), Less("frames.post.section"), Less("guard.cap.section"),
        Less("frames.spacing"), Less("frames.post.foot"),
    ];

    private static readonly ImmutableArray<Cure> s_board = [s_closer, More("deck.board.section"), More("deck.layout")];
    private static readonly ImmutableArray<Cure> s_tread = [More("deck.stringer.count"), More("deck.board.section")];
    private static readonly ImmutableArray<Cure> s_stringer =
        [More("deck.stringer.section"), More("deck.stringer.count"), s_closer];
    private static readonly ImmutableArray<Cure> s_beam = [s_base, s_closer, Less("ropes.spacing")];
    private static readonly ImmutableArray<Cure> s_notch = [s_wider, Less("frames.brace.foot"), s_base, Less("frames.channel.depth")];
    private static readonly ImmutableArray<Cure> s_channel =
        [s_wider, Less("frames.brace.foot"), s_base, s_closer, Less("ropes.spacing")];
    private static readonly ImmutableArray<Cure> s_endBase =
        [s_base, More("frames.brace.foot"), Less("frames.channel.end_depth"), Less("frames.post.length")];
    private static readonly ImmutableArray<Cure> s_post =
        [More("frames.post.section"), Less("frames.post.length"), More("frames.brace.foot")];
    private static readonly ImmutableArray<Cure> s_brace =
        [More("frames.brace.section"), Less("frames.post.length"), More("frames.brace.foot"), Less("frames.brace.foot")];
    // Bolts, plates and brackets themselves are the builder's to choose; these leave less to hold.
    private static readonly ImmutableArray<Cure> s_joint = [More("frames.brace.foot"), Less("frames.post.length"), s_base];
    // Frames that lean with the rope spread their decks at the ends.
    private static readonly ImmutableArray<Cure> s_level = [s_flatter, More("frames.stance")];

    private static readonly FrozenDictionary<string, ImmutableArray<Cure>> s_cures = new Dictionary<string, ImmutableArray<Cure>>(
        StringComparer.Ordinal)
    {
        [Shortfall.SlopeWish] = s_level,
        [Shortfall.WidthWish] = [More("frames.post.foot")],
        ["guard-height"] = [More("frames.post.length")],
        ["guard-openings"] =
        [
            Less("guard.pickets.gap"), Less("guard.net.opening"), Less("guard.net.bottom"), More("guard.rails.count"),
            More("guard.rails.section"), Less("frames.post.length"),
        ],
        ["guard-at-landing"] = [Less("guard.newels.gap"), More("guard.newels.lean"), Less("guard.newels.lean")],
        ["newel-height"] = [More("guard.newels.height"), More("frames.post.length")],
        ["clear-width"] = [More("frames.post.foot"), Less("guard.rails.count")],
        ["board-bending-area"] = s_board,
        ["board-bending-patch"] = s_board,
        ["board-bending-point"] = s_board,
        ["board-shear"] = s_board,
        ["board-deflection-area"] = s_board,
        ["board-bearing"] = s_board,
        [Avoided.Push] = s_upright,
        ["guard-post-along"] = [More("frames.post.section"), Less("frames.post.length")],
        // No larger rope: it only looks, and a rope costs more than the wood it spares.
        ["rope-bearing"] = [s_base, s_closer],
        ["rope-on-sale"] = [More("ropes.type"), Less("ropes.type")],
        ["deck-gaps"] =
        [
            More("deck.count"), More("deck.side_gap"), Less("deck.board.section"), More("deck.board.section"), More("frames.post.foot"),
        ],
        ["board-bearing-length"] = [s_base, More("frames.base.flat")],
        ["tread-bending-area"] = s_tread,
        ["tread-bending-patch"] = s_tread,
        ["tread-bending-point"] = s_tread,
        ["tread-shear"] = s_tread,
        ["tread-deflection-area"] = s_tread,
        ["tread-bearing"] = s_tread,
        ["tread-bearing-length"] = [More("deck.stringer.section"), More("deck.layout")],
        ["stringer-bending-area"] = s_stringer,
        ["stringer-bending-patch"] = s_stringer,
        ["stringer-bending-point"] = s_stringer,
        ["stringer-shear"] = s_stringer,
        ["stringer-deflection-area"] = s_stringer,
        ["stringer-bearing"] = s_stringer,
        ["stringer-bearing-length"] = [s_base, More("frames.base.flat")],
        ["keeper-strap-reach"] = [Less("frames.channel.depth"), Less("frames.channel.end_depth"), More("ropes.type")],
        ["handrail-height"] =
        [
            More("guard.rails.count"), Less("guard.rails.count"), More("frames.post.length"), Less("frames.post.length"),
            More("guard.handrail.height"), Less("guard.handrail.height"),
        ],
        ["section-on-sale"] = [],
        ["base-bending"] = s_beam,
        ["base-channel-bending"] = s_beam,
        ["base-shear"] = [s_base, More("frames.brace.foot"), s_closer, Less("ropes.spacing")],
        ["base-channel-shear"] = s_channel,
        ["end-base-bending"] = s_endBase,
        ["end-base-shear"] = s_endBase,
        ["base-channel-notch"] = s_notch,
        ["base-end-distance"] = [More("frames.base.length"), Less("ropes.spacing")],
        ["guard-post"] = s_post,
        ["guard-post-shear"] = s_post,
        ["guard-brace"] = s_brace,
        ["guard-joint-post-foot"] = s_joint,
        ["guard-joint-brace-foot"] = s_joint,
        ["guard-joint-brace-head"] = s_joint,
        ["guard-bearing-post-foot"] = s_post,
        ["guard-bearing-brace-foot"] = s_brace,
        ["guard-bearing-brace-head"] = s_brace,
        ["cap-bending-level"] = [More("guard.cap.section"), s_closer],
        ["cap-bending-down"] = [More("guard.cap.section"), s_closer],
        ["picket-bending"] = [More("guard.pickets.section"), Less("frames.post.length")],
        ["handrail-bending"] = [More("guard.handrail.diameter"), s_closer],
        ["newel-bending"] = [More("guard.newels.section"), Less("guard.newels.height")],
        ["rail-bending"] = [More("guard.rails.section"), s_closer],
        ["channel-shallow-mouth"] = [More("frames.channel.depth"), s_flatter, s_closer, Less("frames.stance")],
        ["channel-deep-mouth"] = [Less("frames.channel.depth"), s_base, s_flatter, s_closer, Less("frames.stance")],
        ["channel-shallow-mouth-end"] = [More("frames.channel.end_depth"), s_flatter, s_closer, Less("frames.stance")],
        ["channel-deep-mouth-end"] = [Less("frames.channel.end_depth"), s_base, s_flatter, s_closer, Less("frames.stance")],
        ["keeper-hole-distance"] = [More("frames.keeper.spread"), More("frames.base.length"), s_base],
        ["parts-overlap"] = [More("frames.stance"), Less("frames.post.section"), s_flatter, Less("frames.stance")],
        // Channels deeper at the ends than between bend the cap at the first frame, the more the closer that stands.
        ["parts-bear"] =
        [
            More("guard.shims"), More("frames.channel.depth"), s_closer, s_flatter, More("frames.stance"), s_base, Less("frames.spacing"),
            Less("frames.post.section"),
        ],
        ["rope-in-channels"] = [s_flatter, s_closer, Less("frames.channel.depth"), More("frames.stance")],
        ["cases-solved"] = s_upright,
        ["roll"] = s_upright,
        ["load-tips"] = s_upright,
        ["keeper-uplift-load"] = s_upright,
        ["cross-slope"] = s_upright,
        ["guard-line-load"] = s_upright,
        ["rope-setting"] = s_upright,
        ["rope-strength"] = s_rope,
        ["rope-strength-new"] = s_rope,
        ["saddle-bend"] = s_rope,
        ["deck-slope-loaded"] = s_level,
        ["ground-clearance"] = s_level,
        ["water-clearance"] = s_level,
        ["stock-length"] = [Less("frames.base.length"), Less("ropes.spacing"), s_closer],
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> s_sentences = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["safety-factor"] = ByTheFile + "write a larger ropes.safety_factor",
        ["live-load"] = ByTheFile + "write the loads.live that its source asks, or loads.low_live_reason",
        ["point-load"] = ByTheFile + "write the loads.point.force that its source asks",
        ["rope-take-up"] = ByTheFile + "write a longer ropes.ends.turnbuckle.take_up and buy it, or ropes.new: stretched-before or as-is",
        ["rope-end-room"] = ByTheFile + "set the anchor further back: write a longer site.a.backstay.length and site.b.backstay.length",
        ["joint-rail"] = ByTheFile + "more or longer screws, or thicker ones: joints.rail",
        ["joint-cap"] = ByTheFile + "brackets that hold more: joints.cap.capacity with its source",
        ["joint-board"] = ByTheFile + "more or longer screws, or thicker ones: joints.board",
        ["joint-stringer"] = ByTheFile + "brackets that hold more: joints.stringer.capacity with its source",
        ["landing-step"] = "build the landing to the deck's end: write site.a.landing.level and site.b.landing.level as the check says",
        ["landing-gap"] = "build the landing to the deck's end: write a smaller site.a.landing.gap or site.b.landing.gap",
        ["wood-values"] = ByTheFile + "values beyond any wood's were written; check their source",
        ["net-load"] = ByTheFile + "buy a stronger net, laced closer, and write its guard.net.capacity with its source",
        ["hole-size"] = "the holes are the file's own (holes): smaller ones, or fewer",
        ["hole-distance"] = "the holes are the file's own (holes): move them as the check says",
        ["rope-termination"] = ByTheFile + "write ropes.termination.efficiency with its source",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>What may help, what helps most first; empty where no value of the design does.</summary>
    public static ImmutableArray<Cure> Of(string check) => s_cures.GetValueOrDefault(check, []);

    /// <summary>Why no value of the design helps and what does; null where some may.</summary>
    public static string? Sentence(string check) => s_sentences.GetValueOrDefault(check);

    private static Cure More(string key) => new(key, Way.More);

    private static Cure Less(string key) => new(key, Way.Less);
}
