using System.Collections.Immutable;

namespace BridgeForm.Project.Reading.Faults;

/// <summary>What is told of a fault alike every time.</summary>
/// <param name="Code">Which.</param>
/// <param name="Id">Stable text in kebab case that is printed with the fault; other programs may look for it.</param>
/// <param name="Cause">What is wrong, whatever the values.</param>
/// <param name="Cure">What is done about it.</param>
internal sealed record FaultRow(FaultCode Code, string Id, string Cause, string Cure);

/// <summary>Faults of one kind, under their heading.</summary>
internal sealed record FaultGroup(string Title, ImmutableArray<FaultRow> Rows);

/// <summary>Every fault once, with its id, cause and cure. What is wrong in one file is the message, made where it is found.</summary>
internal static class FaultTable
{
    /// <summary>In the order in which a file is read.</summary>
    public static ImmutableArray<FaultGroup> Groups { get; } =
        [TextFaults.Group, ValueFaults.Group, RuleFaults.Group, ShapeFaults.Group, PriceFaults.Group];

    /// <summary>The printed code.</summary>
    public static string Id(this FaultCode code) => s_ids[code];

    private static readonly ImmutableDictionary<FaultCode, string> s_ids =
        Groups.SelectMany(g => g.Rows).ToImmutableDictionary(r => r.Code, r => r.Id);
}
