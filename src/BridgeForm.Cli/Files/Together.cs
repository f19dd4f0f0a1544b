using System.Runtime.ExceptionServices;

namespace BridgeForm.Cli.Files;

/// <summary>Works side by side, on as many threads as there are.</summary>
internal static class Together
{
    /// <summary>
    /// Runs all to their ends. Of several troubles a defect is thrown before trouble with files, then the first in the order of
    /// the works, so that the same run fails in the same way every time.
    /// </summary>
    public static void Run(params Action[] works)
    {
        var troubles = new Exception?[works.Length];
        Parallel.For(0, works.Length, i =>
        {
            try
            {
                works[i]();
            }
            catch (Exception trouble)
            {
                troubles[i] = trouble;
            }
        });
        var first = troubles.OfType<Exception>().OrderBy(t => t is IOException or UnauthorizedAccessException).FirstOrDefault();
        if (first is not null)
        {
            ExceptionDispatchInfo.Capture(first).Throw();
        }
    }
}
