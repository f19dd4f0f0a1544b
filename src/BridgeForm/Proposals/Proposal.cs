using System.Collections.Immutable;

namespace BridgeForm.Proposals;

/// <summary>One value that a proposal writes otherwise.</summary>
/// <param name="Path">Key in the project file.</param>
/// <param name="Before">What the file says, or its default; empty where it says nothing.</param>
/// <param name="After">What is proposed.</param>
/// <param name="Reason">What was found without it; for people.</param>
public sealed record ProposedChange(string Path, string Before, string After, string Reason);

/// <summary>A design whose every check was run, and none fails.</summary>
/// <param name="Name">What it is the best at, for people.</param>
/// <param name="Changes">What it writes otherwise, in the order of the project file.</param>
/// <param name="Figures">What people compare.</param>
/// <param name="Model">The whole bridge.</param>
public sealed record Proposal(string Name, ImmutableArray<ProposedChange> Changes, Figures Figures, BridgeModel Model)
{
    /// <summary>Lumber in its boards that the price list has no price for, such as <c>treated 2x6</c>.</summary>
    public IEnumerable<string> Unpriced => Model.StockPlan.Boards.Where(b => b.Price is null).Select(b => $"{b.Stock} {b.Section}")
        .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
}

/// <summary>What a search found.</summary>
/// <param name="Proposals">Ways that pass, each different; empty where none was found.</param>
/// <param name="Looked">Designs that were looked at.</param>
/// <param name="IsPassing">The file passes as it is.</param>
/// <param name="AsWritten">Figures of the file as it is; null where it cannot be built.</param>
/// <param name="Why">Why nothing passes, a sentence each; empty where something does.</param>
public sealed record SearchResult(
    ImmutableArray<Proposal> Proposals, int Looked, bool IsPassing, Figures? AsWritten, ImmutableArray<string> Why)
{
    /// <summary>Keys of the file whose sections are not on sale.</summary>
    public ImmutableArray<string> Unsold { get; init; } = [];

    /// <summary>The file as it is, whole, where ways stand beside it; null elsewhere and where it cannot be built.</summary>
    public BridgeModel? Written { get; init; }
}
