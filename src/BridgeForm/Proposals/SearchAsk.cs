using System.Collections.Immutable;

namespace BridgeForm.Proposals;

/// <summary>What a design should be, among those that pass.</summary>
public enum Preference
{
    /// <summary>Least weight on the ropes, ropes included.</summary>
    Light,

    /// <summary>Least slope of the empty deck where it is steepest.</summary>
    Flat,

    /// <summary>Least price of its boards; weight where no prices are known.</summary>
    Cheap,
}

/// <summary>What a search is asked for.</summary>
public sealed record SearchAsk
{
    /// <summary>Keys that may change; empty: those that a failing check names.</summary>
    public ImmutableArray<string> Free { get; init; } = [];

    /// <summary>What is best.</summary>
    public Preference Prefer { get; init; }

    /// <summary>Steepest chord of the empty deck, rise over run; null: as it comes.</summary>
    public double? MostSlope { get; init; }

    /// <summary>Least clear width between the guards, metres; null: as it comes.</summary>
    public double? LeastWidth { get; init; }

    /// <summary>About so many designs are looked at in one search; those under way are finished.</summary>
    public int MostDesigns { get; init; } = 400;

    /// <summary>Runs the looks at several designs side by side; null: one after another.</summary>
    public SideBySide? Run { get; init; }

    /// <summary>Told how many designs have been looked at, after each few; null: nobody asks.</summary>
    public Action<int>? Looked { get; init; }

    /// <summary>Told of each design that passes and is lighter than all before, ahead of <see cref="Looked"/>; null: nobody asks.</summary>
    public Action<Figures>? Better { get; init; }
}
