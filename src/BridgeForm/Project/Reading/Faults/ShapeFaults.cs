namespace BridgeForm.Project.Reading.Faults;

/// <summary>Faults that only the shape of the ropes and the parts on it bring to light.</summary>
internal static class ShapeFaults
{
    public static FaultGroup Group { get; } = new(
        "What comes out on the shape",
        [
            new(
                FaultCode.NoShape,
                "no-shape",
                "No shape of the ropes meets what was asked for. `bridgeform` ends with 4.",
                "Another sag, rise or spacing, as the fault says."),
            new(
                FaultCode.DeckTurnsOver,
                "deck-turns-over",
                "Two frames lean so much towards each other that the deck between them turns over.",
                "More `frames.spacing`, or less sag or rise."),
            new(
                FaultCode.PostsCross,
                "posts-cross",
                "The posts of two neighboring frames lean towards each other and meet: rail or cap between them has no length.",
                "A shorter `frames.post.length`, more `frames.spacing`, or less sag or rise."),
            new(
                FaultCode.PostHeadRunsOut,
                "post-head-runs-out",
                "The slanting cut of a post's head reaches down to its foot.",
                "A longer `frames.post.length`, or less sag or rise."),
            new(
                FaultCode.LandingAboveGuard,
                "landing-above-guard",
                "A landing so high that newels as high as the guard have no length on it.",
                "A lower `level` of the landing, or `guard.newels.height`."),
            new(
                FaultCode.DeckWithoutLength,
                "deck-without-length",
                "Boards or stringers between two frames have no length left.",
                "More `frames.spacing`, or less `deck.butt_gap`."),
            new(
                FaultCode.RailsOverlap,
                "rails-overlap",
                "At some frame or in some bay the rails lie on each other: tapered shims lift the deck there, or the bay rises.",
                "Fewer or narrower rails, or a longer `frames.post.length`."),
            new(
                FaultCode.RailBelowDeck,
                "rail-below-deck",
                "At some frame the deck is lifted above the edge of the lowest rail.",
                "Put the lowest rail higher."),
            new(
                FaultCode.NoTreadFits,
                "no-tread-fits",
                "A bay is too short for one tread with its gap.",
                "More `frames.spacing`, or a narrower `deck.board.section`."),
            new(
                FaultCode.TreadsTooClose,
                "treads-too-close",
                "The treads asked for stand closer than their least gap in the shortest bay.",
                "Less `deck.count`, or `count: auto`."),
            new(
                FaultCode.PieceNotCut,
                "piece-not-cut",
                "A part whose cuts leave no sound piece of wood.",
                "Less slope, or a larger section; the fault names the part."),
        ]);
}
