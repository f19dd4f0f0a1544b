using System.Collections.Immutable;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Checks;

/// <summary>What checks look at.</summary>
/// <param name="Parameters">What the builder asked for.</param>
/// <param name="Layout">Where everything lies.</param>
/// <param name="Rope">Design state.</param>
/// <param name="Pieces">Pieces as they are cut.</param>
/// <param name="Contacts">Every pair of parts that come near each other.</param>
/// <param name="Masses">Masses of frames, packers and bays.</param>
/// <param name="Ropework">Load cases and everything else found out about the ropes.</param>
/// <param name="Wind">What a wind across the bridge does.</param>
public sealed record CheckContext(
    BridgeParameters Parameters,
    BridgeLayout Layout,
    RopeShape Rope,
    ImmutableArray<Piece> Pieces,
    ContactFindings Contacts,
    BridgeMasses Masses,
    RopeWork Ropework,
    WindWork Wind)
{
    /// <summary>Load cases; one without a solution has no shape.</summary>
    public ImmutableArray<LoadCaseResult> Cases => Ropework.Cases;

    /// <summary>Bays to look at: all that can differ. Numbers 1 … n.</summary>
    public IEnumerable<int> Bays => Enumerable.Range(1, Layout.Bays).Select(bay =>
    {
        Token.ThrowIfCancellationRequested();
        return bay;
    });

    /// <summary>Asked from bay to bay.</summary>
    internal CancellationToken Token { get; init; }

    /// <summary>Ids of all parts, found once and by all checks: those of the pieces that the context was made with.</summary>
    internal Lazy<ILookup<(string Owner, Role Role), string>> ByPlace { get; } = new(() => CheckParts.ByPlace(Pieces));

    /// <summary>Numbers in the project's units.</summary>
    internal CheckWords Words() => new(Parameters.Units);

    /// <summary>Frames whose bases hang on the ropes and those on the landings: 0 … n.</summary>
    public ImmutableArray<FramePose> Frames => Layout.Poses;
}

/// <summary>What a check is, apart from any bridge: its line in docs/checks.md. Declared beside the code that makes it.</summary>
/// <param name="Id">Stable id, kebab case.</param>
/// <param name="Title">What is checked, in a person's words.</param>
/// <param name="Compares">What is compared with what, and what is assumed.</param>
/// <param name="Source">Standard, handbook or "common practice, no source"; values not looked up say "from memory".</param>
/// <param name="Statuses">Outcomes it can have.</param>
public sealed record DeclaredCheck(
    string Id, string Title, string Compares, string Source, ImmutableArray<CheckStatus> Statuses);
