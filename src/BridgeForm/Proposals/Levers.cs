using System.Collections.Frozen;
using System.Collections.Immutable;
using BridgeForm.Project.Files;

namespace BridgeForm.Proposals;

/// <summary>All values that a search may move, by key.</summary>
internal sealed class Levers
{
    private readonly FrozenDictionary<string, Lever> _byKey;

    /// <summary>The levers of a file.</summary>
    /// <param name="reading">The file.</param>
    /// <param name="named">Keys that may move; empty: whatever a failing check names.</param>
    public Levers(ProjectReading reading, ImmutableArray<string> named)
    {
        Context = new LeverContext(
            reading.Values!, path => named.IsEmpty || named.Contains(path, StringComparer.Ordinal) || !reading.Values!.Given(path));
        All = [
            .. new RopeLevers(Context).List(), .. new FrameLevers(Context).List(), .. new TimberLevers(Context).List(),
            .. NewelLevers.List(),
        ];
        _byKey = All.ToFrozenDictionary(l => l.Key, StringComparer.Ordinal);
    }

    /// <summary>What goes along when a value moves.</summary>
    public LeverContext Context { get; }

    /// <summary>In the order in which they are tried.</summary>
    public ImmutableArray<Lever> All { get; }

    /// <summary>Keys that can move at all.</summary>
    public static ImmutableArray<string> Keys { get; } =
    [
        "ropes.spacing", "ropes.sag", "ropes.type", "frames.spacing", "frames.stance", "frames.base.section", "frames.base.flat",
        "frames.base.length", "frames.post.section", "frames.post.length", "frames.post.foot", "frames.post.lean", "frames.brace.section",
        "frames.brace.lean", "frames.brace.foot", "frames.channel.depth", "frames.channel.end_depth", "frames.keeper.spread",
        "deck.count", "deck.layout", "deck.side_gap", "deck.board.section", "deck.stringer.section", "deck.stringer.count",
        "guard.rails.section", "guard.rails.count", "guard.pickets.section", "guard.pickets.gap", "guard.net.opening",
        "guard.net.bottom", "guard.handrail.height",
        "guard.handrail.diameter", "guard.shims", "guard.newels.section", "guard.newels.gap", "guard.newels.height", "guard.newels.lean",
        "guard.cap.section",
    ];

    /// <summary>The designs that one step of a lever makes of another, nearest first.</summary>
    public IEnumerable<Design> Moves(Judged from, string key, Way way, double ratio) =>
        from.Parameters is { } p && _byKey.TryGetValue(key, out var lever)
            ? lever.Steps(p, way, ratio).Select(changes => from.Design.With(changes)).Where(d => !d.IsSame(from.Design))
            : [];
}
