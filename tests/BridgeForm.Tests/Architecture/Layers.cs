namespace BridgeForm.Tests.Architecture;

/// <summary>Floors of the house, lowest first. A namespace uses only those before it; a new one is entered where it belongs.</summary>
internal static class Layers
{
    /// <summary>What the program's own namespaces begin with.</summary>
    public const string Root = "BridgeForm";

    /// <summary>A floor by its name, and its namespaces, lowest first.</summary>
    public static IReadOnlyList<(string Floor, string[] Rooms)> All { get; } =
    [
        ("Quantities", ["BridgeForm.Quantities"]),
        ("Solids", ["BridgeForm.Solids"]),
        ("Roles", ["BridgeForm.Roles"]),
        ("Materials", ["BridgeForm.Materials"]),
        ("Connections", ["BridgeForm.Connections"]),
        (
            "Project",
            [
                "BridgeForm.Project.Definition", "BridgeForm.Project.Reading.Faults", "BridgeForm.Project.Reading", "BridgeForm.Project",
                "BridgeForm.Project.Files", "BridgeForm.Project.Editing",
            ]),
        (
            "Ropes",
            [
                "BridgeForm.Ropes", "BridgeForm.Ropes.Fittings", "BridgeForm.Ropes.Modes", "BridgeForm.Ropes.Pairs",
                "BridgeForm.Ropes.Space",
            ]),
        ("Frames", ["BridgeForm.Frames"]),
        ("Pieces", ["BridgeForm.Pieces"]),
        ("Contacts", ["BridgeForm.Contacts"]),
        ("Loads", ["BridgeForm.Loads"]),
        (
            "Checks",
            [
                "BridgeForm.Checks", "BridgeForm.Checks.Timber", "BridgeForm.Checks.Geometry", "BridgeForm.Checks.Codes",
                "BridgeForm.Checks.Ropes", "BridgeForm.Checks.Register",
            ]),
        ("Stocking", ["BridgeForm.Stocking.Cutting", "BridgeForm.Stocking"]),
        ("Trials", ["BridgeForm.Trials"]),
        ("Bridge", ["BridgeForm"]),
        ("Proposals", ["BridgeForm.Proposals"]),
        ("Output", [
            "BridgeForm.Output", "BridgeForm.Output.Drawing", "BridgeForm.Output.Svg", "BridgeForm.Output.Dxf", "BridgeForm.Output.Pdf",
            "BridgeForm.Output.Gltf", "BridgeForm.Output.Part21", "BridgeForm.Output.Brep", "BridgeForm.Output.StepSolids",
            "BridgeForm.Output.Ifc", "BridgeForm.Output.Usd", "BridgeForm.Output.ScaleModel",
            "BridgeForm.Output.Profiles", "BridgeForm.Output.Router", "BridgeForm.Output.Templates", "BridgeForm.Output.DrawingSet",
            "BridgeForm.Output.ShopSheets",
            "BridgeForm.Output.Tables", "BridgeForm.Output.Lists", "BridgeForm.Output.Report", "BridgeForm.Output.Preview",
            "BridgeForm.Output.Kinds", "BridgeForm.Output.Live",
        ]),
        (
            "Cli",
            [
                "BridgeForm.Cli.Streams", "BridgeForm.Cli.Files.Commit", "BridgeForm.Cli.Files", "BridgeForm.Cli.Text",
                "BridgeForm.Cli.Commands", "BridgeForm.Cli",
            ]),
    ];

    private static readonly Dictionary<string, int> s_heights = All.SelectMany(l => l.Rooms).Select((room, i) => (room, i))
        .ToDictionary(r => r.room, r => r.i, StringComparer.Ordinal);

    /// <summary>What climbs, as <c>user → used</c>, and what stands on no floor; sorted.</summary>
    public static IReadOnlyList<string> Faults(IEnumerable<TypeUse> uses) =>
    [
        .. uses.SelectMany(use => (string[])[.. Homeless(use.From), .. Homeless(use.To), .. Climbing(use)])
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Floor of a namespace.</summary>
    public static string FloorOf(string room) => All.First(l => l.Rooms.Contains(room, StringComparer.Ordinal)).Floor;

    private static IEnumerable<string> Homeless(UsedType type) =>
        s_heights.ContainsKey(type.Namespace) ? [] : [$"{type.Namespace} stands on no floor"];

    private static IEnumerable<string> Climbing(TypeUse use) =>
        s_heights.GetValueOrDefault(use.To.Namespace, -1) > s_heights.GetValueOrDefault(use.From.Namespace, int.MaxValue)
            ? [$"{use.From} → {use.To}"]
            : [];
}
