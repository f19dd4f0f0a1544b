namespace BridgeForm.Materials;

/// <summary>Which command shows all that a key takes, as the end of a message. A test holds each to the commands that there are.</summary>
internal static class ListedBy
{
    public const string Ropes = "'bridgeform list ropes' lists all";

    public const string Species = "'bridgeform list species' lists all";

    public const string Grades = "'bridgeform list grades' lists them by species";

    public const string Lumber = "'bridgeform list lumber' lists all";
}

/// <summary>Several suggestions in one text.</summary>
internal static class Alternatives
{
    /// <summary><c>a</c>, <c>a or b</c>, <c>a, b or c</c>.</summary>
    /// <param name="words">At least one.</param>
    public static string Text(IReadOnlyList<string> words) =>
        words.Count == 1 ? words[0] : $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}";
}
