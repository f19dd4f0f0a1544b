using System.Collections.Immutable;
using BridgeForm.Checks.Timber;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>Sections of lumber, and how many of them.</summary>
internal sealed class TimberLevers(LeverContext context)
{
    // A ball of this size must not pass a guard's openings (IRC R312.1.3: 4 in); gaps come out a little smaller.
    private const double Ball = 4 * Units.MetresPerInch;
    private const double Gap = 0.9 * Ball;

    /// <summary>Every part's section, and numbers of rails and stringers.</summary>
    public IEnumerable<Lever> List()
    {
        yield return new Lever("frames.base.section", Base);
        yield return new Lever("frames.base.flat", (p, _, _) =>
            [[new KeyChange("frames.base.flat", p.Frames.Base.Flat ? "false" : "true")]]);
        yield return new Lever("frames.post.section", (p, way, ratio) => Others(
            p, p.Frames.Post.Stock, p.Frames.Post.Section, EitherWay, way, ratio, s => IsNoThicker(s, p))
            .Select(s => context.WithPost(p, s)));
        yield return new Lever("frames.brace.section", (p, way, ratio) => Others(
            p, p.Frames.Brace.Stock, p.Frames.Brace.Section, Area, way, ratio, s => IsNoThicker(s, p))
            .Select(s => context.WithBrace(p, s)));
        yield return new Lever("deck.board.section", (p, way, ratio) => Sections(
            p, "deck.board.section", p.Deck.BoardStock, p.Deck.Board, Flat, way, ratio));
        yield return new Lever("deck.stringer.section", (p, way, ratio) => p.Deck.Stringer is { } stringer
            ? Sections(p, "deck.stringer.section", stringer.Stock, stringer.Section, OnEdge, way, ratio) : []);
        yield return new Lever("deck.stringer.count", (p, way, _) => p.Deck.Stringer is { } stringer
            ? Count("deck.stringer.count", stringer.Count, way, least: 2) : []);
        yield return new Lever("deck.count", (p, _, _) =>
            p.Deck.Count is null ? [] : [[new KeyChange("deck.count", "auto")]]);
        yield return new Lever("deck.layout", Layout);
        yield return new Lever("guard.rails.section", Rails);
        yield return new Lever("guard.rails.count", (p, way, _) => p.Guard.RailHeights.IsEmpty && p.Guard.Net is null
            ? Count("guard.rails.count", p.Guard.RailCount, way, least: 1) : []);
        yield return new Lever("guard.pickets.section", (p, way, ratio) => p.Guard.Pickets is { } pickets
            ? Sections(p, "guard.pickets.section", pickets.Stock, pickets.Section, Flat, way, ratio) : []);
        yield return new Lever("guard.pickets.gap", (p, way, _) => p.Guard.Pickets is { } pickets && way == Way.Less && pickets.Gap > Gap
            ? [[new KeyChange("guard.pickets.gap", Written.Length(p.Units, Rounding.Down(Gap, Written.Fine(p.Units))))]] : []);
        yield return new Lever("guard.net.opening", (p, way, _) => p.Guard.Net is { } net && way == Way.Less
            && Rounding.Down(Gap * net.Opening / net.Passes, Written.Fine(p.Units)) is var mesh && mesh < net.Opening
            ? [[new KeyChange("guard.net.opening", Written.Length(p.Units, mesh))]] : []);
        yield return new Lever("guard.net.bottom", (p, way, _) => p.Guard.Net is { } net && way == Way.Less && net.Bottom > Gap
            ? [[new KeyChange("guard.net.bottom", Written.Length(p.Units, Rounding.Down(Gap, Written.Fine(p.Units))))]] : []);
        yield return new Lever("guard.handrail.height", Handrail);
        yield return new Lever("guard.handrail.diameter", (p, way, _) => p.Guard.Handrail is { IsRound: true } handrail
            && way == Way.More && handrail.Section.Width < ThickHandrail(p.Units) - Tolerances.RoundOff
            ? [[new KeyChange("guard.handrail.diameter", Written.Length(p.Units, ThickHandrail(p.Units)))]] : []);
        yield return new Lever("guard.shims", (p, way, _) => !p.Guard.Shims && way == Way.More
            ? [[new KeyChange("guard.shims", "true")]] : []);
        yield return new Lever("guard.cap.section", (p, way, ratio) => Sections(
            p, "guard.cap.section", p.Guard.CapStock, p.Guard.Cap, Flat, way, ratio));
    }

    // It stands on the base.
    private static bool IsNoThicker(Section section, BridgeParameters p) =>
        section.Thickness <= p.Frames.Base.Along + Tolerances.RoundOff;

    private static double OnEdge(Section s) => s.Thickness * s.Width * s.Width;

    // People push a post along the bridge too, where it is thin.
    private static double EitherWay(Section s) => Math.Min(OnEdge(s), Flat(s));

    private static double Flat(Section s) => s.Width * s.Thickness * s.Thickness;

    // Of those on which the ends of two boards lie without a look, and posts and braces as they do now.
    private static IEnumerable<ImmutableArray<KeyChange>> Base(BridgeParameters p, Way way, double ratio)
    {
        var (b, least) = (p.Frames.Base, p.Deck.Layout == DeckLayout.Along ? (2 * DeckBearing.BoardsIn(p.Units)) + p.Deck.ButtGap : 0);
        var bears = Math.Max(least, Math.Min(b.Along, Math.Max(p.Frames.Post.Section.Thickness, p.Frames.Brace.Section.Thickness)));
        return Others(
            p, b.Stock, b.Section, b.Flat ? Flat : OnEdge, way, ratio, s => (b.Flat ? s.Width : s.Thickness) > bears - Tolerances.RoundOff)
            .Select(s => ImmutableArray.Create(new KeyChange("frames.base.section", s.Name)));
    }

    // As many rails as fill the guard as before: openings are looked at with all else.
    private static IEnumerable<ImmutableArray<KeyChange>> Rails(BridgeParameters p, Way way, double ratio)
    {
        var (guard, count) = (p.Guard, p.Guard.RailCount);
        foreach (var section in Others(p, guard.RailStock, guard.Rail, Flat, way, ratio))
        {
            var change = new KeyChange("guard.rails.section", section.Name);
            var wanted = (int)Math.Ceiling(count * (guard.Rail.Width + Gap) / (section.Width + Gap));
            yield return guard.RailHeights.IsEmpty && guard.Net is null && wanted != count
                ? [change, new KeyChange("guard.rails.count", Written.Count(wanted))]
                : [change];
        }
    }

    // As thick as a hand closes around: Limits.HandrailDiameter.
    private static double ThickHandrail(UnitSystem units) => units == UnitSystem.Metric ? 0.05 : 2 * Units.MetresPerInch;

    // 34 to 38 in is asked for; a deck that leans makes it a little higher than it is square to the bases.
    private static IEnumerable<ImmutableArray<KeyChange>> Handrail(BridgeParameters p, Way way, double ratio)
    {
        var step = (p.Units == UnitSystem.Metric ? 0.02 : Units.MetresPerInch) * (way == Way.More ? 1 : -1);
        return p.Guard.Handrail is { } handrail
            ? [[new KeyChange("guard.handrail.height", Written.Length(p.Units, handrail.Height + step))]]
            :
            [
                [
                    new KeyChange("guard.handrail.diameter", Written.Length(p.Units, ThickHandrail(p.Units))),
                    new KeyChange("guard.handrail.height", p.Units == UnitSystem.Metric ? "900 mm" : "35 in"),
                ],
            ];
    }

    private static IEnumerable<ImmutableArray<KeyChange>> Layout(BridgeParameters p, Way way, double ratio) =>
        [[new KeyChange("deck.layout", p.Deck.Layout == DeckLayout.Along ? "across" : "along")]];

    private static IEnumerable<ImmutableArray<KeyChange>> Count(string path, int now, Way way, int least) =>
        Enumerable.Range(1, 2).Select(n => way == Way.More ? now + n : now - n).Where(n => n >= least)
            .Select(n => ImmutableArray.Create(new KeyChange(path, Written.Count(n))));

    private static IEnumerable<ImmutableArray<KeyChange>> Sections(
        BridgeParameters p, string path, string stock, Section now, Func<Section, double> strength, Way way, double ratio) =>
        Others(p, stock, now, strength, way, ratio).Select(s => ImmutableArray.Create(new KeyChange(path, s.Name)));

    // Stronger ones, those first that are strong enough by the ratio, lightest first; or lighter ones, heaviest first.
    internal static IEnumerable<Section> Others(
        BridgeParameters p, string stock, Section now, Func<Section, double> strength, Way way, double ratio,
        Func<Section, bool>? fits = null)
    {
        var on = Yard.Sections(p, stock).Where(s => fits?.Invoke(s) ?? true);
        return way == Way.More
            ? on.Where(s => strength(s) > strength(now) * (1 + Tolerances.SameLimit))
                .OrderBy(s => strength(s) < strength(now) * ratio).ThenBy(Area).ThenByDescending(strength)
            : on.Where(s => Area(s) < Area(now) * (1 - Tolerances.SameLimit)).OrderByDescending(Area).ThenByDescending(strength);
    }

    private static double Area(Section s) => s.Width * s.Thickness;
}
