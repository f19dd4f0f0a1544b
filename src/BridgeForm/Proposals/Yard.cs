using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>What can be bought for a bridge: sections of each of its stocks, ropes.</summary>
internal static class Yard
{
    /// <summary>Sections on sale of a stock.</summary>
    public static ImmutableArray<Section> Sections(BridgeParameters parameters, string stock) => parameters.StockNamed(stock).Sections;

    /// <summary>For every section that is not on sale the smallest that is no smaller, else the largest.</summary>
    /// <param name="p">The bridge.</param>
    /// <param name="context">What goes along with another post or brace.</param>
    public static IEnumerable<KeyChange> Instead(BridgeParameters p, LeverContext context)
    {
        foreach (var (path, stock, section) in Unsold(p))
        {
            var sold = Sections(p, stock);
            // A base bears posts and braces over their whole thickness.
            var least = path is "frames.base.section" ? Math.Max(p.Frames.Post.Section.Thickness, p.Frames.Brace.Section.Thickness) : 0;
            var fits = sold.Where(o => o.Thickness >= least - Tolerances.RoundOff).ToList();
            var nearest = fits.Where(o => o.Thickness >= section.Thickness && o.Width >= section.Width).MinBy(Area)
                ?? fits.MaxBy(Area) ?? sold.MaxBy(Area);
            if (nearest is null)
            {
                continue;
            }

            var changes = path switch
            {
                "frames.post.section" => context.WithPost(p, nearest),
                "frames.brace.section" => context.WithBrace(p, nearest),
                _ => [new KeyChange(path, nearest.Name)],
            };
            foreach (var change in changes)
            {
                yield return change;
            }
        }
    }

    /// <summary>Sections that the bridge's stocks do not sell, with their keys.</summary>
    public static IEnumerable<(string Path, string Stock, Section Section)> Unsold(BridgeParameters p)
    {
        (string Path, string Stock, Section Section)[] all =
        [
            ("frames.base.section", p.Frames.Base.Stock, p.Frames.Base.Section),
            ("frames.post.section", p.Frames.Post.Stock, p.Frames.Post.Section),
            ("frames.brace.section", p.Frames.Brace.Stock, p.Frames.Brace.Section),
            ("deck.board.section", p.Deck.BoardStock, p.Deck.Board),
            ("guard.rails.section", p.Guard.RailStock, p.Guard.Rail),
            ("guard.cap.section", p.Guard.CapStock, p.Guard.Cap),
        ];
        (string Path, string Stock, Section Section)[] stringer =
            p.Deck.Stringer is { } s ? [("deck.stringer.section", s.Stock, s.Section)] : [];
        (string Path, string Stock, Section Section)[] handrail =
            p.Guard.Handrail is { IsRound: false } h ? [("guard.handrail.section", h.Stock, h.Section)] : [];
        (string Path, string Stock, Section Section)[] pickets =
            p.Guard.Pickets is { } sticks ? [("guard.pickets.section", sticks.Stock, sticks.Section)] : [];
        (string Path, string Stock, Section Section)[] cleats =
            p.Deck.Cleats is { } strips ? [("deck.cleats.section", strips.Stock, strips.Section)] : [];
        (string Path, string Stock, Section Section)[] newels =
            p.Guard.Newels is { } posts ? [("guard.newels.section", posts.Stock, posts.Section)] : [];
        return all.Concat(stringer).Concat(cleats).Concat(pickets).Concat(handrail).Concat(newels)
            .Where(a => !p.StockNamed(a.Stock).Sells(a.Section));
    }

    /// <summary>
    /// Ropes on sale, weakest first: those that the file lists, else those of the table of the same kind and coating as the one it has,
    /// in inches or in millimetres as that one is.
    /// </summary>
    public static ImmutableArray<RopeProperties> Ropes(RopeParameters ropes)
    {
        var listed = ropes.OnSale.Select(key => RopeTable.TryFind(key, out var rope) ? rope : null).OfType<RopeProperties>()
            .OrderBy(r => r.BreakingStrength).ToImmutableArray();
        return listed.IsEmpty ? Like(ropes.Rope) : listed;
    }

    private static ImmutableArray<RopeProperties> Like(RopeProperties rope)
    {
        var all = RopeTable.Groups.SelectMany(g => g.Ropes).ToList();
        return !all.Contains(rope) ? [] :
        [
            .. all.Where(r => r.Kind == rope.Kind && r.Galvanized == rope.Galvanized && IsMetric(r) == IsMetric(rope))
                .OrderBy(r => r.BreakingStrength),
        ];
    }

    private static bool IsMetric(RopeProperties rope) => rope.Name.EndsWith("-mm", StringComparison.Ordinal);

    private static double Area(Section section) => section.Width * section.Thickness;
}
