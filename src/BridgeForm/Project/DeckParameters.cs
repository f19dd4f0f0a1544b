using BridgeForm.Materials;

namespace BridgeForm.Project;

/// <summary>Deck.</summary>
public sealed record DeckParameters
{
    /// <summary>Boards run along the bridge, or lie across it.</summary>
    public required DeckLayout Layout { get; init; }

    /// <summary>Section of boards or treads.</summary>
    public required Section Board { get; init; }

    /// <summary>Stock of boards or treads.</summary>
    public required string BoardStock { get; init; }

    /// <summary>Number of boards side by side (along) or treads in a bay (across); null for as many as fit.</summary>
    public required int? Count { get; init; }

    /// <summary>Least gap between neighbours, metres.</summary>
    public required double Gap { get; init; }

    /// <summary>Gap from the outermost boards, stringers or tread ends to the posts' feet, metres.</summary>
    public required double SideGap { get; init; }

    /// <summary>Gap between boards that meet end to end at a frame, metres.</summary>
    public required double ButtGap { get; init; }

    /// <summary>Stringers of a deck across; null for a deck along.</summary>
    public required StringerParameters? Stringer { get; init; }

    /// <summary>Thickness from the base's top to the walking surface, metres.</summary>
    public double Thickness => Board.Thickness + (Stringer?.Section.Width ?? 0);
}

/// <summary>Direction of the deck's boards.</summary>
public enum DeckLayout
{
    /// <summary>From base to base.</summary>
    Along,

    /// <summary>Treads on stringers.</summary>
    Across,
}

/// <summary>Stringers, standing on their narrow sides.</summary>
public sealed record StringerParameters(Section Section, int Count, string Stock);
