using System.Collections.Immutable;

namespace BridgeForm.Output.Lists;

/// <summary>Every list, once.</summary>
public static class AllLists
{
    /// <summary>In the order in which a project file asks for them.</summary>
    public static ImmutableArray<ListKind> Kinds { get; } =
    [
        new("ropes", RopeList.Make),
        new("species", SpeciesList.Make),
        new("grades", GradeList.Make),
        new("lumber", LumberList.Make),
        new("checks", CheckList.Make),
        new("papers", PaperList.Make),
        new("joints", JointList.Make),
    ];

    /// <summary>All words.</summary>
    public static ImmutableArray<string> Words { get; } = [.. Kinds.Select(k => k.Word)];
}
