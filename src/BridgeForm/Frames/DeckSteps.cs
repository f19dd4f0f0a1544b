using System.Collections.Immutable;

namespace BridgeForm.Frames;

/// <summary>
/// What of a deck comes by whole numbers and hangs on the shape: treads of a bay, and whether a packer lies on a base. The
/// weights jump with them, so the ropes' shape is found with these numbers and the parts are made with the same.
/// </summary>
/// <param name="Treads">Treads in each bay, bay 1 first; empty for a deck along the bridge.</param>
/// <param name="Packers">Whether a packer lies on the base of each frame, F00 first.</param>
public sealed record DeckSteps(ImmutableArray<int> Treads, ImmutableArray<bool> Packers)
{
    /// <summary>None chosen yet.</summary>
    public static DeckSteps None { get; } = new([], []);

    /// <summary>The numbers that go with a layout by itself: as many treads as keep their gap, packers where boards stand clear.</summary>
    public static DeckSteps Of(BridgeLayout layout) => new(
        layout.Parameters.Deck.Stringer is { } stringer
            ? [.. Enumerable.Range(1, layout.Bays).Select(bay => DeckTreads.Count(layout, bay, stringer))]
            : [],
        [.. Enumerable.Range(0, layout.Bays + 1).Select(frame => Frames.Packers.StandsClear(layout, frame))]);

    /// <summary>
    /// As the ropes count them: treads, then 0 for a packer and 1 for none. The smaller fits on both sides of a threshold: a
    /// tread fewer keeps its gap, and a packer fills what is just under the seating tolerance as well as what is just over it.
    /// </summary>
    public ImmutableArray<int> Counted => [.. Treads, .. Packers.Select(p => p ? 0 : 1)];

    /// <summary>Reads <see cref="Counted"/> back.</summary>
    /// <param name="counted">One number a bay where there are treads, then one a frame.</param>
    /// <param name="frames">Number of frames.</param>
    public static DeckSteps Read(ImmutableArray<int> counted, int frames)
    {
        var treads = counted.Length - frames;
        return new DeckSteps(counted[..treads], [.. counted.Skip(treads).Select(p => p == 0)]);
    }
}
