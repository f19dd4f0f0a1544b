using System.Globalization;

namespace BridgeForm.Cli.Streams;

/// <summary>
/// A bar on standard error while a long run goes on: only on a terminal, and only once a run has taken longer than people
/// wait without wondering. It draws itself anew by a timer, so that a long step shows too.
/// </summary>
internal sealed class Progress : IDisposable
{
    private const int Width = 30;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(250);

    private readonly TextWriter _error;
    private readonly ITimer? _timer;
    private readonly IDisposable? _undoing;
    private readonly Lock _gate = new();
    private string _step = "";
    private int _done;
    private int _total;
    private int _shown;
    private bool _isOver;

    /// <summary>Begins to wait.</summary>
    /// <param name="error">Standard error.</param>
    /// <param name="isTerminal">Somebody looks at it, and has not asked for quiet.</param>
    /// <param name="clock">The system's; another one in tests.</param>
    public Progress(TextWriter error, bool isTerminal, TimeProvider clock)
    {
        _error = error;
        _undoing = isTerminal ? Interruption.Undoing(Wipe) : null;
        _timer = isTerminal ? clock.CreateTimer(_ => Draw(), null, Patience, Beat) : null;
    }

    /// <summary>What is being done now.</summary>
    public void Say(string step)
    {
        lock (_gate)
        {
            _step = step;
        }
    }

    /// <summary>From here on so many steps are counted.</summary>
    public Steps Of(int total)
    {
        lock (_gate)
        {
            (_done, _total, _step) = (0, total, "writing files");
        }

        return new Steps(this);
    }

    /// <summary>Wipes the bar away; nothing is drawn afterwards.</summary>
    public void Dispose()
    {
        _timer?.Dispose();
        Wipe();
        _undoing?.Dispose();
    }

    private void Wipe()
    {
        lock (_gate)
        {
            _isOver = true;
            if (_shown > 0)
            {
                _error.Write("\r" + new string(' ', _shown) + "\r");
                _shown = 0;
            }
        }
    }

    private void Draw()
    {
        lock (_gate)
        {
            if (_isOver)
            {
                return;
            }

            var filled = _total == 0 ? 0 : Width * _done / _total;
            var count = _total == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" {_done} of {_total},");
            var line = $"[{new string('=', filled)}{new string(' ', Width - filled)}]{count} {_step}";
            _error.Write("\r" + line.PadRight(_shown));
            _shown = line.Length;
        }
    }

    /// <summary>Counts steps; may be told from any thread.</summary>
    internal readonly struct Steps(Progress progress)
    {
        /// <summary>One more is done.</summary>
        public void Done(string step)
        {
            lock (progress._gate)
            {
                progress._done++;
                progress._step = step + " done";
            }
        }
    }
}
