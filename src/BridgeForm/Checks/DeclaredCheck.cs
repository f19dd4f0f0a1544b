using System.Collections.Immutable;

namespace BridgeForm.Checks;

/// <summary>What a check is, apart from any bridge: its line in docs/checks.md. Declared beside the code that makes it.</summary>
/// <param name="Id">Stable id, kebab case.</param>
/// <param name="Title">What is checked, in a person's words.</param>
/// <param name="Compares">What is compared with what, and what is assumed.</param>
/// <param name="Source">Standard, handbook or "common practice, no source"; values not looked up say "from memory".</param>
/// <param name="Statuses">Outcomes it can have.</param>
public sealed record DeclaredCheck(
    string Id, string Title, string Compares, string Source, ImmutableArray<CheckStatus> Statuses);
