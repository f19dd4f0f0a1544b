namespace BridgeForm.Mutation;

/// <summary>Tests that do not count: what they hold still is a file that is made anew whenever the model changes.</summary>
internal static class Left
{
    /// <summary>Outside readers: minutes for each place, and they judge formats more than numbers.</summary>
    public const string Referees = "Referee";

    /// <summary>Beginning of a class's name, and why it is left out.</summary>
    public static IReadOnlyList<(string Class, string Reason)> Out { get; } =
    [
        ("BridgeForm.Tests.Samples.", "pinned numbers, previews and pictures of the samples"),
        ("BridgeForm.Tests.Output.Samples.", "committed models and pictures of the samples"),
        ("BridgeForm.Tests.Project.GeneratedTextTests", "generated pages"),
        ("BridgeForm.Tests.Checks.CheckPageTests", "generated page"),
        ("BridgeForm.Tests.DocumentTests", "generated pages and lists of files"),
        ("BridgeForm.Tests.Fuzz.", "random bridges: they ask for closed solids and finite numbers, which a wrong number is as well"),
        ("BridgeForm.Tests.Output.Preview.PreviewPageTests", "the preview in a browser, with every sample"),
    ];

    public static bool IsOut(string name) => Out.Any(o => name.StartsWith(o.Class, StringComparison.Ordinal));
}
