namespace BridgeForm.Project.Editing;

/// <summary>A project file's text with one value changed, or why it cannot be.</summary>
/// <param name="Text">The whole text; null when it cannot be changed.</param>
/// <param name="Problem">Why not, one line for people; null when it was changed.</param>
public sealed record EditResult(string? Text, string? Problem)
{
    internal static EditResult Done(string text) => new(text, null);

    internal static EditResult Refused(string problem) => new(null, problem);
}
