using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>
/// Where live load is worst for each thing that is asked: what a newton anywhere does is read from the tangent stiffness with
/// live load on the whole deck, and load lies wherever it adds. Each of these is then solved as any case is.
/// </summary>
/// <remarks>
/// Frames and bays are asked one by one up to a limit, evenly spread ones of longer bridges, so that the cost stays in step
/// with the length: lines of influence change over a good part of the span. The place found worst is then asked by itself.
/// </remarks>
internal sealed class GoverningLoads
{
    // Places asked on a long bridge: a place between two of them lies within a hundredth of the span of one.
    private const int MostAsked = 48;

    private readonly LoadCaseInput _input;
    private readonly LoadPatterns _patterns;
    private readonly PairInfluence _influence;
    private readonly ImmutableArray<RopePoint> _nodes;

    // Live load a metre of deck.
    private readonly double _perMetre;

    private GoverningLoads(LoadCaseInput input, LoadPatterns patterns, PairInfluence influence)
    {
        (_input, _patterns, _influence, _nodes) = (input, patterns, influence, input.Design.Nodes);
        _perMetre = input.Loads.Live * input.ClearWidth;
    }

    /// <summary>The worst places; none where nothing lies on the deck, or the full deck does not stand.</summary>
    /// <param name="input">What the cases are made from.</param>
    /// <param name="patterns">What lies where.</param>
    /// <param name="full">Both ropes with live load on the whole deck, evenly.</param>
    /// <param name="site">Ground and water.</param>
    public static IEnumerable<Loading> Find(LoadCaseInput input, LoadPatterns patterns, PairCase? full, SiteParameters? site) =>
        full is not null && input.Loads.Live > 0
        && PairInfluence.Of(full.Rope, full.Spacing, full.Loads, full.Shape) is { } influence
            ? new GoverningLoads(input, patterns, influence).All(full, site)
            : [];

    private IEnumerable<Loading> All(PairCase full, SiteParameters? site)
    {
        if (Tension(full) is { } tension)
        {
            yield return tension;
        }

        foreach (var fall in Falls(site))
        {
            yield return fall;
        }

        yield return Tilt();
        yield return Slope();
    }

    /// <summary>Only where some of the load relieves the rope; else the whole deck is the worst, and listed.</summary>
    private Loading? Tension(PairCase full)
    {
        var (a, b) = full.Shape.Left.EndTensions();
        var line = _influence.OfTension(atB: Ties.IsLarger(b, a)).Aside(_patterns.Eccentric);
        return line.Any(c => c < 0)
            ? On(LoadCaseIds.MostTension, "Live load where it pulls a rope hardest, coldest, wood wet", [Whole(line)],
                LoadPatterns.Wood.Wet, _input.Coldest)
            : null;
    }

    /// <summary>The frame that falls furthest, and those that come nearest to ground and water, each once.</summary>
    private IEnumerable<Loading> Falls(SiteParameters? site)
    {
        var asked = Spread(_influence.Frames);
        var falls = asked.ConvertAll(i => _perMetre * Extents.Sum(_nodes, Fall(i)));
        var worst = asked[First(falls)];
        var found = new HashSet<int> { worst };
        yield return Falling(LoadCaseIds.MostFall, $"Live load where frame {_patterns.Name(worst)} falls furthest", worst);
        if (site is { Ground.Length: > 1 })
        {
            var over = Places(site.Ground)
                .Select(x => (X: x, Room: _input.Design.HeightAt(x) - Clearance.Height(site.Ground, x) - Between(asked, falls, x)));
            if (NodeLoads.Nearest(_nodes, Ties.FirstLeast(over, o => o.Room).X) is { } low && found.Add(low))
            {
                yield return Falling(
                    LoadCaseIds.LeastGround, $"Live load that brings frame {_patterns.Name(low)} nearest to the ground", low);
            }
        }

        if (site is { Water: not null })
        {
            var deepest = asked[First(falls.Select((fall, i) => fall - _nodes[asked[i]].Y).ToList())];
            if (found.Add(deepest))
            {
                yield return Falling(
                    LoadCaseIds.LeastWater, $"Live load that brings frame {_patterns.Name(deepest)} nearest to the water", deepest);
            }
        }
    }

    private Loading Tilt()
    {
        var asked = Spread(_influence.Frames);
        var worst = asked[First(asked.ConvertAll(i => Tilted(_influence.OfTilt(i))))];
        var line = _influence.OfTilt(worst);
        var title = $"Live load on either side where frame {_patterns.Name(worst)} tilts most, wood dry";
        return On(
            LoadCaseIds.MostTilt, title,
            [Side(line, DeckPart.Left), Side(line, DeckPart.Right)], LoadPatterns.Wood.Dry, _input.ReferenceTemperature);
    }

    private Loading Slope()
    {
        var asked = Spread(_influence.Frames + 1).ConvertAll(i => i - 1);
        var steep = asked.ConvertAll(bay => Steepened(bay, _influence.OfSlope(bay).Aside(_patterns.Eccentric)));
        var worst = asked[First(steep.ConvertAll(s => Math.Abs(s)))];
        var line = _influence.OfSlope(worst).Aside(_patterns.Eccentric);
        var title = $"Live load where the deck from frame {_patterns.Name(worst)} to {_patterns.Name(worst + 1)} is steepest, wood dry";
        var up = Steepened(worst, line) > 0;
        return On(
            LoadCaseIds.MostSlope, title, [Whole(up ? line : Array.ConvertAll(line, c => -c))],
            LoadPatterns.Wood.Dry, _input.ReferenceTemperature);
    }

    private Loading Falling(string id, string title, int frame) =>
        On(id, title + ", hottest, wood wet", [Whole(Fall(frame))], LoadPatterns.Wood.Wet, _input.Hottest);

    private double[] Fall(int frame) => _influence.OfFall(frame).Aside(_patterns.Eccentric);

    // Halves of the width by themselves: both where either adds.
    private double Tilted(InfluenceLine line) => _perMetre / 2 * (
        Extents.Sum(_nodes, line.Aside(_patterns.SideArm)) + Extents.Sum(_nodes, line.Aside(-_patterns.SideArm)));

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
        _nodes, line.Aside(part == DeckPart.Left ? _patterns.SideArm : -_patterns.SideArm), part);

    private Loading On(
        string id, string title, IEnumerable<IEnumerable<LoadedStretch>> stretches, LoadPatterns.Wood wood, double temperature) =>
        _patterns.OnStretches(id, title, [.. stretches.SelectMany(s => s)], wood, temperature);

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
    private static List<int> Spread(int count) => count <= MostAsked
        ? [.. Enumerable.Range(1, count)]
        : [.. Enumerable.Range(0, MostAsked).Select(i => 1 + (int)((long)i * (count - 1) / (MostAsked - 1)))];
}
