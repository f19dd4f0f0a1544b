using System.Diagnostics;
using System.Globalization;

namespace BridgeForm.Cli;

/// <summary>
/// A bar on standard error while a long run goes on: only on a terminal, and only once a run has taken longer than people
/// wait without wondering.
/// </summary>
/// <param name="error">Standard error.</param>
/// <param name="isTerminal">Somebody looks at it, and has not asked for quiet.</param>
internal sealed class Progress(TextWriter error, bool isTerminal) : IDisposable
{
    private const int Width = 30;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    private readonly Stopwatch _watch = Stopwatch.StartNew();
    private int _shown;

    /// <summary>Says what was made last and how many steps are done; from any thread.</summary>
    public void Show(string step, int done, int total)
    {
        if (!isTerminal || _watch.Elapsed < Patience)
        {
            return;
        }

        var filled = total == 0 ? Width : Width * done / total;
        var line = string.Create(
            CultureInfo.InvariantCulture, $"[{new string('=', filled)}{new string(' ', Width - filled)}] {done} of {total}, {step}");
        lock (_watch)
        {
            error.Write("\r" + line.PadRight(_shown));
            _shown = line.Length;
        }
    }

    /// <summary>Wipes the bar away.</summary>
    public void Dispose()
    {
        if (_shown > 0)
        {
            error.Write("\r" + new string(' ', _shown) + "\r");
            _shown = 0;
        }
    }
}
