namespace BridgeForm.Output.Pdf;

/// <summary>Placeholder.</summary>
internal static class StableBytes
{
    public static void Settle(Span<byte> file)
    {
    }
}
