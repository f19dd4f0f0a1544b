using System.Collections.Immutable;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>Members and loads of a deck, in words.</summary>
internal static class DeckKinds
{
    /// <summary>What may carry: the parts of a deck, upper ones first.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        .. RoleTable.All.Where(f => f.Section == DrawingSection.Deck)
            .OrderBy(f => RoleTable.IsUnder(f.Role, DrawingSection.Deck)).Select(f => f.Name),
    ];

    /// <summary>What is carried.</summary>
    public static ImmutableArray<(string Name, string Title, string Words)> Loads =>
    [
        ("area", "area load", "the area load on its pitch (live with CD 1.0 and, where snow is given, snow and three quarters of both together with CD 1.15; the worst)"),
        ("patch", "point load over its patch", "the point load spread over its patch"),
        ("point", "point load on one member", "the whole point load on this one member"),
    ];

    /// <summary>Whether an id is made of these parts.</summary>
    public static bool IsFor(DeclaredCheck check, string kind, string what, string load) =>
        string.Equals(check.Id, $"{kind}-{what}-{load}", StringComparison.Ordinal);
}
