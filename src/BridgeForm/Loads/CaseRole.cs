using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Loads;

/// <summary>A case that is worst for something.</summary>
/// <param name="Response">For what, in a person's words.</param>
/// <param name="Case">Id of the case.</param>
public sealed record CaseRole(string Response, string Case)
{
    /// <summary>All that is asked, each with its worst case; the first of several alike.</summary>
    public static ImmutableArray<CaseRole> Find(RopeWork work)
    {
        LoadCaseResult[] decked = [.. work.Cases.Where(c => c.Shape is not null && c.Id is not LoadCaseIds.ErectHalf)];
        CaseRole?[] all =
        [
            Role("tension", work.Governing?.Id),
            .. work.Supports.Select(s => Role("pull at " + s.Support, s.Case)),
            Role("deflection of a frame", Ties.FirstLargest(work.Falls(), f => f.Down)?.Case),
            Role("cross slope", Worst(decked, c => c.RollsOver ? Over : c.CrossSlope)),
            Role("slope of the deck", Worst(decked, c => c.SteepestDeck)),
            Role("load on one base", Worst(decked, c => c.Pair?.Loads.Weights.Max())),
            Role("clearance over ground", Worst(decked, c => -c.OverGround)),
            Role("clearance over water", Worst(decked, c => -c.OverWater)),
            Role("share on one rope", Worst(decked, c => c.RollsOver ? Over : c.LargestShare)),
            Role("uplift", Ties.FirstLargest(work.Lifts.Where(l => l.Force is null or > 0), l => l.Force ?? double.PositiveInfinity)?.Case),
            Role("keeper along rope", Ties.FirstLargest(work.Keepers, k => k.Needed)?.Case),
            Role("roll", RollState.Least(work.Roll)?.Case),
        ];
        return [.. all.OfType<CaseRole>()];
    }

    // What rolls over tilts further than anything that stands.
    private const double Over = double.MaxValue;

    private static CaseRole? Role(string response, string? id) => id is null ? null : new CaseRole(response, id);

    private static string? Worst(LoadCaseResult[] cases, Func<LoadCaseResult, double?> figure) =>
        Ties.FirstLargest(cases.Where(c => figure(c) is not null), c => figure(c)!.Value)?.Id;
}

/// <summary>The furthest that one frame falls from the design state, in any case.</summary>
/// <param name="Frame">Name of the frame.</param>
/// <param name="Case">Id of the case.</param>
/// <param name="Down">Of the rope that falls further, metres.</param>
public sealed record FrameFall(string Frame, string Case, double Down)
{
    /// <summary>Every frame between the supports, from A to B.</summary>
    /// <param name="cases">Load cases.</param>
    /// <param name="names">Names of all frames, supports' included.</param>
    public static ImmutableArray<FrameFall> Find(ImmutableArray<LoadCaseResult> cases, ImmutableArray<string> names)
    {
        var worst = new (LoadCaseResult? Case, double Down)[names.Length];
        foreach (var one in cases)
        {
            if (one.Shape is not { } shape || one.Id is LoadCaseIds.ErectHalf)
            {
                continue;
            }

            for (var i = 1; i + 1 < names.Length; i++)
            {
                // Moves are those of the rope that is pulled harder; the other one may lie lower.
                var down = -one.Moves[i].Y + Math.Max(0, shape.Nodes[i].Y - one.Lighter!.Nodes[i].Y);
                if (worst[i].Case is null || Ties.IsLarger(down, worst[i].Down))
                {
                    worst[i] = (one, down);
                }
            }
        }

        return [.. worst.Select((w, i) => w.Case is { } c ? new FrameFall(names[i], c.Id, w.Down) : null).OfType<FrameFall>()];
    }
}
