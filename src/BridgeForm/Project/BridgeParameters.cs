using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Who walks on the bridge; sets guard height, opening and live load.</summary>
public enum BridgeUse
{
    /// <summary>One household and its guests.</summary>
    Private,

    /// <summary>Anybody.</summary>
    Public,
}

/// <summary>
/// A project file, read and checked: SI units throughout (metres, newtons, pascals, kilograms, radians, degrees Celsius
/// for temperatures), every default filled in.
/// </summary>
public sealed record BridgeParameters
{
    /// <summary>Name for titles.</summary>
    public required string Name { get; init; }

    /// <summary>Units of printed matter.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Private or public.</summary>
    public required BridgeUse Use { get; init; }

    /// <summary>Supports and ground.</summary>
    public required SiteParameters Site { get; init; }

    /// <summary>The two ropes.</summary>
    public required RopeParameters Ropes { get; init; }

    /// <summary>Frames.</summary>
    public required FrameParameters Frames { get; init; }

    /// <summary>Deck.</summary>
    public required DeckParameters Deck { get; init; }

    /// <summary>Rails and cap.</summary>
    public required GuardParameters Guard { get; init; }

    /// <summary>Loads.</summary>
    public required LoadParameters Loads { get; init; }

    /// <summary>Lumber by name, in the file's order.</summary>
    public required ImmutableArray<StockParameters> Stock { get; init; }

    /// <summary>Saw, router, tolerance, paper.</summary>
    public required ShopParameters Shop { get; init; }

    /// <summary>Path of the user's price list as written; null when there is none.</summary>
    public string? Prices { get; init; }

    /// <summary>The price list at <see cref="Prices"/>, read at the edge and put in; null without one.</summary>
    public PriceList? PriceList { get; init; }

    /// <summary>Field treatment of cuts; null when the file says nothing.</summary>
    public TreatmentParameters? Treatment { get; init; }

    /// <summary>Fasteners of one joint, by joint, as the user counts them.</summary>
    public ImmutableSortedDictionary<string, int> Fasteners { get; init; } = ImmutableSortedDictionary<string, int>.Empty;

    /// <summary>Order in which frames are hung.</summary>
    public ErectionOrder Erection { get; init; } = ErectionOrder.BothEnds;

    /// <summary>The user's own species, in the file's order; they go before the built-in ones.</summary>
    public ImmutableArray<Species> Species { get; init; } = [];

    /// <summary>The user's own design values; they go before the built-in ones.</summary>
    public ImmutableArray<DesignValue> Values { get; init; } = [];

    /// <summary>The stock of that name. Throws <see cref="KeyNotFoundException"/> when there is none; the reader has checked all names.</summary>
    public StockParameters StockNamed(string name) =>
        Stock.FirstOrDefault(s => string.Equals(s.Name, name, StringComparison.Ordinal))
        ?? throw new KeyNotFoundException(name);
}

/// <summary>Order in which frames are hung.</summary>
public enum ErectionOrder
{
    /// <summary>From both supports towards the middle.</summary>
    BothEnds,

    /// <summary>From support A on.</summary>
    OneEnd,
}
