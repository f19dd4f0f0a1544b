namespace BridgeForm.Trials;

/// <summary>
/// How much a search for what would pass may cost, counted and not timed, so that the same file gets the same answer
/// everywhere. What is counted is how often the wood of a trial design is weighed, since that is what costs: a bridge settles
/// in about seven, while one that does not settle would go on for hundreds.
/// </summary>
/// <param name="most">Most weighings of all trials together.</param>
/// <param name="mostOfTrial">Most weighings of one trial.</param>
/// <param name="token">Asked before each trial and each weighing.</param>
public sealed class Effort(int most, int mostOfTrial, CancellationToken token)
{
    private int _left = most;
    private int _leftOfTrial;

    /// <summary>What ends the search from outside; to be asked within a trial too.</summary>
    public CancellationToken Token => token;

    /// <summary>Trials that were begun.</summary>
    public int Trials { get; private set; }

    /// <summary>No more is tried; what has not been found by now stays unknown.</summary>
    public bool IsSpent => _left <= 0;

    /// <summary>Begins a trial; false when no more is tried.</summary>
    public bool TryBegin()
    {
        token.ThrowIfCancellationRequested();
        _leftOfTrial = mostOfTrial;
        Trials += IsSpent ? 0 : 1;
        return !IsSpent;
    }

    /// <summary>Spends one weighing; false when this trial is given up.</summary>
    public bool TrySpend()
    {
        token.ThrowIfCancellationRequested();
        _left--;
        _leftOfTrial--;
        return _left >= 0 && _leftOfTrial >= 0;
    }
}
