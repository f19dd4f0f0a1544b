using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;
using BridgeForm.Trials;

namespace BridgeForm.Proposals;

/// <summary>What can be moved about frames besides their sections: distances, heights, leans, channels.</summary>
internal sealed class FrameLevers(LeverContext context)
{
    private const double Degree = Math.PI / 180;

    // What fails by so much is not cured by a sixteenth of an inch.
    private const double MuchTooMuch = 1.5;

    // Nobody walks there, but a foot must not slip in. Own figure.
    private const double WidestSideGap = 1.5 * Units.MetresPerInch;

    private static readonly int[] s_bays = [1, 2, 3, 5];
    private static readonly double[] s_steps = [1, 2, 4, 8];

    /// <summary>Distances, heights, leans and channels.</summary>
    public IEnumerable<Lever> List()
    {
        yield return new Lever("frames.spacing", Spacing);
        yield return new Lever("frames.stance", Stance);
        yield return new Lever("frames.base.length", BaseLength);
        yield return new Lever("frames.post.length", (p, way, ratio) => Length(
            p, "frames.post.length", p.Frames.Post.Length, p.Frames.Post.Length * (ratio - 1), way));
        yield return new Lever("frames.post.foot", PostFoot);
        yield return new Lever("frames.post.lean", (p, way, _) => Angle(p, "frames.post.lean", p.Frames.Post.Lean, way));
        yield return new Lever("frames.brace.lean", (p, way, _) => Angle(p, "frames.brace.lean", p.Frames.Brace.Lean, way));
        yield return new Lever("frames.brace.foot", BraceFoot);
        yield return new Lever("frames.channel.depth", (p, way, ratio) => Fine(
            p, "frames.channel.depth", p.Frames.Channel.Depth, way, ratio));
        yield return new Lever(
            "frames.channel.end_depth", (p, way, ratio) => Fine(
                p, "frames.channel.end_depth", p.Frames.Channel.EndDepth, way, ratio));
        yield return new Lever("deck.side_gap", SideGap);
        yield return new Lever("frames.keeper.spread", (p, way, ratio) => Fine(
            p, "frames.keeper.spread", p.Frames.Keeper.Spread, way, ratio));
    }

    // A bay more or less: any spacing between gives the same frames.
    private static IEnumerable<ImmutableArray<KeyChange>> Spacing(BridgeParameters p, Way way, double ratio)
    {
        var length = p.Frames.Step == FrameStep.Plan ? p.Site.Span : SpanRules.RopeLength(p);
        var bays = (int)Math.Ceiling((length / p.Frames.Spacing) - Tolerances.RoundOff);
        var step = Written.Fine(p.Units);
        var jump = ratio > 1 ? Math.Max(1, (int)Math.Ceiling(bays * (Math.Min(ratio, 2) - 1))) : 1;
        foreach (var more in s_bays)
        {
            var count = way == Way.More ? bays + jump + more - 1 : bays - more;
            var spacing = count < 2 ? 0 : Rounding.Up(length / count, step);
            if (spacing >= Remedies.ShortestSpacing)
            {
                yield return [new KeyChange("frames.spacing", Written.Length(p.Units, spacing))];
            }
        }
    }

    // Plumb is more: more of a frame's height is between its neighbours' where the ropes are steep.
    private static IEnumerable<ImmutableArray<KeyChange>> Stance(BridgeParameters p, Way way, double ratio) =>
        p.Frames.Stance == Project.Stance.Square == (way == Way.More)
            ? [[new KeyChange("frames.stance", way == Way.More ? "plumb" : "square")]] : [];

    private static IEnumerable<ImmutableArray<KeyChange>> BaseLength(BridgeParameters p, Way way, double ratio) =>
        s_steps.Select(s => Moved(p, "frames.base.length", p.Frames.Base.Length, s * 2 * Written.Coarse(p.Units), way));

    private static IEnumerable<ImmutableArray<KeyChange>> Length(BridgeParameters p, string path, double now, double first, Way way) =>
        s_steps.Select(s => Moved(p, path, now, (way == Way.More ? Math.Max(0, first) : 0) + ((s - (first > 0 ? 1 : 0))
            * 2 * Written.Fine(p.Units)), way));

    // Wider between the posts: braces and bases follow.
    private IEnumerable<ImmutableArray<KeyChange>> PostFoot(BridgeParameters p, Way way, double ratio)
    {
        var by = way == Way.More ? Math.Max(Written.Fine(p.Units), p.Frames.Post.Foot * (ratio - 1)) : -2 * Written.Fine(p.Units);
        var step = Written.Fine(p.Units);
        foreach (var factor in s_steps)
        {
            var foot = Rounding.Up(p.Frames.Post.Foot + (by * factor), step);
            yield return
            [
                .. context.WithBase(p, foot, "frames.post.foot", Math.Max(0, 2 * by * factor)),
                .. context.BraceAlong(p, by * factor),
            ];
        }
    }

    // What the gaps between the boards are too wide by, or too narrow, goes to the sides.
    private static IEnumerable<ImmutableArray<KeyChange>> SideGap(BridgeParameters p, Way way, double ratio) =>
        s_steps.Select(s => p.Deck.SideGap + ((way == Way.More ? s : -s) * Written.Fine(p.Units) / 2))
            .Where(gap => gap >= 0 && gap <= WidestSideGap + Tolerances.RoundOff)
            .Select(gap => ImmutableArray.Create(new KeyChange("deck.side_gap", Written.Length(p.Units, gap))));

    private static IEnumerable<ImmutableArray<KeyChange>> BraceFoot(BridgeParameters p, Way way, double ratio) =>
        s_steps.Select(s => Moved(p, "frames.brace.foot", p.Frames.Brace.Foot, s * 2 * Written.Fine(p.Units), way));

    private static IEnumerable<ImmutableArray<KeyChange>> Fine(BridgeParameters p, string path, double now, Way way, double ratio) =>
        (ratio > MuchTooMuch ? s_steps.Skip(2) : s_steps).Select(s => Moved(p, path, now, s * Written.Finest(p.Units), way));

    private static IEnumerable<ImmutableArray<KeyChange>> Angle(BridgeParameters p, string path, double now, Way way) =>
        s_steps.Select(s => ImmutableArray.Create(new KeyChange(
            path, QuantityText.Degrees(Math.Max(0, Rounding.Steps(now, Degree) + (way == Way.More ? s : -s)) * Degree))));

    private static ImmutableArray<KeyChange> Moved(BridgeParameters p, string path, double now, double by, Way way)
    {
        var value = Math.Max(0, way == Way.More ? now + by : now - by);
        return [new KeyChange(path, Written.Length(p.Units, Rounding.Up(value, Written.Finest(p.Units))))];
    }
}
