using BridgeForm.Roles;
using BridgeForm.Tests.Frames;

namespace BridgeForm.Tests.Roles;

/// <summary>Three bridges that have parts of every role between them: boards on packers, treads on stringers, caps on shims.</summary>
internal static class EveryRole
{
    private const string OnStringers = "\ndeck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n"
        + "guard: { handrail: { height: 30 in }, newels: { gap: 2 in } }\n";

    private const string Picketed =
        "\nguard: { rails: { section: 38 x 89 mm }, pickets: { section: 38 x 38 mm }, cap: { section: 38 x 140 mm } }\n"
        + "deck: { grip: cleats, cleats: { section: 19 x 89 mm } }\n";

    private static readonly Lazy<BridgeModel[]> s_models = new(
        () =>
        [
            Bridges.Build(Bridges.Inclined + Picketed), Bridges.Build(Bridges.Garden + OnStringers),
            Bridges.Build(LandingPartsTests.Bent.Replace("cap: { section: 2x6 } }", LandingPartsTests.Shimmed, StringComparison.Ordinal)),
        ]);

    /// <summary>All three.</summary>
    public static IReadOnlyList<BridgeModel> Models => s_models.Value;

    /// <summary>Every role, for theories.</summary>
    public static TheoryData<Role> All => [.. Enum.GetValues<Role>()];

    /// <summary>A bridge that has parts of a role.</summary>
    public static BridgeModel With(Role role) => Models.FirstOrDefault(m => m.Pieces.Any(p => p.Role == role))
        ?? throw new InvalidOperationException($"No bridge here has a {role}: add one, so that its words are looked for.");
}
