using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>
/// Where live load is worst for each thing that is asked: what a newton anywhere does is read from the tangent stiffness with
/// live load on the whole deck, and load lies wherever it adds. That is solved as any case is. Ropes that carry less are softer
/// and ask for shorter stretches, so the same is tried from the empty bridge; from the worse of both the stretches are looked
/// for once more where they ended up, for as long as that is worse.
/// </summary>
/// <remarks>
/// Frames and bays are asked one by one up to a limit, evenly spread ones of longer bridges, so that the cost stays in step
/// with the length: lines of influence change over a good part of the span. The place found worst is then asked by itself.
/// </remarks>
internal sealed class GoverningLoads(LoadCaseInput input, LoadPatterns patterns, Func<Loading, LoadCaseResult> solve)
{
    // Places asked on a long bridge: a place between two of them lies within a fiftieth of the span of one.
    private const int MostAsked = 24;

    // Each frame's own fall is solved on a bridge with no more frames; on a longer one those found worst and so many more.
    private const int EachSolved = 16;
    private const int FewSolved = 5;

    // The frame that falls furthest is not always the one that fell furthest at first: so many of them are looked at again.
    private const int Reconsidered = 3;

    // From each start so often at most, and again only where the last time moved it by more than this share.
    private const int MostRounds = 3;
    private const double WorthIt = 0.005;

    // Tilts that the lever makes larger by so much are looked for from more starts.
    private const double MuchLever = 1.6;

    private readonly ImmutableArray<RopePoint> _nodes = input.Design.Nodes;

    // Live load a metre of deck.
    private readonly double _perMetre = input.Loads.Live * input.ClearWidth;

    /// <summary>The worst cases, solved; none where nothing lies on the deck, or the full deck does not stand.</summary>
    /// <param name="full">Both ropes with live load on the whole deck, evenly.</param>
    /// <param name="empty">Both ropes of the empty bridge.</param>
    public IEnumerable<LoadCaseResult> Find(PairCase? full, PairCase? empty)
    {
        if (!(input.Loads.Live > 0) || Of(full) is not { } influence)
        {
            yield break;
        }

        if (Tension(full!, influence) is { } tension)
        {
            yield return solve(tension);
        }

        foreach (var fall in Falls(influence, Of(empty) ?? influence))
        {
            yield return fall;
        }

        PairInfluence?[] starts = [influence, Of(empty)];
        yield return Tilted(starts, new(MostTilted, Tilt, c => c.CrossSlope ?? double.PositiveInfinity, MostTilted));
        yield return Worst(starts, new(Steepest, Slope, c => Steepest(c.Pair!.Shape.Left)));
    }

    /// <summary>The frame that falls furthest, and those that come nearest to ground and water.</summary>
    private IEnumerable<LoadCaseResult> Falls(PairInfluence full, PairInfluence empty)
    {
        var (asked, falls) = Falls(empty);
        SortedSet<int> places =
        [
            .. empty.Frames <= EachSolved ? Spread(empty.Frames, EachSolved) : Spread(empty.Frames, FewSolved),
            asked[First(falls)], .. Lowest(asked, falls),
        ];
        var (askedFull, fallsFull) = Falls(full);
        var furthest = askedFull[First(fallsFull)];
        List<(int Place, LoadCaseResult Case)> all =
        [
            .. places.Select(i => (i, solve(Fall(empty, i)))),
            (furthest, solve(Fall(full, furthest))),
        ];
        const string FallsFurthest = "falls furthest";
        var (place, fall) = Worst(all, Fallen);
        yield return Named(fall, place, LoadCaseIds.MostFall, FallsFurthest, Furthest);
        if (OrOtherWood(fall, Fallen) is var dry && !ReferenceEquals(dry, fall))
        {
            yield return Named(dry, place, LoadCaseIds.MostFallDry, FallsFurthest, Furthest);
        }

        if (input.Underside is { Site.Ground.Length: > 1 } banks)
        {
            yield return Sunk([full, empty], all, new(
                LoadCaseIds.LeastGround, "comes nearest to the ground", banks,
                node => node.X >= banks.Site.Ground[0].X && node.X <= banks.Site.Ground[^1].X
                    ? node.Y - Clearance.Height(banks.Site.Ground, node.X)
                    : double.PositiveInfinity));
        }

        if (input.Underside is { Site.Water: not null } river)
        {
            yield return Sunk([full, empty], all, new(
                LoadCaseIds.LeastWater, "comes nearest to the water", river, node => node.Y));
        }
    }

    /// <summary>What there is to stay clear of.</summary>
    private sealed record Below(string Id, string What, Underside Underside, Func<RopePoint, double> Empty)
    {
        public (int Frame, double Room) Nearest(LoadCaseResult result) => Underside.Nearest(result, Id is LoadCaseIds.LeastWater);
    }

    // Where frames tilt, the lower end of a base lies lower than any rope: people on either half of the width bring it down.
    private LoadCaseResult Sunk(PairInfluence?[] starts, List<(int Place, LoadCaseResult Case)> all, Below below)
    {
        var ends = Worst(starts, new(Place, Load, Figure, Nearest));
        var (place, worst) = Worst([.. all, (Nearest(ends), ends)], Figure);
        return Named(OrOtherWood(worst, Figure), place, below.Id, below.What, Nearest);

        double Figure(LoadCaseResult c) => -below.Nearest(c).Room;

        int Nearest(LoadCaseResult c) => c.Pair is null ? 1 : below.Nearest(c).Frame;

        int Place(PairInfluence influence)
        {
            var asked = Spread(influence.Frames);
            var rooms = asked.ConvertAll(i => Tilted(influence.OfFall(i, below.Underside.Overhang)) - below.Empty(_nodes[i]));
            return asked[First(rooms)];
        }

        Loading Load(PairInfluence influence, int frame)
        {
            var line = influence.OfFall(frame, below.Underside.Overhang);
            return patterns.OnStretches(
                below.Id, patterns.Name(frame), [.. Side(line, DeckPart.Left), .. Side(line, DeckPart.Right)], LoadPatterns.Wood.Dry,
                input.Hottest);
        }
    }

    private (int Place, LoadCaseResult Case) Worst(List<(int Place, LoadCaseResult Case)> all, Func<LoadCaseResult, double> figure)
    {
        var (left, again) = (all.ToList(), new List<(int Place, LoadCaseResult Case)>());
        for (var i = 0; i < (_nodes.Length - 2 > EachSolved ? 1 : Reconsidered) && left.Count > 0; i++)
        {
            var next = Ties.FirstLargest(left, s => Figure(s.Case, figure));
            left.Remove(next);
            again.Add(Further(next, Fall, figure));
        }

        return Ties.FirstLargest(again, s => Figure(s.Case, figure));
    }

    private LoadCaseResult Named(LoadCaseResult worst, int place, string id, string what, Func<LoadCaseResult, int> where)
    {
        var frame = worst.Pair is null ? place : where(worst);
        var wood = patterns.IsDry(worst.Loading!) ? "dry" : "wet";
        var title = $"Live load where frame {patterns.Name(frame)} {what}, hottest, wood {wood}";
        return worst with { Id = id, Title = title, Loading = worst.Loading! with { Id = id, Title = title } };
    }

    // Wet wood pulls everything down; under people on a part of the deck dry wood holds the rest taut less.
    private LoadCaseResult OrOtherWood(LoadCaseResult found, Func<LoadCaseResult, double> figure) =>
        patterns.OtherWood(found.Loading!) is { } loading
            ? Ties.FirstLargest([found, solve(loading)], c => Figure(c, figure))!
            : found;

    // Places where ground and water come near, by the fall that is expected.
    private IEnumerable<int> Lowest(List<int> asked, List<double> falls)
    {
        if (input.Underside is { Site: { Ground.Length: > 1 } site })
        {
            var x = Ties.FirstLeast(
                Places(site.Ground), x => input.Design.HeightAt(x) - Clearance.Height(site.Ground, x) - Between(asked, falls, x));
            yield return NodeLoads.Nearest(_nodes, x)!.Value;
        }

        if (input.Underside is { Site.Water: not null })
        {
            yield return asked[First(falls.Select((fall, i) => fall - _nodes[asked[i]].Y).ToList())];
        }
    }

    /// <summary>
    /// One thing: where it is expected to be worst, what lies on the deck then, how bad it comes out, and where it came out worst.
    /// </summary>
    private sealed record Asked(
        Func<PairInfluence, int> Place,
        Func<PairInfluence, int, Loading> Load,
        Func<LoadCaseResult, double> Figure,
        Func<LoadCaseResult, int>? Worst = null);

    private static PairInfluence? Of(PairCase? pair) =>
        pair is null ? null : PairInfluence.Of(pair.Rope, pair.Spacing, pair.Loads, pair.Shape);

    // Where the weights' lever makes much of a tilt the lines at the shapes that were tried lead nowhere near the worst: then people
    // on one side of a stretch at A and on the other side of one at B, as long as that may be, are starts of their own.
    private LoadCaseResult Tilted(PairInfluence?[] starts, Asked asked)
    {
        var found = Worst(starts, asked);
        if (found.CrossSlope is not { } tilt || !(tilt > MuchLever * found.FirstOrderCrossSlope))
        {
            return found;
        }

        const string Title = "Live load on the left from A on and on the right as far as B, wood dry";
        var span = _nodes[^1].X;
        List<LoadCaseResult> tried =
        [
            .. from a in (double[])[0.25, 0.375, 0.5]
               from b in (double[])[0.5, 0.625, 0.75]
               select solve(Tilt(Title, [new(0, a * span, DeckPart.Left), new(b * span, span, DeckPart.Right)])),
        ];
        var worst = Ties.FirstLargest(tried, c => Figure(c, asked.Figure))!;
        var further = worst is { Pair: not null, RollsOver: false }
            ? Further((MostTilted(worst), worst), asked.Load, asked.Figure).Case
            : worst;
        return Ties.FirstLargest([found, further], c => Figure(c, asked.Figure))!;
    }

    // Each start goes its own way: the one that is worse at first need not be in the end. First at its own place, then, where that
    // is asked for, at the place that comes out worst.
    private LoadCaseResult Worst(PairInfluence?[] starts, Asked asked)
    {
        List<LoadCaseResult> all =
        [
            .. starts.OfType<PairInfluence>()
                .Select(line => (Line: line, Place: asked.Place(line)))
                .Select(s => Further((s.Place, solve(asked.Load(s.Line, s.Place))), asked.Load, asked.Figure).Case),
        ];
        if (asked.Worst is { } place)
        {
            all.AddRange(all.ToList()
                .Where(c => c is { Pair: not null, RollsOver: false })
                .Select(c => Further((place(c), c), asked.Load, asked.Figure).Case));
        }

        return Ties.FirstLargest(all, c => Figure(c, asked.Figure))!;
    }

    // Looked for again at the same place, from where the ropes hang now.
    private (int Place, LoadCaseResult Case) Further(
        (int Place, LoadCaseResult Case) from, Func<PairInfluence, int, Loading> load, Func<LoadCaseResult, double> figure)
    {
        var (worst, last) = (from.Case, from.Case);
        for (var round = 0; round < MostRounds && Of(last.Pair) is { } influence; round++)
        {
            last = solve(load(influence, from.Place));
            var (before, now) = (Figure(worst, figure), Figure(last, figure));
            worst = now > before ? last : worst;
            if (!(Math.Abs(now - before) > WorthIt * Math.Abs(before)))
            {
                break;
            }
        }

        return (from.Place, worst);
    }

    // What has no shape is worse than anything that has one.
    private static double Figure(LoadCaseResult result, Func<LoadCaseResult, double> figure) =>
        result.Pair is null ? double.PositiveInfinity : figure(result);

    /// <summary>Only where some of the load relieves the rope; else the whole deck is the worst, and listed.</summary>
    private Loading? Tension(PairCase full, PairInfluence influence)
    {
        var (a, b) = full.Shape.Left.EndTensions();
        var line = influence.OfTension(atB: Ties.IsLarger(b, a)).Aside(patterns.Eccentric);
        return line.Any(c => c < 0)
            ? patterns.OnStretches(
                LoadCaseIds.MostTension, "Live load where it pulls a rope hardest, coldest, wood wet", [.. Whole(line)],
                LoadPatterns.Wood.Wet, input.Coldest)
            : null;
    }

    private Loading Fall(PairInfluence influence, int frame) => patterns.OnStretches(
        LoadCaseIds.MostFall, patterns.Name(frame), [.. Whole(influence.OfFall(frame).Aside(patterns.Eccentric))],
        LoadPatterns.Wood.Wet, input.Hottest);

    private static int MostTilted(LoadCaseResult result)
    {
        var tilts = result.Pair!.Shape.Tilts;
        return Ties.FirstLargest(Enumerable.Range(1, tilts.Length - 2), i => Math.Abs(tilts[i]));
    }

    private int MostTilted(PairInfluence influence)
    {
        var asked = Spread(influence.Frames);
        return asked[First(asked.ConvertAll(i => Tilted(influence.OfTilt(i))))];
    }

    private Loading Tilt(PairInfluence influence, int frame)
    {
        var line = influence.OfTilt(frame);
        return Tilt(
            $"Live load on either side where frame {patterns.Name(frame)} tilts most, wood dry",
            [.. Side(line, DeckPart.Left), .. Side(line, DeckPart.Right)]);
    }

    private Loading Tilt(string title, ImmutableArray<LoadedStretch> stretches) => patterns.OnStretches(
        LoadCaseIds.MostTilt, title, stretches, LoadPatterns.Wood.Dry, input.ReferenceTemperature);

    private int Steepest(PairInfluence influence)
    {
        var asked = Spread(influence.Frames + 1).ConvertAll(i => i - 1);
        var steep = asked.ConvertAll(bay => Math.Abs(Steepened(bay, influence.OfSlope(bay).Aside(patterns.Eccentric))));
        return asked[First(steep)];
    }

    private Loading Slope(PairInfluence influence, int bay)
    {
        var line = influence.OfSlope(bay).Aside(patterns.Eccentric);
        var title = $"Live load where the deck from frame {patterns.Name(bay)} to {patterns.Name(bay + 1)} is steepest, wood dry";
        return patterns.OnStretches(
            LoadCaseIds.MostSlope, title, [.. Whole(Steepened(bay, line) > 0 ? line : Array.ConvertAll(line, c => -c))],
            LoadPatterns.Wood.Dry, input.ReferenceTemperature);
    }

    private (List<int> Asked, List<double> Falls) Falls(PairInfluence influence)
    {
        var asked = Spread(influence.Frames);
        return (asked, asked.ConvertAll(i => _perMetre * Extents.Sum(_nodes, influence.OfFall(i).Aside(patterns.Eccentric))));
    }

    // Halves of the width by themselves: both where either adds.
    private double Tilted(InfluenceLine line) => _perMetre / 2 * (
        Extents.Sum(_nodes, line.Aside(patterns.SideArm)) + Extents.Sum(_nodes, line.Aside(-patterns.SideArm)));

    // The steeper of what load can do up and down, from the empty bridge.
    private double Steepened(int bay, double[] line)
    {
        var (a, b) = (_nodes[bay], _nodes[bay + 1]);
        var empty = (b.Y - a.Y) / (b.X - a.X);
        var up = empty + (_perMetre * Extents.Sum(_nodes, line));
        var down = empty - (_perMetre * Extents.Sum(_nodes, Array.ConvertAll(line, c => -c)));
        return Ties.IsLarger(Math.Abs(up), Math.Abs(down)) ? up : down;
    }

    private IEnumerable<LoadedStretch> Whole(double[] line) => Extents.Positive(_nodes, line, DeckPart.Whole);

    private IEnumerable<LoadedStretch> Side(InfluenceLine line, DeckPart part) => Extents.Positive(
        _nodes, line.Aside(part == DeckPart.Left ? patterns.SideArm : -patterns.SideArm), part);

    private static double Fallen(LoadCaseResult result)
    {
        var fall = double.NegativeInfinity;
        foreach (var move in result.Moves)
        {
            fall = Math.Max(fall, -move.Y);
        }

        return fall;
    }

    private static int Furthest(LoadCaseResult result) =>
        Ties.FirstLargest(Enumerable.Range(1, result.Moves.Length - 2), i => -result.Moves[i].Y);

    private static double Steepest(RopeShape rope)
    {
        var steepest = 0.0;
        for (var i = 0; i + 1 < rope.Nodes.Length; i++)
        {
            var (a, b) = (rope.Nodes[i], rope.Nodes[i + 1]);
            steepest = Math.Max(steepest, Math.Abs((b.Y - a.Y) / (b.X - a.X)));
        }

        return steepest;
    }

    // Where the ropes or the ground bend.
    private IEnumerable<double> Places(ImmutableArray<GroundPoint> ground) => _nodes.Skip(1).Take(_nodes.Length - 2)
        .Select(n => n.X)
        .Concat(ground.Select(g => g.X))
        .Where(x => x >= ground[0].X && x <= ground[^1].X && x >= _nodes[1].X && x <= _nodes[^2].X)
        .DefaultIfEmpty(_nodes[_nodes.Length / 2].X);

    private double Between(List<int> asked, List<double> falls, double x)
    {
        var after = asked.FindIndex(i => _nodes[i].X >= x);
        if (after <= 0)
        {
            return after == 0 ? falls[0] : falls[^1];
        }

        var (a, b) = (_nodes[asked[after - 1]].X, _nodes[asked[after]].X);
        return falls[after - 1] + ((falls[after] - falls[after - 1]) * (x - a) / (b - a));
    }

    private static int First(List<double> figures) => Ties.FirstLargest(Enumerable.Range(0, figures.Count), i => figures[i]);

    /// <summary>1 … count, or so many of them evenly spread, both ends among them.</summary>
    private static List<int> Spread(int count, int most = MostAsked) => count <= most
        ? [.. Enumerable.Range(1, count)]
        : [.. Enumerable.Range(0, most).Select(i => 1 + (int)((long)i * (count - 1) / (most - 1)))];
}
