using System.Collections.Immutable;

namespace BridgeForm.Output.Lists;

/// <summary>A column of a table.</summary>
/// <param name="Name">Its heading: what it is, or its unit.</param>
/// <param name="Form">How its cells stand.</param>
public sealed record ListColumn(string Name, ColumnForm Form = ColumnForm.Number);

/// <summary>How the cells of a column stand.</summary>
public enum ColumnForm
{
    /// <summary>To the right.</summary>
    Number,

    /// <summary>To the left.</summary>
    Words,

    /// <summary>To the left, and written into a project file as it stands.</summary>
    Key,
}

/// <summary>One table.</summary>
/// <param name="Title">What its rows have in common; empty where it is the only one.</param>
/// <param name="Columns">From the left; what is written into a project file comes first.</param>
/// <param name="Rows">Cells, as many as there are columns.</param>
public sealed record ListTable(string Title, ImmutableArray<ListColumn> Columns, ImmutableArray<ImmutableArray<string>> Rows);

/// <summary>What one word of <c>list</c> shows.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Tables">One below the other.</param>
/// <param name="Notes">Lines below them: which key of the project file it is for, and where the values come from.</param>
public sealed record ReferenceList(string Title, ImmutableArray<ListTable> Tables, ImmutableArray<string> Notes);

/// <summary>A list that can be asked for.</summary>
/// <param name="Word">Its name.</param>
/// <param name="Make">Works it out.</param>
public sealed record ListKind(string Word, Func<ReferenceList> Make);
