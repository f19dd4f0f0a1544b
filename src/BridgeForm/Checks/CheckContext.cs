using System.Collections.Immutable;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
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
public sealed record CheckContext(
    BridgeParameters Parameters,
    BridgeLayout Layout,
    RopeShape Rope,
    ImmutableArray<Piece> Pieces,
    ContactSurvey Contacts,
    BridgeMasses Masses,
    RopeWork Ropework)
{
    /// <summary>Load cases; one without a solution has no shape.</summary>
    public ImmutableArray<LoadCaseResult> Cases => Ropework.Cases;

    /// <summary>Bays to look at: all that can differ. Numbers 1 … n.</summary>
    public IEnumerable<int> Bays => Enumerable.Range(1, Layout.Bays);

    /// <summary>Numbers in the project's units.</summary>
    internal CheckWords People() => new(Parameters.Units);

    /// <summary>Frames whose bases hang on the ropes and those on the landings: 0 … n.</summary>
    public ImmutableArray<FramePose> Frames => Layout.Poses;
}
