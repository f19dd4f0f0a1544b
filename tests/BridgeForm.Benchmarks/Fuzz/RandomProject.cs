using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>
/// A random project file that the reader takes: any of the definition's keys, values from their whole ranges, drawn anew
/// where the reader finds fault until it finds none.
/// </summary>
internal sealed class RandomProject
{
    private const int Rounds = 80;
    private const double ShareGiven = 0.25;
    private const double SmallestSpan = 0.92;

    // Most bridges are short: what goes wrong goes wrong there too, and thousands of them are built in the time of a long one.
    private const double UsualShare = 0.85;
    private const double UsualBays = 16;
    private const int ManyBays = 400;

    private static readonly string[] Always = ["name", "site.span", "frames.spacing"];
    private static readonly string[] Across = ["ropes.spacing", "frames.base.length", "frames.post.foot", "frames.brace.foot"];
    private static readonly string[] Often =
    [
        .. Across, "units", "site.rise", "ropes.sag", "ropes.type", "frames.stance", "frames.base.section", "frames.post.length",
        "frames.post.lean", "frames.brace.lean",
        "frames.channel.depth", "frames.channel.end_depth", "deck.layout", "deck.board.section", "guard.rails.count", "shop.tolerance",
    ];

    // What was measured of a bridge that stands, and what a quote costs, changes nothing of what is made; a survey contradicts every
    // span but its own; joints by chance hardly ever fit, and have random bridges of their own (RandomJointTests).
    private static readonly List<(string Path, KeySpec Spec)> Leaves =
    [
        .. Below(ProjectKeys.Root, "").Where(l => !l.Path.StartsWith("as_built", StringComparison.Ordinal)
            && !l.Path.StartsWith("quote", StringComparison.Ordinal) && !l.Path.StartsWith("site.survey", StringComparison.Ordinal)
            && !l.Path.StartsWith("joints", StringComparison.Ordinal)),
    ];

    private readonly RandomText _text;
    private readonly int _mostBays;
    private readonly SortedDictionary<int, string> _values = [];

    private RandomProject(Random random, int mostBays)
    {
        (_text, _mostBays) = (new RandomText(random), mostBays);
        for (var i = 0; i < Leaves.Count; i++)
        {
            var (path, spec) = Leaves[i];
            var share = Always.Contains(path) ? 1 : Often.Contains(path) ? 0.75 : IsOptional(path) ? ShareGiven / 4 : ShareGiven;
            if (_text.In(share))
            {
                _values[i] = Text(path, spec);
            }
        }

        Together(Always);
        if (_text.In(0.9))
        {
            Together(Across);
        }
    }

    /// <summary>The file of a seed; the same text for the same seed.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="mostBays">About the largest number of bays.</param>
    public static string Of(int seed, int mostBays)
    {
        var random = new Random(seed);
        while (true)
        {
            var project = new RandomProject(random, mostBays);
            for (var round = 0; round < Rounds; round++)
            {
                var (text, lines) = project.Written();
                var reading = ProjectReader.Read(text, "random.yaml", RopeTable.Catalogue);
                if (reading.Parameters is not null)
                {
                    return text;
                }

                project.Mend(reading.Faults.Select(f => lines[Math.Min(f.Line, lines.Count) - 1]).Distinct());
            }
        }
    }

    private static IEnumerable<(string Path, KeySpec Spec)> Below(KeySpec map, string above) => map.Keys.SelectMany(key =>
    {
        var path = above.Length == 0 ? key.Name : above + "." + key.Name;
        return key.Shape == KeyShape.Map ? Below(key, path) : [(path, key)];
    });

    // What would bring a whole mapping with it, or stands for files and names that must exist.
    private static bool IsOptional(string path) =>
        path.Contains("pickets") || path.Contains("handrail") ||
        path.Contains("backstay") || path.Contains("landing") || path.StartsWith("holes", StringComparison.Ordinal) || path == "prices";

    private static int At(string path) => Leaves.FindIndex(l => l.Path == path);

    private void Mend(IEnumerable<string> paths)
    {
        foreach (var path in paths)
        {
            var place = At(path);
            if (Always.Contains(path))
            {
                Together(Always);
            }
            else if (Across.Contains(path) && _text.In(0.5))
            {
                Together(Across);
            }
            else if (place < 0)
            {
                // A mapping above its keys: some of them go.
                foreach (
                    var key in _values.Keys.Where(k => Leaves[k].Path.StartsWith(path + ".", StringComparison.Ordinal) && _text.In(0.5))
                        .ToList())
                {
                    _values.Remove(key);
                }
            }
            else if (_text.In(0.5) || !_values.Remove(place))
            {
                _values[place] = Text(path, Leaves[place].Spec);
            }
        }
    }

    private void Together(string[] paths)
    {
        var half = _text.ByRatio(0.25, 2.5);
        var bays = _text.In(UsualShare) && _mostBays <= ManyBays ? _text.ByRatio(2, Math.Min(UsualBays, _mostBays)) : _text.ByRatio(
            _mostBays > ManyBays ? ManyBays : 2, _mostBays);
        var spacing = Math.Max(_text.In(0.8) ? _text.ByRatio(0.3, 2) : _text.ByRatio(0.11, 9), SmallestSpan / bays);
        var foot = half * _text.Between(0.2, 0.9);
        foreach (var path in paths)
        {
            _values[At(path)] = path switch
            {
                "site.span" => _text.Length(Math.Max(SmallestSpan, spacing * bays * _text.Between(0.9, 1))),
                "frames.spacing" => _text.Length(spacing),
                "frames.base.length" => _text.Length(2 * half),
                "frames.post.foot" => _text.Length(foot),
                "frames.brace.foot" => _text.Length(_text.In(0.1) ? half : _text.Between(foot, half)),
                "ropes.spacing" => _text.Length(2 * half * _text.Between(0.3, 0.9)),
                _ => "Random (invented)",
            };
        }

        if (_values.ContainsKey(At("frames.brace.foot")))
        {
            _values.Remove(At("frames.brace.length"));
        }
    }

    private string Text(string path, KeySpec spec) => path switch
    {
        "site.rise" => _text.Length(_text.Between(-4, 4)),
        "ropes.sag" => _text.Quantity(QuantityKind.Share, _text.In(0.7) ? _text.ByRatio(0.02, 0.12) : _text.ByRatio(0.0006, 0.3)),
        "frames.post.lean" or "frames.brace.lean" when _text.In(0.7) => _text.Quantity(QuantityKind.Angle, _text.Between(0, 0.4)),
        "shop.tolerance" => _text.Length(_text.ByRatio(1.001e-5, 5.99e-3)),
        "stock" => $"{{ treated: {_text.Flow(spec.Item!)}, cedar: {_text.Flow(spec.Item!)} }}",
        "species" => "{ own: " + _text.Flow(spec.Item!) + " }",
        "fasteners" =>
            "{ " + string.Join(", ", RoleTable.JointNames.Where(_ => _text.In(0.5)).Select(j => $"{j}: {_text.Of(spec.Item!)}")) + " }",
        _ => _text.Of(spec),
    };

    /// <summary>The text, and the path that each of its lines is about.</summary>
    private (string Text, List<string> Paths) Written()
    {
        var (lines, paths) = (new List<string>(), new List<string>());
        string[] open = [];
        foreach (var (place, value) in _values)
        {
            var parts = Leaves[place].Path.Split('.');
            var shared = open.TakeWhile((part, i) => i < parts.Length - 1 && parts[i] == part).Count();
            for (var depth = shared; depth < parts.Length; depth++)
            {
                var isLeaf = depth == parts.Length - 1;
                lines.Add(new string(' ', 2 * depth) + parts[depth] + ":" + (isLeaf ? " " + value : ""));
                paths.Add(string.Join('.', parts[..(depth + 1)]));
            }

            open = parts[..^1];
        }

        return (string.Join('\n', lines) + "\n", paths);
    }
}
