namespace BridgeForm.Output.ShopSheets;

/// <summary>Cells that are written in by hand, metres: room for initials and a date. Own figures.</summary>
internal static class WriteIn
{
    /// <summary>Least width.</summary>
    public const double Width = 0.018;

    /// <summary>Least height.</summary>
    public const double Height = 0.008;
}
