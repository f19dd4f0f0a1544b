using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>
/// Where one road from a file ends others are begun: strong ropes that hang flat or deep, with channels for their slope.
/// </summary>
/// <param name="judge">Looks at designs.</param>
/// <param name="levers">What can move.</param>
/// <param name="isFree">Whether a key may.</param>
internal sealed class OtherStarts(Judge judge, Levers levers, Func<string, bool> isFree)
{
    // Flat for those who ask for it, deep for those whose ropes break. Own figures.
    private static readonly double[] s_sags = [0.027, 0.033, 0.045, 0.067];
    private static readonly string[] s_stances = ["square", "plumb"];
    private const double MuchStronger = 2;
    private const int StrongRopes = 2;

    /// <summary>The starts, nearest to passing first.</summary>
    public IEnumerable<Judged> From(Judged from)
    {
        var ropes = levers.Moves(from, "ropes.type", Way.More, 1).Where(_ => isFree("ropes.type"))
            .Reverse().Take(StrongRopes).Prepend(from.Design).ToList();
        var sagging = isFree("ropes.sag")
            ? ropes.SelectMany(_ => s_sags, (rope, sag) => rope.With([new KeyChange("ropes.sag", QuantityText.Share(sag))])) : ropes;
        var upright = isFree("frames.stance")
            ? sagging.SelectMany(_ => s_stances, (design, stance) => design.With([new KeyChange("frames.stance", stance)])) : sagging;
        var looked = judge.LookAll([.. upright.Where(d => !d.IsSame(from.Design))]);
        return judge.LookAll([.. looked.Where(j => j.Figures is not null).Select(Deeper)]).Where(j => j.Figures is not null)
            .OrderBy(j => j.Violation);
    }

    private Design Deeper(Judged start) =>
        isFree("frames.channel.depth") && start.Shortfalls.Any(s => s.Id.StartsWith("channel-shallow", StringComparison.Ordinal))
            && levers.Moves(start, "frames.channel.depth", Way.More, MuchStronger).FirstOrDefault() is { } deep ? deep : start.Design;
}
