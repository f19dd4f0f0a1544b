using BridgeForm.Roles;

namespace BridgeForm.Project;

/// <summary>Which stock the parts of a role are cut from.</summary>
internal static class ChosenStock
{
    /// <summary>Its name; null where the project chooses none, as for stringers of a deck without them.</summary>
    public static string? FindStock(this BridgeParameters parameters, Role role) => RoleTable.Of(role).Wood switch
    {
        WoodKey.Base => parameters.Frames.Base.Stock,
        WoodKey.Post => parameters.Frames.Post.Stock,
        WoodKey.Brace => parameters.Frames.Brace.Stock,
        WoodKey.Board => parameters.Deck.BoardStock,
        WoodKey.Stringer => parameters.Deck.Stringer?.Stock,
        WoodKey.Rail => parameters.Guard.RailStock,
        WoodKey.Cap => parameters.Guard.CapStock,
        WoodKey.LikeBaseButTreated => LikeBaseButTreated(parameters),
        var key => throw new ArgumentOutOfRangeException(nameof(role), key, "No such key."),
    };

    /// <summary>Its name, of a part that the bridge has.</summary>
    public static string StockOf(this BridgeParameters parameters, Role role) =>
        parameters.FindStock(role) ?? throw new InvalidOperationException($"The project chooses no wood for a {RoleTable.Of(role).Name}.");

    /// <summary>The bases' if treated, else the first treated stock of the file, else the bases'.</summary>
    private static string LikeBaseButTreated(BridgeParameters parameters)
    {
        var named = parameters.StockNamed(parameters.Frames.Base.Stock);
        return named.Treated
            ? named.Name
            : (parameters.Stock.FirstOrDefault(s => s.Treated) ?? named).Name;
    }
}
