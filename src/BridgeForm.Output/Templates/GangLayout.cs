using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>
/// How bases get their channels: those whose floors are cut level, of equal depth, clamped side by side, undersides up and crown down,
/// in one pass; those with sloped floors on a tilting sled. (Common practice, no source.)
/// </summary>
internal static class GangLayout
{
    /// <summary>Length of a base in the small plan, metres on paper.</summary>
    private const double PlanLength = 0.170;

    /// <summary>Width of a base in the small plan, metres on paper; and how many are drawn.</summary>
    private const double PlanWidth = 0.007;
    private const int MostDrawn = 8;

    /// <summary>Height of the true-size stick, metres.</summary>
    private const double StickHeight = 0.022;

    /// <summary>Wood drawn beyond the deepest place of a sloped floor, metres: the rest of the section says nothing.</summary>
    private const double WoodShown = 0.020;

    /// <summary>Room above the lines for the name of what they mark, metres.</summary>
    private const double NameRoom = 0.006;

    /// <summary>Plans, sticks and sled angles for all bases with channels.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="units">How lengths are written.</param>
    /// <param name="trueSize">Sticks are printed at true size; else what to mark on a batten with a tape: on sheets a stick is taped
    /// together from eight and more, and creeps.</param>
    public static IEnumerable<TemplateBlock> Draw(BridgeModel model, DisplayUnits units, bool trueSize = true)
    {
        var bases = model.Pieces.Where(p => !p.Shape.Channels.IsEmpty).ToList();
        foreach (var use in CutUse.Grouped(bases.Where(IsLevel), KeyOf))
        {
            yield return Plan(use, units, model.Parameters.Shop.RouterBit, trueSize);
        }

        foreach (var use in CutUse.Grouped(bases.Where(p => !IsLevel(p)), CutKeys.OfFeatures))
        {
            yield return Sled(use, units, model.Parameters.Shop.RouterBit);
        }

        foreach (var use in CutUse.Grouped(bases, StickKey))
        {
            yield return trueSize ? Stick(use, units) : BattenMarks(use, units);
        }
    }

    /// <summary>Passes side by side, and in depth no more than the bit's diameter each.</summary>
    public static (int Across, int Deep) Passes(Channel channel, double bit) =>
        (
            (int)Math.Ceiling((channel.Width / bit) - Tolerances.WholeRatio),
            (int)Math.Ceiling((channel.Depth / bit) - Tolerances.WholeRatio));

    /// <summary>
    /// A channel as a sled shows it, its floor level under the router: as deep as its deep mouth lies below the face's arris there,
    /// square to the floor. Depth · cos θ of a mouth, θ the floor's slope.
    /// </summary>
    public static Channel OnSled(Channel channel, double across)
    {
        var deep = channel.Depth + (Math.Abs(channel.FloorSlope) * across / 2);
        return channel with { Depth = deep * Elementary.Cos(Elementary.Atan(channel.FloorSlope)), FloorSlope = 0 };
    }

    private static bool IsLevel(Piece piece) => piece.Shape.Channels.All(c => ChannelFloors.IsCutLevel(c, piece.Shape));

    private static string KeyOf(Piece piece) =>
        StickKey(piece) + string.Concat(piece.Shape.Channels.Select(c => Tenth(c.Depth)));

    private static string StickKey(Piece piece) =>
        $"{piece.Shape.Channels[0].Face}|{Tenth(piece.BlankLength)}"
        + string.Concat(piece.Shape.Channels.Select(c => $"|{Tenth(c.Center)}:{Tenth(c.Width)}"))
        + string.Concat(piece.Shape.Holes.Select(h => $"|{Tenth(h.X)}"));

    private static string Tenth(double metres) => Numbers.Fixed(metres * 1000, 1);

    private static TemplateBlock Plan(CutUse use, DisplayUnits units, double bit, bool trueSize)
    {
        var piece = use.First;
        var count = use.Pieces.Sum(p => p.Occurrences.Length);
        var channel = piece.Shape.Channels[0];
        return new TemplateBlock(
            count == 1 ? $"One by itself: {use.Marks} · plan, not to scale"
                : FormattableString.Invariant($"Gang of {count}: {use.Marks} · plan, not to scale"),
            [
                .. use.Notes(units),
                (count == 1 ? $"Clamp it, {WrapAround.FaceName(channel.Face)} on top, crown down on the bench, so that it is up in "
                    + "service, "
                    : $"Clamp them side by side, {WrapAround.FaceName(channel.Face)} on top, faces flush, crown down on the bench, so that "
                    + "it is up in service, left ends flush against a batten. ")
                    + (count == 1 ? "between two scraps as wide that keep the router level. " : "")
                    + $"Mark center lines and knife lines "
                    + $"{(trueSize ? "from the true-size stick" : "from the batten that the layout stick's page "
                    + "marks")} across {(count == 1 ? "it" : "all of them")}, score the knife lines, rout against a straight-edge.",
                Routing(channel, bit, units),
                .. use.Pieces.Where(p => p.Shape.Channels.Any(c => Math.Abs(c.FloorSlope) > Tolerances.LevelFloor))
                    .Select(p => LevelWords(p, units)),
            ],
            [.. PlanEntities(piece, Math.Min(count, MostDrawn), count, units)]);
    }

    private static string LevelWords(Piece piece, DisplayUnits units)
    {
        var channel = piece.Shape.Channels.MaxBy(c => Math.Abs(c.FloorSlope))!;
        return $"Floors of {piece.Mark} slope by {Numbers.DegreeText(Elementary.Atan(Math.Abs(channel.FloorSlope)))}: cut level, as "
            + $"deep in the middle, they are out by {Numbers.Gap(ChannelFloors.OutOfLevel(channel, piece.Shape), units)} from "
            + $"arris to arris, of {Numbers.Gap(SawSettings.LoadedGap, units)} that is let pass.";
    }

    private static string Routing(Channel channel, double bit, DisplayUnits units)
    {
        var (across, deep) = Passes(channel, bit);
        var depth = FormattableString.Invariant(
            $"Depth stop {units.Length(channel.Depth)}. Bit {units.Length(bit)}: {across} passes side by side, {deep} in depth, ");
        return $"{depth}none deeper than the bit is wide; stay inside the knife lines, which lie {Fine(channel.Width / 2, units)} "
            + "each side of the center line.";
    }

    private static string Fine(double metres, DisplayUnits units) => new QuantityText(units.System).Fine(metres);

    private static IEnumerable<SheetEntity> PlanEntities(Piece piece, int drawn, int count, DisplayUnits units)
    {
        var scale = PlanLength / piece.BlankLength;
        var height = drawn * PlanWidth;
        for (var i = 0; i < drawn; i++)
        {
            yield return Ring(PageLayers.Cut, 0, i * PlanWidth, PlanLength, (i + 1) * PlanWidth);
        }

        yield return new SheetLine(PageLayers.Frame, new SheetPoint(-0.002, -0.003), new SheetPoint(-0.002, height + 0.003));
        if (drawn < count)
        {
            yield return PageText.Centered(
                PlanLength / 2, height + 0.002, FormattableString.Invariant($"and {count - drawn} more"), PageText.Small);
        }

        var previous = 0.0;
        for (var k = 0; k < piece.Shape.Channels.Length; k++)
        {
            var channel = piece.Shape.Channels[k];
            var (x, half) = (channel.Center * scale, channel.Width / 2 * scale);
            foreach (var line in (double[])[x - half, x, x + half])
            {
                yield return new SheetLine(PageLayers.Layout, new SheetPoint(line, -0.003), new SheetPoint(line, height + 0.003));
            }

            yield return new SheetDimension(
                PageLayers.Dim,
                new SheetPoint(previous, 0),
                new SheetPoint(x, 0),
                new SheetPoint(0, -0.009),
                PageText.Small,
                units.Length((x - previous) / scale));
            previous = x;
        }
    }

    private static TemplateBlock Sled(CutUse use, DisplayUnits units, double bit)
    {
        var piece = use.First;
        var channel = piece.Shape.Channels[0];
        var tilt = Elementary.Atan(channel.FloorSlope);
        var face = channel.Face;
        var across = new UnrolledStock(piece.Shape.Width, piece.Shape.Thickness).Across(face);
        var high = face is StockFace.MinusY ? piece.Shape.Width : piece.Shape.Thickness;
        double Floor(double cross) => channel.Depth + (channel.FloorSlope * cross);
        var shown = Math.Min(high, Math.Max(Floor(-across / 2), Floor(across / 2)) + WoodShown);
        ImmutableArray<SheetPoint> section =
        [
            new(-across / 2, shown), new(-across / 2, Floor(-across / 2)), new(across / 2, Floor(across / 2)), new(across / 2, shown),
        ];
        return new TemplateBlock(
            $"Sloped floors: {use.Marks} · section in a channel",
            [
                .. use.Notes(units),
                $"These take a tilting sled: set it to {Numbers.DegreeText(Math.Abs(tilt))}, so that the floor is level under the router; "
                    + $"{units.Length(Floor(-across / 2))} deep at one side, {units.Length(Floor(across / 2))} at the other, as drawn. "
                    + "Mark the high side before you clamp. Zero the router on the high arris of the face, where it runs; all depths below "
                    + "are from there, square to the floor, and the last passes cut only part of the way across.",
                Routing(OnSled(channel, across), bit, units),
            ],
            [
                new SheetPolyline(PageLayers.Cut, [.. section.Select(p => new SheetVertex(p.X, p.Y))], Closed: shown >= high),
                Ring(PageLayers.Hidden, -across / 2, 0, across / 2, shown),
                PageText.Centered(0, shown - 0.008, shown < high ? "wood goes on" : "wood", PageText.Small),
                PageText.Centered(0, shown + 0.002, $"floor {Numbers.DegreeText(Math.Abs(tilt))}, {CrossWords(face)}", PageText.Small),
            ]);
    }

    /// <summary>Which way the section is seen, so that the slope is not taken the wrong way round.</summary>
    private static string CrossWords(StockFace face) => face == StockFace.MinusY
        ? "face up to the right"
        : "edge 1 to the right";

    private static TemplateBlock Stick(CutUse use, DisplayUnits units)
    {
        var piece = use.First;
        return new TemplateBlock(
            $"Layout stick for {use.Marks}",
            [
                "True size. Glue on a batten; the zero end lies on the near (left) end of the base. Dashed: center line under the rope; "
                    + $"full: knife lines. {units.Length(piece.BlankLength)} long." + HoleWords(piece),
            ],
            [.. StickEntities(piece, units)]);
    }

    /// <summary>The same lines on a picture that is not to scale, with their distances from the near end.</summary>
    private static TemplateBlock BattenMarks(CutUse use, DisplayUnits units)
    {
        var piece = use.First;
        var scale = PlanLength / piece.BlankLength;
        var lines = piece.Shape.Channels.SelectMany(c => (StickLine[])
            [
                new(c.Center - (c.Width / 2), "knife line"), new(c.Center, "center, rope"), new(c.Center + (c.Width / 2), "knife line"),
            ])
            .Concat(HoleLines(piece).Select(g => new StickLine(
                g[0].X, "hole", string.Join(" and ", g.Select(h => units.Length(HoleRows.FromEdge(piece.Shape, h))))
                    + $" from {HoleRows.EdgeOf(g[0])}")))
            .OrderBy(l => l.At).ToList();
        return new TemplateBlock(
            $"Layout stick for {use.Marks} · to mark on a batten, not to scale",
            [
                "On a straight batten, from its left end, all with one steel tape hooked there: "
                    + string.Join("; ", lines.Select(l => $"{l.Name} {Fine(l.At, units)}{(l.Across.Length > 0 ? $" ({l.Across})" : "")}"))
                    + $"; right end {Fine(piece.BlankLength, units)}. The batten's left end lies on the base's left end. True "
                    + "size on a roll, or with make --templates all." + HoleWords(piece),
            ],
            [
                Ring(PageLayers.Cut, 0, 0, PlanLength, StickHeight / 2),
                .. lines.Select(l => new SheetLine(
                    l.Name is "knife line" ? PageLayers.Cut : l.Name is "hole" ? PageLayers.Drill : PageLayers.Layout,
                    new SheetPoint(l.At * scale, 0), new SheetPoint(l.At * scale, StickHeight / 2))),
            ]);
    }

    /// <summary>Bolts lie across the bases that are clamped side by side: their lines go round the arris first.</summary>
    private static string HoleWords(Piece piece) => piece.Shape.Holes.Any(h => h.Depth is null)
        ? " Lines of holes run across all bases, so that all are drilled on one line; those of bolts are squared round onto each wide face "
            + "once the bases are apart."
        : "";

    private sealed record StickLine(double At, string Name, string Across = "");

    /// <summary>Holes of one face at one place along the stick, side by side.</summary>
    private static IEnumerable<List<Hole>> HoleLines(Piece piece) => HoleRows.InOrder(piece.Shape)
        .GroupBy(h => (h.Face, Tenth(h.X)))
        .Select(g => g.ToList());

    private static IEnumerable<SheetEntity> StickEntities(Piece piece, DisplayUnits units)
    {
        yield return Ring(PageLayers.Cut, 0, 0, piece.BlankLength, StickHeight);
        yield return PageText.Left(0.002, 0.002, "left end", PageText.Small);
        yield return PageText.Right(piece.BlankLength - 0.002, 0.002, "right end", PageText.Small);
        foreach (var channel in piece.Shape.Channels)
        {
            foreach (var x in (double[])[channel.Center - (channel.Width / 2), channel.Center + (channel.Width / 2)])
            {
                yield return new SheetLine(PageLayers.Cut, new SheetPoint(x, 0), new SheetPoint(x, StickHeight - NameRoom));
            }

            yield return new SheetLine(
                PageLayers.Layout, new SheetPoint(channel.Center, 0), new SheetPoint(channel.Center, StickHeight - NameRoom));
            yield return PageText.Centered(
                channel.Center, StickHeight - NameRoom + 0.0015, "rope " + units.Length(channel.Center), PageText.Small,
                layer: PageLayers.Accent);
        }

        foreach (var hole in piece.Shape.Holes.DistinctBy(h => Tenth(h.X), StringComparer.Ordinal))
        {
            yield return new SheetLine(PageLayers.Drill, new SheetPoint(hole.X, 0), new SheetPoint(hole.X, StickHeight / 2));
            yield return PageText.Left(hole.X + 0.001, StickHeight * 0.3, "hole", PageText.Small);
        }
    }

    private static SheetPolyline Ring(string layer, double x1, double y1, double x2, double y2) =>
        new(layer, [new(x1, y1), new(x2, y1), new(x2, y2), new(x1, y2)], Closed: true);
}
