using System.Collections.Immutable;

namespace BridgeForm.Contacts;

/// <summary>What the survey of all near pairs of parts, ropes included, found. Metres.</summary>
/// <param name="Pairs">Number of pairs compared.</param>
/// <param name="Overlaps">Pairs of wooden parts that press into each other by more than the seating tolerance, worst first, at most a hundred.</param>
/// <param name="Gaps">Parts that should bear on another and stand clear of it by more than the seating tolerance, worst first.</param>
/// <param name="RopeContacts">Wood that a rope touches outside a channel, or enters by more than the seating tolerance, worst first.</param>
/// <param name="OverlapCount">How many such pairs there are, the ones not kept included.</param>
/// <param name="GapCount">How many such gaps there are, the ones not kept included.</param>
/// <param name="RopeContactCount">How many such contacts there are, the ones not kept included.</param>
/// <param name="DeepestOverlap">Largest overlap of any pair of wooden parts; 0 when none overlap.</param>
/// <param name="WidestGap">Largest gap between parts that should bear; 0 when all touch; of parts nowhere near each other the least it can be.</param>
/// <param name="DeepestRope">Largest depth of a rope in the wood of a base; negative when it touches none.</param>
public sealed record ContactSurvey(
    long Pairs,
    ImmutableArray<ContactFault> Overlaps,
    ImmutableArray<ContactFault> Gaps,
    ImmutableArray<ContactFault> RopeContacts,
    int OverlapCount,
    int GapCount,
    int RopeContactCount,
    double DeepestOverlap,
    double WidestGap,
    double DeepestRope);

/// <summary>Two parts that meet wrongly.</summary>
/// <param name="First">Id of a part or name of a rope.</param>
/// <param name="Second">Id of the other part.</param>
/// <param name="Amount">Depth or gap, metres; infinite where they are nowhere near each other.</param>
public sealed record ContactFault(string First, string Second, double Amount);
