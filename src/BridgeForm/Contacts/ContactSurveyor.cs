using System.Collections.Immutable;
using BridgeForm.Frames;

namespace BridgeForm.Contacts;

/// <summary>
/// Compares every pair of parts that come near each other, ropes included, on the parts as laid out (before alike ones are
/// drawn as one piece). Walks the bridge from A to B and keeps only the last few groups, so that its cost is linear.
/// </summary>
public static class ContactSurveyor
{
    /// <summary>Surveys a whole bridge.</summary>
    public static ContactSurvey Survey(BridgeLayout layout, ImmutableArray<RopeLine> ropes)
    {
        var findings = new Findings();
        var walk = new Walk(findings, ropes);
        for (var i = 0; i <= layout.Bays; i++)
        {
            if (i > 0)
            {
                walk.Take(Members.Bay(layout, i).Members, layout.Poses[i - 1], layout.Poses[i]);
            }

            var frame = Members.Frame(layout, i).Members;
            walk.Take(frame, layout.Poses[i], layout.Poses[i]);
            if (!layout.Poses[i].IsEnd)
            {
                walk.TakeFloors(frame.First(m => m.Role == Role.Base), layout.Poses[i], layout.Parameters.Frames.Channel.Liner);
            }
        }

        walk.Finish();
        return findings.Result();
    }

    /// <summary>As <see cref="Survey"/>, for members in any order: all pairs; for tests and small sets.</summary>
    public static ContactSurvey OfMembers(IReadOnlyList<Member> members, ImmutableArray<RopeLine> ropes)
    {
        var findings = new Findings();
        var walk = new Walk(findings, ropes);
        walk.TakeUnsupported(members);
        walk.Finish();
        return findings.Result();
    }
}
