using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>What a builder knows before there is a design: values as people write them.</summary>
/// <param name="Span">Horizontal distance, support to support.</param>
public sealed record SiteWish(string Span)
{
    /// <summary>Name for titles.</summary>
    public string Name { get; init; } = "My footbridge";

    /// <summary>Units of the file.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Support B above support A; null: level.</summary>
    public string? Rise { get; init; }

    /// <summary>Who walks there.</summary>
    public BridgeUse Use { get; init; }

    /// <summary>Points of the ground line from support A, x and y; empty where it is not known.</summary>
    public ImmutableArray<(string X, string Y)> Ground { get; init; } = [];

    /// <summary>What the search is asked for besides, in words for the file's head: <c>a deck no steeper than 1:8</c>.</summary>
    public ImmutableArray<string> Wishes { get; init; } = [];

    /// <summary>Sections that the yard sells; empty for those that are common.</summary>
    public ImmutableArray<string> Lumber { get; init; } = [];

    /// <summary>Name of the builder's price list, from the folder of the file; null without one.</summary>
    public string? Prices { get; init; }
}
