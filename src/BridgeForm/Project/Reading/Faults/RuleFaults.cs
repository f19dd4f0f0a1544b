namespace BridgeForm.Project.Reading.Faults;

/// <summary>Faults of values that are each in range and do not go together.</summary>
internal static class RuleFaults
{
    public static FaultGroup Group { get; } = new(
        "Values that do not go together",
        [
            new(
                FaultCode.SagOutOfRange,
                "sag-out-of-range",
                "A sag that is too small or too large a share of this span.",
                "Write one in the range that the fault names."),
            new(
                FaultCode.RiseTooSteep,
                "rise-too-steep",
                "Support B is so much higher or lower than A that the bridge would be steeper than 1 in 3.",
                "Less `site.rise`, or more `site.span`."),
            new(
                FaultCode.EndSlopeTooSteep,
                "end-slope-too-steep",
                "Sag and rise together make one end of the deck steeper than 45 degrees.",
                "Less `ropes.sag`, or less `site.rise`."),
            new(
                FaultCode.TooManyFrames,
                "too-many-frames",
                "Frames so close on a span so long that there are more than can be worked out.",
                "More `frames.spacing`."),
            new(
                FaultCode.NoFrameBetween,
                "no-frame-between-ends",
                "Frames so far apart that none stands between the two end frames.",
                "Less `frames.spacing`."),
            new(
                FaultCode.FramesTouch,
                "frames-touch",
                "Frames closer together than a base is thick.",
                "More `frames.spacing`, or a thinner `frames.base.section`."),
            new(
                FaultCode.GroundOutOfOrder,
                "ground-out-of-order",
                "Points of the ground that go back towards A.",
                "List them from A towards B."),
            new(
                FaultCode.SurveyOutOfOrder,
                "survey-out-of-order",
                "Readings of a levelling line that go back towards A.",
                "List them from A towards B."),
            new(
                FaultCode.SurveyContradicts,
                "survey-contradicts",
                "Readings of tape and level that do not agree among themselves, or with span, rise or ground of the file.",
                "Measure again; or leave out what is written twice."),
            new(
                FaultCode.StretchReversed,
                "stretch-reversed",
                "The higher share of `ropes.stretch` stands first.",
                "Swap the two."),
            new(
                FaultCode.StretchNotKnown,
                "stretch-not-known",
                "Marks set short for the stretch of a kind of rope whose stretch is not known.",
                "`ropes.stretch` as the rope's maker says, or `ropes.new: drawn-in`."),
            new(
                FaultCode.ClipsHoldLess,
                "clips-hold-less",
                "An efficiency of wire rope clips above what clips hold of a rope's strength.",
                "At most 80 %, or another kind of termination."),
            new(
                FaultCode.RopeTooStrong,
                "rope-too-strong",
                "Breaking strength and metallic area of a rope of your own that no wire could bear.",
                "Look at both numbers and their units."),
            new(
                FaultCode.RopeTooFull,
                "rope-too-full",
                "A metallic area of a rope of your own that its diameter cannot hold.",
                "Look at both numbers and their units."),
            new(
                FaultCode.RopeTooHeavy,
                "rope-too-heavy",
                "A rope of your own that is heavier than a solid bar of steel as thick as it.",
                "Look at mass_per_length, diameter and their units."),
            new(
                FaultCode.RopeTooLight,
                "rope-too-light",
                "A rope of your own that is lighter than the steel of its metallic area.",
                "Look at mass_per_length, metallic_area and their units."),
            new(
                FaultCode.RopeTooStiff,
                "rope-too-stiff",
                "A modulus of a rope of your own above that of solid steel.",
                "Take the modulus of the rope, not of its steel, and look at its unit."),
            new(
                FaultCode.TemperaturesOneSided,
                "temperatures-one-sided",
                "Temperatures of the site that are all hotter or all colder than the reference temperature.",
                "Give at least one colder, where ropes pull hardest, and one hotter, where they hang lowest."),
            new(
                FaultCode.LimitLooser,
                "limit-looser",
                "A limit of your own that is looser than the program's for this use.",
                "Make it stricter, or leave it out."),
            new(
                FaultCode.ChannelCutsThrough,
                "channel-cuts-through",
                "A rope channel as deep as the base.",
                "Less depth, or a deeper `frames.base.section`."),
            new(
                FaultCode.ChannelTooNarrow,
                "channel-too-narrow",
                "A rope channel narrower than the rope with its liners.",
                "More `frames.channel.width`, or leave it out and give `clearance`."),
            new(
                FaultCode.ChannelsMeet,
                "channels-meet",
                "The two rope channels of a base run into each other.",
                "More `ropes.spacing`."),
            new(
                FaultCode.ChannelOverEnd,
                "channel-over-end",
                "A rope channel runs over the end of the base.",
                "Less `ropes.spacing`, or a longer `frames.base.length`."),
            new(
                FaultCode.KeeperTooWide,
                "keeper-wider-than-base",
                "A keeper hole as wide as the base.",
                "Less `frames.keeper.hole`, or a wider `frames.base.section`."),
            new(
                FaultCode.KeeperThrough,
                "keeper-goes-through",
                "A keeper hole as deep as the base; it is bored from below and must end in wood.",
                "Less `frames.keeper.depth`, or a deeper `frames.base.section`."),
            new(
                FaultCode.KeeperInChannel,
                "keeper-in-channel",
                "The two keeper holes of a rope reach into its channel.",
                "More `frames.keeper.spread`."),
            new(
                FaultCode.KeepersMeet,
                "keepers-meet",
                "Keeper holes of the two ropes run into each other.",
                "Less `frames.keeper.spread`, or more `ropes.spacing`."),
            new(
                FaultCode.KeeperOverEnd,
                "keeper-over-end",
                "The outer keeper holes run over the ends of the base.",
                "Less `frames.keeper.spread`, or a longer `frames.base.length`."),
            new(
                FaultCode.PostOverEnd,
                "post-over-end",
                "The post stands out over the end of the base.",
                "Less `frames.post.foot`, or a longer `frames.base.length`."),
            new(
                FaultCode.BraceNeverMeets,
                "brace-never-meets-post",
                "Post and brace are parallel.",
                "Lean the brace inward: 10 to 20 degrees are usual."),
            new(
                FaultCode.BraceOutOfPlace,
                "brace-out-of-place",
                "A brace that stands over the base's end, meets the post above its head, or stands so near that its inner edge "
                    + "is cut away.",
                "Write foot or length in the range that the fault names."),
            new(
                FaultCode.NoPlaceForBrace,
                "no-place-for-brace",
                "At this lean no foot and no length of a brace stands between post and base's end.",
                "Another `frames.brace.lean`, as the fault says."),
            new(
                FaultCode.StringerUnused,
                "stringer-unused",
                "Stringers for a deck whose boards run along and need none.",
                "Take them out, or write `layout: across`."),
            new(
                FaultCode.TooManyBoards,
                "too-many-boards",
                "More boards side by side than there is room for with their least gap.",
                "Fewer boards, or `count: auto`."),
            new(
                FaultCode.DeckTooNarrow,
                "deck-too-narrow",
                "Between the posts' feet, less the side gaps, not one board or not two stringers fit.",
                "Less `deck.side_gap`, more `frames.post.foot`, or a narrower section."),
            new(
                FaultCode.TooManyStringers,
                "too-many-stringers",
                "More stringers side by side than there is room for.",
                "Fewer stringers."),
            new(
                FaultCode.CleatsUnused,
                "cleats-unused",
                "Cleats of a deck whose grip is another.",
                "`grip: cleats`, or no `deck.cleats`."),
            new(
                FaultCode.CleatsTooClose,
                "cleats-too-close",
                "Cleats closer, middle to middle, than twice their width.",
                "More `deck.cleats.spacing`, or a narrower section."),
            new(
                FaultCode.TooManyRails,
                "too-many-rails",
                "More rails than fit between deck and post's head.",
                "Fewer or narrower rails, or a longer `frames.post.length`."),
            new(
                FaultCode.RailOutOfGuard,
                "rail-out-of-guard",
                "A rail whose edge is below the deck's surface or above the post's head.",
                "Another height, in the range that the fault names."),
            new(
                FaultCode.RailOnRail,
                "rail-on-rail",
                "A rail that lies on the one listed before it.",
                "List heights from the lowest up, at least a rail's width apart."),
            new(
                FaultCode.RailsAndPickets,
                "rails-and-pickets",
                "The guard is filled by rails, as many or as high as the file says, and by pickets as well.",
                "`guard.rails` without `count` and `heights` to keep the pickets, or no `guard.pickets` to keep the rails."),
            new(
                FaultCode.PicketsOverlap,
                "pickets-overlap",
                "Pickets stand closer, middle to middle, than they are wide.",
                "More `guard.pickets.spacing`, or a narrower section."),
            new(
                FaultCode.PicketsWithoutRoom,
                "pickets-without-room",
                "The two rails of the pickets, with a gap under and over them, do not fit between deck and post's head.",
                "Narrower rails, a smaller `guard.pickets.gap`, or a longer `frames.post.length`."),
            new(
                FaultCode.RailsAndNet,
                "rails-and-net",
                "The guard is filled by rails, as many or as high as the file says, and by a net as well.",
                "`guard.rails` without `count` and `heights` to keep the net, or no `guard.net` to keep the rails."),
            new(
                FaultCode.PicketsAndNet,
                "pickets-and-net",
                "The guard is filled by pickets and by a net.",
                "No `guard.pickets` to keep the net, or no `guard.net` to keep the pickets."),
            new(
                FaultCode.NetWithoutRoom,
                "net-without-room",
                "The rail that carries the net's lower edge does not fit between deck and post's head.",
                "Less `guard.net.bottom`, a narrower rail, or a longer `frames.post.length`."),
            new(
                FaultCode.HandrailAboveCap,
                "handrail-above-cap",
                "A handrail higher than the posts' heads, on which the cap lies.",
                "A lower `guard.handrail.height`, as the fault names it, or a longer `frames.post.length`."),
            new(
                FaultCode.NewelOffLanding,
                "newel-off-landing",
                "A newel that stands over the end frame's base, over the landing's gap or beyond the landing's far end.",
                "More `guard.newels.gap`, or a deeper landing, as the fault names it."),
            new(
                FaultCode.BearerWithoutLanding,
                "bearer-without-landing",
                "A sill or ledger of a landing whose depth is not given.",
                "`depth` beside it, or no `bearer`."),
            new(
                FaultCode.HoleTooWide,
                "hole-too-wide",
                "A hole that leaves no wood beside it.",
                "A smaller hole, or a larger section."),
            new(
                FaultCode.HoleOutsidePart,
                "hole-outside-part",
                "A hole nearer to the end than its own half, or beyond the other end.",
                "Another distance, in the range that the fault names."),
            new(
                FaultCode.HoleOffFace,
                "hole-off-face",
                "A hole that runs out of the side of the face it is drilled into.",
                "Nearer to the middle, or smaller."),
            new(
                FaultCode.HoleThrough,
                "hole-goes-through",
                "A blind hole as deep as the part.",
                "Less depth, or leave `depth` out for a hole right through."),
            new(
                FaultCode.JointCapacity,
                "joint-capacity",
                "A bracket without its maker's figures, or such figures beside plates.",
                "`capacity` with `kind: bracket`, neither for plates."),
            new(
                FaultCode.JointBolt,
                "joint-bolt-size",
                "A bolt of a diameter that is not on sale.",
                "The nearest that the fault names."),
            new(
                FaultCode.JointThickness,
                "joint-thickness",
                "Plates on members that are not equally thick: they would not lie on one of them.",
                "Sections of one thickness along the bridge, or `kind: bracket`."),
            new(
                FaultCode.JointDistance,
                "joint-distance",
                "A bolt nearer to an end, an edge or another bolt than any table lets it count.",
                "The nearest size that the fault names; a thinner bolt needs less of all."),
            new(
                FaultCode.JointClash,
                "joint-clash",
                "A plate or bolt where a board, rail, cap, rope, keeper or another plate is, or past the end of its member.",
                "Shift or shorten it as the fault says."),
            new(
                FaultCode.JointTwice,
                "joint-counted-twice",
                "Fasteners counted under `fasteners` for joints that `joints` describes.",
                "Keep `joints`, and leave the count out."),
            new(
                FaultCode.ScrewRoom,
                "screw-room",
                "Screws that would go into end grain, too short to count, so long that they come out, or more than have room side by side.",
                "A bracket, or the length or number that the fault names."),
            new(FaultCode.DensityReversed, "density-reversed", "The high density is less than the low one.", "Swap the two."),
            new(
                FaultCode.DensityOutside,
                "density-outside",
                "The density in service is not between the low and the high one.",
                "One between the two."),
            new(
                FaultCode.EdgeBeyondMiddle,
                "edge-beyond-middle",
                "A point load at the edge that stands beyond the middle of the deck.",
                "Less `loads.point.edge`."),
            new(
                FaultCode.CaseIdTaken,
                "case-id-taken",
                "A load case of your own with the id of another.",
                "Another id, such as the one that the fault offers."),
            new(
                FaultCode.LoadBeyondBridge,
                "load-beyond-bridge",
                "A load case of your own that lies beyond support B.",
                "A place within the span."),
            new(FaultCode.LoadReversed, "load-reversed", "A load that ends before it begins.", "Swap `from` and `to`."),
            new(
                FaultCode.RateWithoutUnit,
                "rate-without-unit",
                "A rate of a quote without an amount, its money or a unit of its kind.",
                "All three, such as `4.20 USD/ft`."),
            new(
                FaultCode.RatesInTwoMoneys,
                "rates-in-two-moneys",
                "Rates of a quote in two kinds of money.",
                "All rates in one."),
            new(
                FaultCode.DateNotRead,
                "date-not-read",
                "A date of the drawings that is none.",
                "Year, month and day, such as `2031-05-20`."),
            new(
                FaultCode.SheetTextTooLong,
                "sheet-text-too-long",
                "A text that its box in the title block of the drawings has no room for.",
                "Fewer letters, as many as the fault names at most."),
            new(
                FaultCode.PrintBed,
                "print-bed",
                "A bed of a printer that is no width and depth.",
                "Two lengths with an x between, such as `220 x 220 mm`."),
            new(
                FaultCode.PrintTooLarge,
                "print-too-large",
                "A scale at which a frame or a bay of the model does not lie on the printer's bed.",
                "A smaller scale, as the fault names it, or a larger bed."),
            new(
                FaultCode.PrintTooThick,
                "print-too-thick",
                "Parts of the model that would be printed more than twice as thick as they are at its scale.",
                "A smaller `shop.print.thinnest`, or a larger scale."),
            new(
                FaultCode.AsBuiltOtherBridge,
                "as-built-other-bridge",
                "A measured span or rise that is further from the file's than turnbuckles move a rope.",
                "Measure again; or write `site.span` and `site.rise` as they are, and make everything anew."),
            new(
                FaultCode.AsBuiltOtherRope,
                "as-built-other-rope",
                "A measured sag that asks for a rope much longer or shorter than this bridge's.",
                "Measure again: at half the span, straight down from the line between the rope's points at both supports."),
        ]);
}
