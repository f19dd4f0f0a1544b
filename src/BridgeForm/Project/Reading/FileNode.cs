using System.Collections.Immutable;

namespace BridgeForm.Project.Reading;

/// <summary>A place in the file; line and column from 1.</summary>
internal readonly record struct Place(int Line, int Column)
{
    public static Place Start => new(1, 1);
}

/// <summary>A node of the file with its place.</summary>
internal abstract record FileNode(Place Place)
{
    /// <summary>What it is, for a message.</summary>
    public abstract string Noun { get; }
}

/// <summary>A single value.</summary>
internal sealed record ScalarNode(Place Place, string Text, bool Quoted) : FileNode(Place)
{
    public override string Noun => Text.Length == 0 && !Quoted ? "nothing" : "a single value";
}

/// <summary>A list.</summary>
internal sealed record ListNode(Place Place, ImmutableArray<FileNode> Items) : FileNode(Place)
{
    public override string Noun => "a list";
}

/// <summary>A mapping; every key once, in the file's order.</summary>
internal sealed record MapNode(Place Place, ImmutableArray<MapEntry> Entries) : FileNode(Place)
{
    public override string Noun => "a mapping";
}

/// <summary>A key and what stands under it.</summary>
internal sealed record MapEntry(string Key, Place KeyPlace, FileNode Value);

/// <summary>A node whose fault has been told already.</summary>
internal sealed record BrokenNode(Place Place) : FileNode(Place)
{
    public override string Noun => "something unreadable";
}
