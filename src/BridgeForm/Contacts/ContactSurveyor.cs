using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Ropes;

namespace BridgeForm.Contacts;

/// <summary>
/// Compares every pair of parts that come near each other, ropes included, on the parts as cut: each piece's solid where it is
/// drawn. Sweeps the bridge from A to B and keeps only what reaches as far as it has come, so that its cost is all but linear.
/// </summary>
public static class ContactSurveyor
{
    /// <summary>Surveys a whole bridge.</summary>
    /// <param name="layout">Frames, and what was asked for.</param>
    /// <param name="pieces">Every wooden part, as cut.</param>
    /// <param name="ropes">The ropes.</param>
    /// <param name="token">Asked before each part.</param>
    public static ContactSurvey Survey(
        BridgeLayout layout, ImmutableArray<Piece> pieces, ImmutableArray<RopeLine> ropes, CancellationToken token = default) =>
        Survey(layout, SurveyedPart.Of(pieces), ropes, token);

    /// <summary>As <see cref="Survey(BridgeLayout, ImmutableArray{Piece}, ImmutableArray{RopeLine}, CancellationToken)"/>, for parts given one by one.</summary>
    internal static ContactSurvey Survey(
        BridgeLayout layout, ImmutableArray<SurveyedPart> parts, ImmutableArray<RopeLine> ropes, CancellationToken token = default) =>
        Of(parts, Supports.Of(parts, layout.Poses), ropes, layout.Parameters.Frames.Channel.Liner, token);

    /// <summary>Members that rest on nothing, for tests and small sets.</summary>
    public static ContactSurvey OfMembers(IReadOnlyList<Member> members, ImmutableArray<RopeLine> ropes)
    {
        ImmutableArray<SurveyedPart> parts = [.. members.Select(SurveyedPart.Of)];
        return Of(parts, Supports.None(parts), ropes, liner: 0, CancellationToken.None);
    }

    private static ContactSurvey Of(
        ImmutableArray<SurveyedPart> parts, Supports supports, ImmutableArray<RopeLine> ropes, double liner, CancellationToken token)
    {
        var findings = new Findings();
        new Sweep(parts, supports, findings, new RopeContacts(findings, ropes)).Run(liner, token);
        return findings.Result();
    }
}
