namespace BridgeForm.Output.ScaleModel;

/// <summary>
/// The upper edge of the walls that the bridge stands on, metres: landings under the end frames, between them the ground line, kept
/// clear of ropes and bases.
/// </summary>
internal sealed class GroundLine
{
    // On the bed; common practice, no source.
    private const double Clear = 2e-3;
    private const double Beyond = 8e-3;
    private const double Step = 0.2e-3;
    private const double LevelBelow = 10e-3;
    private const double LowestWall = 3e-3;

    private readonly List<(double X, double Y)> _line = [];

    /// <summary>The line of a bridge.</summary>
    /// <param name="source">The bridge.</param>
    /// <param name="first">Box of the first frame as printed: from, to, level of its underside.</param>
    /// <param name="last">The same of the last one.</param>
    /// <param name="drop">By how much anything of the bridge hangs below the line from node to node.</param>
    /// <param name="tallest">Tallest wall that the bed takes.</param>
    public GroundLine(
        PrintSource source, (double From, double To, double Under) first, (double From, double To, double Under) last, double drop,
        double tallest)
    {
        var rules = source.Rules;
        var (clear, step) = (rules.OnBed(Clear), rules.OnBed(Step));
        var nodes = source.Model.Frames.Select(f => (f.Node.X, Y: f.Node.Y - drop - clear)).ToList();
        var ground = source.Model.Parameters.Site.Ground.Select(p => (p.X, p.Y)).ToList();
        IsGiven = ground.Count > 0;
        ground = IsGiven ? ground : [(0, nodes.Min(n => n.Y) - rules.OnBed(LevelBelow))];
        From = first.From - rules.OnBed(Beyond);
        To = last.To + rules.OnBed(Beyond);
        var (begin, end) = (first.To + (clear / 2), last.From - (clear / 2));
        _line.Add((From, first.Under));
        _line.Add((begin, first.Under));
        IEnumerable<double> inner = [begin + step, .. ground.Concat(nodes).Select(p => p.X), .. Crossings(ground, nodes), end - step];
        foreach (var x in inner.Where(x => x >= begin + step && x <= end - step).Distinct().Order())
        {
            _line.Add((x, Math.Min(At(ground, x), At(nodes, x))));
        }

        _line.Add((end, last.Under));
        _line.Add((To, last.Under));
        if (IsGiven)
        {
            LoweredUnder = Lower(ground, begin + step, end - step);
            LoweredAtLandings = Math.Max(Lower(ground, From, begin), Lower(ground, end, To));
        }

        var (lowest, highest) = (_line.Min(p => p.Y), _line.Max(p => p.Y));
        var wall = Math.Max(rules.OnBed(LowestWall), rules.Thinnest);
        Floor = Math.Max(lowest - wall, highest - tallest);
        IsCut = lowest - wall < Floor;
        for (var i = 0; i < _line.Count; i++)
        {
            _line[i] = _line[i] with { Y = Math.Max(_line[i].Y, Floor + wall) };
        }
    }

    /// <summary>Whether the file has a ground line.</summary>
    public bool IsGiven { get; }

    /// <summary>By how much it lies lower than the file's, at most, between the landings: to clear ropes and bases.</summary>
    public double LoweredUnder { get; }

    /// <summary>The same at the landings, which are as high as the undersides of the end frames.</summary>
    public double LoweredAtLandings { get; }

    /// <summary>The ground lies deeper in places than the bed is large.</summary>
    public bool IsCut { get; }

    /// <summary>Where it begins.</summary>
    public double From { get; }

    /// <summary>Where it ends.</summary>
    public double To { get; }

    /// <summary>Level of the walls' lower edge.</summary>
    public double Floor { get; }

    /// <summary>Levels of the landings.</summary>
    public (double A, double B) Landings => (_line[0].Y, _line[^1].Y);

    /// <summary>The line between two places.</summary>
    public IReadOnlyList<(double X, double Y)> Between(double from, double to) =>
        [(from, At(_line, from)), .. _line.Where(p => p.X > from && p.X < to), (to, At(_line, to))];

    // Both lines are straight between their corners: the most is at one of them.
    private double Lower(List<(double X, double Y)> ground, double from, double to) =>
        ground.Concat(_line).Select(p => p.X).Append(from).Append(to).Where(x => x >= from && x <= to)
            .Max(x => Math.Max(0, At(ground, x) - At(_line, x)));

    // Where one of two lines passes below the other.
    private static IEnumerable<double> Crossings(List<(double X, double Y)> one, List<(double X, double Y)> other)
    {
        var places = one.Concat(other).Select(p => p.X).Distinct().Order().ToList();
        foreach (var (from, to) in places.Zip(places.Skip(1)))
        {
            var (start, end) = (At(one, from) - At(other, from), At(one, to) - At(other, to));
            if (start * end < 0)
            {
                yield return from + ((to - from) * start / (start - end));
            }
        }
    }

    // Level beyond its ends.
    internal static double At(List<(double X, double Y)> line, double x)
    {
        if (x <= line[0].X)
        {
            return line[0].Y;
        }

        var next = line.FindIndex(p => p.X >= x);
        if (next < 0)
        {
            return line[^1].Y;
        }

        var (a, b) = (line[next - 1], line[next]);
        return a.Y + ((b.Y - a.Y) * (x - a.X) / (b.X - a.X));
    }
}
