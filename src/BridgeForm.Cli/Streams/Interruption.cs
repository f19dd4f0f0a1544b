using System.Runtime.InteropServices;

namespace BridgeForm.Cli.Streams;

/// <summary>
/// Ctrl-C, a request to end, a terminal that is closed: what is half done is taken away, then the program ends with the code
/// that shells expect. There is one of it, as there is one process that a signal reaches.
/// </summary>
internal static class Interruption
{
    private static readonly Lock s_gate = new();
    private static readonly List<Action> s_undo = [];
    private static bool s_isOver;

    /// <summary>Listens to signals from here on. Returns what must be kept for as long.</summary>
    public static IReadOnlyList<IDisposable> Watch() =>
    [
        On(PosixSignal.SIGINT, ExitCode.Interrupted),
        On(PosixSignal.SIGTERM, ExitCode.Terminated),
        On(PosixSignal.SIGHUP, ExitCode.HungUp),
    ];

    /// <summary>Does something that no signal cuts in two: it is waited for, or never begun.</summary>
    public static void Whole(Action work)
    {
        lock (s_gate)
        {
            if (!s_isOver)
            {
                work();
                return;
            }
        }

        Wait();
    }

    /// <summary>Names what to undo when a signal comes, until the returned value is disposed of.</summary>
    public static IDisposable Undoing(Action undo)
    {
        Whole(() => s_undo.Add(undo));
        return new Registration(undo);
    }

    /// <summary>A signal has come: trouble that arises from then on is none of the user's.</summary>
    public static bool IsOver
    {
        get
        {
            lock (s_gate)
            {
                return s_isOver;
            }
        }
    }

    /// <summary>Waits for the end of the program, which whoever took the signal brings about.</summary>
    public static int Wait()
    {
        Thread.Sleep(Timeout.Infinite);
        return ExitCode.Interrupted;
    }

    private static PosixSignalRegistration On(PosixSignal signal, int code) => PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = true;
        lock (s_gate)
        {
            s_isOver = true;
            foreach (var undo in Enumerable.Reverse(s_undo))
            {
                undo();
            }
        }

        Environment.Exit(code);
    });

    private sealed class Registration(Action undo) : IDisposable
    {
        public void Dispose() => Whole(() => s_undo.Remove(undo));
    }
}
