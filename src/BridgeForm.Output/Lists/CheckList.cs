using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Register;

namespace BridgeForm.Output.Lists;

/// <summary>All checks, in the order of their page.</summary>
internal static class CheckList
{
    private static readonly CheckStatus[] s_statuses = [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail, CheckStatus.Engineer];

    private static readonly ImmutableArray<ListColumn> s_columns =
        [new("id", ColumnForm.Words), new("can", ColumnForm.Words), new("what", ColumnForm.Words)];

    public static ReferenceList Make() => new(
        "Checks",
        [new("", s_columns, [.. AllChecks.Declared.Select(c => (ImmutableArray<string>)[c.Id, Letters(c), c.Title])])],
        [
            $"What a check can come out as: {string.Join(", ", s_statuses.Select(s => $"{Letter(s)} {s.Word()}"))}. No key of the project "
                + "file: every bridge has those that concern it.",
            "What each compares, and its source: docs/checks.md.",
        ]);

    // Each in its place, so that a column of one outcome can be looked down.
    private static string Letters(DeclaredCheck check) =>
        string.Join(' ', s_statuses.Select(s => check.Statuses.Contains(s) ? Letter(s) : '-'));

    private static char Letter(CheckStatus status) => status.Word()[0];
}
