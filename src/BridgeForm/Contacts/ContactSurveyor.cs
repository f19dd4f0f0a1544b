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
    public static ContactSurvey Survey(BridgeLayout layout, ImmutableArray<Piece> pieces, ImmutableArray<RopeLine> ropes) =>
        Survey(layout, SurveyedPart.Of(pieces), ropes);

    /// <summary>As <see cref="Survey(BridgeLayout, ImmutableArray{Piece}, ImmutableArray{RopeLine})"/>, for parts given one by one.</summary>
    internal static ContactSurvey Survey(BridgeLayout layout, ImmutableArray<SurveyedPart> parts, ImmutableArray<RopeLine> ropes) =>
        Of(parts, Supports.Of(parts, layout.Poses), ropes, layout.Parameters.Frames.Channel.Liner);

    /// <summary>Members that rest on nothing, for tests and small sets.</summary>
    public static ContactSurvey OfMembers(IReadOnlyList<Member> members, ImmutableArray<RopeLine> ropes)
    {
        ImmutableArray<SurveyedPart> parts = [.. members.Select(SurveyedPart.Of)];
        return Of(parts, Supports.None(parts), ropes, liner: 0);
    }

    private static ContactSurvey Of(ImmutableArray<SurveyedPart> parts, Supports supports, ImmutableArray<RopeLine> ropes, double liner)
    {
        var findings = new Findings();
        new Sweep(parts, supports, findings, new RopeContacts(findings, ropes)).Run(liner);
        return findings.Result();
    }
}
