using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>
/// Keeps a design off an edge: a brace's foot that stands beside a rope's channel by the thickness of a pencil line passes on paper,
/// and fails as it is built.
/// </summary>
/// <param name="judge">Looks at designs.</param>
/// <param name="isFree">Whether a key may move.</param>
internal sealed class Steadying(Judge judge, Func<string, bool> isFree)
{
    // What is set out by hand, to so much: common practice, no source.
    private static readonly string[] s_setOut = ["frames.brace.foot", "ropes.spacing"];
    private const double InchOff = Units.MetresPerInch / 8;
    private const double MetricOff = 0.003;
    private const int MostSteps = 6;
    private const int MostSweeps = 2;

    /// <summary>
    /// The design, or the nearest that passes as well when either is set out a little off. As it was where nothing near does.
    /// </summary>
    public Judged Steady(Judged passing)
    {
        var best = passing;
        // What is moved for one may take an edge to the other.
        for (var sweep = 0; sweep < MostSweeps; sweep++)
        {
            foreach (var path in s_setOut.Where(isFree))
            {
                best = IsSteady(best, path) ? best : Nearby(best, path).FirstOrDefault(j => j.Passes && IsSteady(j, path)) ?? best;
            }
        }

        return best;
    }

    private IEnumerable<Judged> Nearby(Judged judged, string path)
    {
        for (var step = 1; step <= MostSteps; step++)
        {
            yield return Off(judged, path, step * Written.Fine(judged.Parameters!.Units));
            yield return Off(judged, path, -step * Written.Fine(judged.Parameters!.Units));
        }
    }

    /// <summary>How far off, in words.</summary>
    public static string Off(UnitSystem units) => new QuantityText(units).Size(units == UnitSystem.Metric ? MetricOff : InchOff);

    /// <summary>Whether it passes as well where a value is set out a little off; true for what is not set out so.</summary>
    public bool IsSteady(Judged judged, string path)
    {
        if (!s_setOut.Contains(path, StringComparer.Ordinal))
        {
            return true;
        }

        var off = judged.Parameters!.Units == UnitSystem.Metric ? MetricOff : InchOff;
        return Off(judged, path, off).Passes && Off(judged, path, -off).Passes;
    }

    private Judged Off(Judged judged, string path, double metres)
    {
        var p = judged.Parameters!;
        var now = path is "ropes.spacing" ? p.Ropes.Spacing : p.Frames.Brace.Foot;
        return judge.Look(judged.Design.With([new KeyChange(path, new QuantityText(p.Units).Size(now + metres))]));
    }
}
