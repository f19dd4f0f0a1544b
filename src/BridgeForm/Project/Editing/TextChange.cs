namespace BridgeForm.Project.Editing;

/// <summary>Characters of a text that others take the place of.</summary>
internal readonly record struct TextChange(int Start, int End, string Text)
{
    /// <summary>A text with changes that do not overlap.</summary>
    public static string Apply(string text, IEnumerable<TextChange> changes) => changes.OrderByDescending(c => c.Start)
        .Aggregate(text, (t, c) => string.Concat(t.AsSpan(0, c.Start), c.Text, t.AsSpan(c.End)));
}
