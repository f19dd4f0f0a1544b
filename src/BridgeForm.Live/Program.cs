namespace BridgeForm.Live;

/// <summary>Nothing runs by itself: the worker calls <see cref="Engine"/>.</summary>
internal static class Program
{
    private static void Main()
    {
    }
}
