using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Stocking;

/// <summary>One step.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Stage">
/// From 1: the end frames; then one or two frames and the deck of the bays they close, a stage each; then the guard of one or two bays, a
/// stage each.
/// </param>
/// <param name="Where">Frame or bay: <c>F03</c>, <c>B03</c>.</param>
/// <param name="Work">What is done.</param>
/// <param name="Parts">Ids of the parts added, in the order of adding; a part rests only on parts before it.</param>
public sealed record AssemblyStep(int Number, int Stage, string Where, AssemblyWork Work, ImmutableArray<string> Parts);

/// <summary>
/// The order of building: end frames on their landings; then a frame and the deck behind it at a time, so that the crew stands on deck;
/// then rails and caps, from the ends on. Before the deck lies from end to end the ropes bend so much at the last frame hung that caps
/// would not go between the posts' heads. From both ends the two sides keep pace, so that the ropes stay evenly loaded.
/// </summary>
public static class AssemblyOrder
{
    /// <summary>Every part once. Same bridge, same order.</summary>
    public static ImmutableArray<AssemblyStep> Plan(
        ErectionOrder order, ImmutableArray<Piece> pieces, ImmutableArray<FramePose> frames, ImmutableArray<GroupIds> groups)
    {
        var roles = pieces
            .SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Role)))
            .ToDictionary(p => p.Id, p => RoleTable.Of(p.Role), StringComparer.Ordinal);
        var members = groups.ToDictionary(g => g.Name, g => g.MemberIds, StringComparer.Ordinal);
        var steps = ImmutableArray.CreateBuilder<AssemblyStep>();
        var stage = 0;
        foreach (var (hung, bays, works) in Stages(frames.Length - 1, order).Select(s => (s.Frames, s.Bays, s_deck))
            .Concat(Guards(frames.Length - 1, order).Select(b => (Array.Empty<int>(), b, s_guard))))
        {
            stage++;
            foreach (var (where, work) in Works(frames, groups, hung, bays, works))
            {
                ImmutableArray<string> parts =
                    [.. members[where].Where(id => roles[id].AddedIn.Contains(work)).OrderBy(id => roles[id].Rank)];
                if (!parts.IsEmpty || work is AssemblyWork.HangFrame or AssemblyWork.SetEndFrame)
                {
                    steps.Add(new AssemblyStep(steps.Count + 1, stage, where, work, parts));
                }
            }
        }

        return steps.ToImmutable();
    }

    /// <summary>Number of the step in which each part is added, by the part's id.</summary>
    public static ImmutableDictionary<string, int> StepOfPart(ImmutableArray<AssemblyStep> steps) =>
        steps.SelectMany(s => s.Parts.Select(p => (Part: p, s.Number)))
            .ToImmutableDictionary(p => p.Part, p => p.Number, StringComparer.Ordinal);

    private static readonly AssemblyWork[] s_deck = [AssemblyWork.LayDeck];
    private static readonly AssemblyWork[] s_guard = [AssemblyWork.FixRails, AssemblyWork.FixCaps];

    /// <summary>Bays whose guard is made in a stage; from the ends on, so that who works there stands between guards.</summary>
    private static IEnumerable<int[]> Guards(int bays, ErectionOrder order)
    {
        var (first, last) = (1, bays);
        while (first <= last)
        {
            yield return order == ErectionOrder.OneEnd || first == last ? [first] : [first, last];
            (first, last) = (first + 1, order == ErectionOrder.OneEnd ? last : last - 1);
        }
    }

    /// <summary>Frames and bays of each stage, by index: frames 0 … bays, bays 1 … bays.</summary>
    private static IEnumerable<(int[] Frames, int[] Bays)> Stages(int bays, ErectionOrder order)
    {
        yield return ([0, bays], []);
        var (left, right) = (0, bays);
        while (right - left > 1)
        {
            if (order == ErectionOrder.OneEnd)
            {
                left++;
                yield return ([left], [left]);
            }
            else if (right - left == 2)
            {
                yield return ([left + 1], [left + 1, right]);
                yield break;
            }
            else
            {
                yield return ([left + 1, right - 1], [left + 1, right]);
                (left, right) = (left + 1, right - 1);
            }
        }

        yield return ([], [right]);
    }

    private static IEnumerable<(string Where, AssemblyWork Work)> Works(
        ImmutableArray<FramePose> frames, ImmutableArray<GroupIds> groups, int[] hung, int[] bays, AssemblyWork[] works)
    {
        foreach (var frame in hung.Select(i => frames[i]))
        {
            yield return (frame.Name, AssemblyWork.BuildFrame);
            yield return (frame.Name, frame.IsEnd ? AssemblyWork.SetEndFrame : AssemblyWork.HangFrame);
        }

        foreach (var work in works)
        {
            foreach (var bay in bays)
            {
                // Groups hold the frames first, then the bays, each from A on.
                yield return (groups[frames.Length + bay - 1].Name, work);
            }
        }
    }
}
