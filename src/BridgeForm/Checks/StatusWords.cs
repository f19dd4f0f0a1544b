namespace BridgeForm.Checks;

/// <summary>Statuses in words.</summary>
public static class StatusWords
{
    /// <summary>A status as people read it.</summary>
    public static string Word(this CheckStatus status) => status switch
    {
        CheckStatus.Fail => "fails",
        CheckStatus.Warn => "look",
        CheckStatus.Engineer => "engineer",
        _ => "holds",
    };
}
