using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.ShopSheets;

/// <summary>
/// Packers as a trade makes them, on the sheet of saw set-ups and as <c>strips.csv</c>: one taper at a time off wide stock, which is
/// cut to length after.
/// </summary>
internal static class StripSheet
{
    private static readonly ImmutableArray<string> s_head =
    [
        "Packers", "Number", "Stock", "Section", "Made by", "Tilt (deg)", "Thick edge", "Thick edge (mm)", "Thin edge", "Thin edge (mm)",
        "Width", "Width (mm)", "Order of rips", "Fence, blade tilted", "Fence, blade tilted (mm)", "Fence, blade upright",
        "Fence, blade upright (mm)", "Gap (mm)", "Boards of the stock plan", "Hold",
    ];

    /// <summary>Whether anything is ripped to a taper.</summary>
    public static bool Any(BridgeModel model) => model.Pieces.Any(StripPlan.IsRipped);

    /// <summary>A page for each set-up after those of the saw; nothing where nothing is ripped.</summary>
    public static void Add(TablePages pages, BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        foreach (var setup in StripPlan.List(model.Pieces, model.Parameters.Shop))
        {
            pages.BeginPage();
            pages.AddPicture(StripPicture.Draw(setup, words));
            pages.AddText(Steps(setup, model.Parameters.Shop.Saw, words));
            pages.Add(new PageTable(
                $"Strips at {Numbers.DegreeText(setup.Tilt)}, {words.Fine(setup.Thick)} at the thick edge: "
                    + $"{Counted(setup)}, {WayWords(setup.Way)}",
                [],
                ["Mark", "Qty", "Length", "Width", "Thin edge", "Fence, tilted", "Fence, upright", "Gap", "Boards of the stock plan"],
                [.. setup.Pieces.Select(p => Row(setup, p, model.StockPlan.Boards, words))]));
        }
    }

    /// <summary><c>strips.csv</c>: a row a mark.</summary>
    public static string Csv(BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        return CsvText.Write(
            s_head, StripPlan.List(model.Pieces, model.Parameters.Shop)
                .SelectMany(s => s.Pieces.Select(p => Row(s, p, model, words))));
    }

    private static ImmutableArray<string> Row(
        StripSetup setup, TaperedPiece tapered, IEnumerable<Stocking.PlannedBoard> boards, QuantityText words) =>
    [
        tapered.Piece.Mark,
        Count(tapered.Piece.Occurrences.Length),
        words.Size(tapered.Piece.BlankLength),
        words.Fine(tapered.Taper.Width),
        words.Fine(setup.ThicknessAt(tapered.Taper.Width)),
        setup.Way == RipWay.Hand ? "" : words.Fine(setup.TiltedFence),
        setup.UprightFence(tapered.Taper) is { } fence && setup.Way != RipWay.Hand ? words.Fine(fence) : "",
        Numbers.Gap(setup.Gap, DisplayUnits.For(words.Units)),
        Boards(tapered.Piece, boards),
    ];

    private static IReadOnlyList<string> Row(StripSetup setup, TaperedPiece tapered, BridgeModel model, QuantityText words)
    {
        var (piece, taper) = (tapered.Piece, tapered.Taper);
        double? tilted = setup.Way == RipWay.Hand ? null : setup.TiltedFence;
        var upright = setup.Way == RipWay.Hand ? null : setup.UprightFence(taper);
        return
        [
            piece.Mark, Count(piece.Occurrences.Length), CsvText.Users(piece.Stock), piece.Section, WayWords(setup.Way),
            CutDegrees(setup.Tilt), .. Both(setup.Thick, words), .. Both(setup.ThicknessAt(taper.Width), words),
            .. Both(taper.Width, words),
            setup.FromWide(taper) ? "tilted, then upright" : upright is null ? "tilted" : "upright, then tilted",
            .. Both(tilted, words), .. Both(upright, words), SawSetup.Millimetres(setup.Gap), Boards(piece, model.StockPlan.Boards),
            Hold(setup),
        ];
    }

    /// <summary>What is done, in order, a sentence each. Common practice, no source.</summary>
    private static IEnumerable<string> Steps(StripSetup setup, SawParameters saw, QuantityText words)
    {
        yield return "One taper at a time, the whole length of the stock, before anything is cut to length: cut off what other pieces the "
            + $"board holds first, and rip no length under {words.Either("12 in", "300 mm")}.";
        if (setup.Way == RipWay.Hand)
        {
            yield return $"None of shop.tools rips this: a table saw does to {words.Size(saw.TableDepth)} of width "
                + "(shop.table_saw), a band "
                + $"saw to {words.Size(saw.BandHeight)} (shop.band_saw). Have a joiner's shop rip it; or gauge both lines on ends "
                + "and edges, as the "
                + "template of the end grain shows (make --templates MARK), rip beside them by hand and plane to them.";
            yield break;
        }

        yield return $"Tilted: {Machine(setup.Way)} at {Numbers.DegreeText(setup.Tilt)}, away from the fence. The stock stands on its "
            + $"edge, a wide face on the fence; the strip comes off the other face, its thick edge down. Fence to the blade's near side at "
            + $"the table {words.Fine(setup.TiltedFence)}. The saw is as high as the strip is wide. Rip a scrap first and caliper it: "
            + $"{words.Fine(setup.Thick)} at the thick edge.";
        if (setup.Pieces.Any(p => setup.FromWide(p.Taper)))
        {
            yield return "Then upright: the stock lies flat on the face that has the strip, its far edge along the fence, the blade just "
                + "higher than the strip's thin edge. The strip comes free on the side away from the fence, never between fence and blade.";
        }

        if (setup.Pieces.Any(p => !setup.FromWide(p.Taper) && setup.UprightFence(p.Taper) is not null))
        {
            yield return "Where the stock is hardly wider than the shim: upright first, to the shim's width, its edge along the fence; "
                + "then tilted, right through.";
        }

        yield return "Hold: " + Hold(setup) + ".";
        yield return "The stock's edge is the shim's thick edge, its face the shim's lower one. "
            + (setup.Pieces.Any(p => setup.FromWide(p.Taper))
                ? "A second strip comes off the other edge of the same face, turned end for end, at the same settings"
                    + (setup.Pieces.Any(p => !setup.FromWide(p.Taper)) ? ", where the stock was left wide. " : ". ") : "")
            + "Cut to length last, with a square end against the stop.";
    }

    private static string Hold(StripSetup setup) => setup.Way switch
    {
        RipWay.Hand => "stock clamped to the bench",
        _ => "a fence as tall as the stock, feather boards before the blade, a push block behind"
            + (setup.NeedsCarrier ? "; the stock screwed to a straight carrier board, its thickness added to the fence" : ""),
    };

    private static string Boards(Piece piece, IEnumerable<Stocking.PlannedBoard> boards) => string.Join(
        " ",
        boards.Where(b => b.Pieces.Any(p => string.Equals(p.Mark, piece.Mark, StringComparison.Ordinal))).Select(b => Count(b.Number)));

    private static string[] Both(double? metres, QuantityText words) =>
        metres is { } m ? [words.Fine(m), Numbers.Fixed(m * 1000, 1)] : ["", ""];

    /// <summary>How many of what: packers and shims under caps come off one stick.</summary>
    internal static string Counted(StripSetup setup) => string.Join(", ", setup.Pieces.GroupBy(p => RoleTable.Of(p.Piece.Role)).Select(g =>
    {
        var count = g.Sum(p => p.Piece.Occurrences.Length);
        return $"{Count(count)} {(count == 1 ? g.Key.Printed : g.Key.Many)}";
    }));

    private static string WayWords(RipWay way) => way switch
    {
        RipWay.TableSaw => "table saw",
        RipWay.BandSaw => "band saw",
        RipWay.Hand => "no tool at hand",
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "No such way."),
    };

    private static string Machine(RipWay way) => way == RipWay.BandSaw ? "the band saw's table" : "the table saw's blade";

    private static string CutDegrees(double radians) => Numbers.Fixed(Numbers.Degrees(radians), 1);

    private static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);
}
