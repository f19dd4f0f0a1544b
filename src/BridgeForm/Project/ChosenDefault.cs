namespace BridgeForm.Project;

/// <summary>A value that a rule chose, since the file leaves its key out.</summary>
/// <param name="Path">Of the key, such as <c>ropes.spacing</c>.</param>
/// <param name="Text">The value, as a person would write it: <c>58 in</c>.</param>
/// <param name="Rule">The rule in words, without a full stop.</param>
public sealed record ChosenDefault(string Path, string Text, string Rule);
