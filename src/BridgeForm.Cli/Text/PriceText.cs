namespace BridgeForm.Cli.Text;

/// <summary>Words about price lists.</summary>
internal static class PriceText
{
    /// <summary>What has no price, and what that means for a search for the cheapest.</summary>
    public static string Missing(IEnumerable<string> unpriced) =>
        $"The price list has no price for {string.Join(", ", unpriced)}: what needs them has no price, and was compared by weight.";
}
