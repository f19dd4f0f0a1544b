using System.Collections.Immutable;
using BridgeForm.Project.Files;

namespace BridgeForm.Proposals;

/// <summary>A design: the project file with some keys written otherwise.</summary>
/// <param name="Changes">What is written, by path.</param>
internal sealed record Design(ImmutableSortedDictionary<string, string> Changes)
{
    /// <summary>The file as it is.</summary>
    public static Design AsWritten { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal));

    /// <summary>Equal texts are equal designs.</summary>
    public string Signature => string.Join('\n', Changes.Select(c => c.Key + ": " + c.Value));

    /// <summary>Whether it writes the same.</summary>
    public bool IsSame(Design other) => string.Equals(Signature, other.Signature, StringComparison.Ordinal);

    /// <summary>Whether it writes this already.</summary>
    public bool Says(KeyChange change) =>
        Changes.TryGetValue(change.Path, out var text) && string.Equals(text, change.Text, StringComparison.Ordinal);

    /// <summary>The same with further changes.</summary>
    public Design With(IEnumerable<KeyChange> changes) =>
        new(Changes.SetItems(changes.Select(c => KeyValuePair.Create(c.Path, c.Text))));

    /// <summary>The same with one key left as the file has it.</summary>
    public Design Without(string path) => new(Changes.Remove(path));

    /// <summary>The changes as the reader takes them.</summary>
    public IEnumerable<KeyChange> AsKeys() => Changes.Select(c => new KeyChange(c.Key, c.Value));
}
