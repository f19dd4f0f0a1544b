using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>
/// What the point load at one frame does at most: by the tangent stiffness of the empty bridge, whose ropes only stiffen as
/// they are pulled, and with the lever of the load itself.
/// </summary>
/// <param name="Frame">Name of the frame.</param>
/// <param name="Fall">On the middle line: fall of the frame, metres.</param>
/// <param name="Tilt">At the edge: tilt of the frame, radians; null where nothing bounds it.</param>
/// <param name="Share">At the edge: share on the nearer rope; null where nothing bounds it.</param>
/// <param name="IsSolved">Solved as a case of its own as well.</param>
public sealed record PointBound(string Frame, double Fall, double? Tilt, double? Share, bool IsSolved);

/// <summary>
/// The point load at every frame. Each frame of a bridge with few of them is solved; of a longer one the frames that are worst
/// by their bounds, both ends and some between, and every other frame has its bound.
/// </summary>
internal sealed class PointLoads
{
    // A garden bridge has each frame solved, on the middle line and at the edge; of longer ones so many evenly spread ones.
    private const int AllSolved = 16;
    private const int Spread = 5;

    private readonly LoadPatterns _patterns;
    private readonly double[] _falls;
    private readonly double[] _tilts;
    private readonly double[] _shares;
    private readonly int[] _middle;
    private readonly int[] _edge;

    private PointLoads(LoadCaseInput input, LoadPatterns patterns, PairInfluence empty)
    {
        _patterns = patterns;
        var (own, other) = empty.AtItself();
        var (force, spacing, heights) = (input.Loads.PointForce, input.RopeSpacing, patterns.PeopleHeights);
        (_falls, _tilts, _shares) = (new double[own.Length], new double[own.Length], new double[own.Length]);
        var lifts = new double[own.Length];
        for (var i = 1; i + 1 < own.Length; i++)
        {
            _falls[i] = force * (own[i] + other[i]) / 2;

            // A moment of one newton metre tilts the frame by so much; t = m·P·(e + h·t).
            var moment = 2 * force * (own[i] - other[i]) / (spacing * spacing);
            var left = 1 - (moment * heights[i]);
            _tilts[i] = left > 0 ? moment * patterns.Edge / left : double.PositiveInfinity;
            _shares[i] = 0.5 + ((patterns.Edge + (heights[i] * _tilts[i])) / spacing);
            lifts[i] = (force * (_shares[i] - 1)) - (LoadCases.SureDead * (input.Standing?.Light[i] ?? 0) / 2);
        }

        var few = own.Length - 2 <= AllSolved;
        int[] spread = [.. few ? Enumerable.Range(1, own.Length - 2) : Enumerable.Range(0, Spread).Select(k => At(k, own.Length - 2))];
        _middle = Chosen(force > 0, spread, Worst(_falls));
        _edge = Chosen(force > 0 && patterns.Edge > 0, spread, Worst(_tilts), Worst(lifts));
    }

    /// <summary>Of the empty bridge; null when it does not stand or has no frame between its supports.</summary>
    public static PointLoads? Of(LoadCaseInput input, LoadPatterns patterns, PairCase? empty) =>
        empty is not null && PairInfluence.Of(empty.Rope, empty.Spacing, empty.Loads, empty.Shape) is { } influence
            ? new PointLoads(input, patterns, influence)
            : null;

    /// <summary>Cases to solve, less those that are listed already.</summary>
    public IEnumerable<Loading> ToSolve(IReadOnlyCollection<Loading> listed) =>
    [
        .. _middle.Where(i => !Stands(listed, i, atEdge: false)).Select(_patterns.PointAt),
        .. _edge.Where(i => !Stands(listed, i, atEdge: true)).Select(_patterns.PointEdgeAt),
    ];

    /// <summary>What it does at most at each frame between the supports.</summary>
    public ImmutableArray<PointBound> Bounds() =>
    [
        .. Enumerable.Range(1, _falls.Length - 2).Select(i => new PointBound(
            _patterns.Name(i), _falls[i], double.IsFinite(_tilts[i]) ? Elementary.Atan(_tilts[i]) : null,
            double.IsFinite(_shares[i]) ? _shares[i] : null,
            Array.IndexOf(_middle, i) >= 0 && (Array.IndexOf(_edge, i) >= 0 || !(_patterns.Edge > 0)))),
    ];

    private static bool Stands(IReadOnlyCollection<Loading> listed, int frame, bool atEdge) => listed.Any(l =>
        LoadCaseIds.IsPoint(l.Id) && l.On[0].Weights[frame] > 0 && l.On[0].FromMiddle > 0 == atEdge);

    private static int[] Chosen(bool any, int[] spread, params ReadOnlySpan<int> worst) =>
        any ? [.. new SortedSet<int>([.. spread, .. worst])] : [];

    private static int Worst(double[] figures) =>
        Ties.FirstLargest(Enumerable.Range(1, figures.Length - 2), i => figures[i]);

    private static int At(int k, int frames) => 1 + (int)((long)k * (frames - 1) / (Spread - 1));
}
