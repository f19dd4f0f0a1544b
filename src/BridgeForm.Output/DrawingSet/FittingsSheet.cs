using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Everything that is not wood in a table.</summary>
internal static class FittingsSheet
{
    /// <summary>The sheets.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        const string title = "Rope ends, keepers, fasteners";
        var flow = new TableFlow(context.Body);
        flow.Add(Hardware(context));
        foreach (var canvas in flow.Pages)
        {
            yield return new DrawnPage(DocumentType.List, title, "tables", canvas.Entities);
        }
    }

    private static FlowTable Hardware(DrawingContext context) => new(
        "Keepers, fasteners, rope ends",
        "All of the bridge. A count that is missing is not in the project file; joints between wood are for a licensed engineer.",
        [new("Item", 0.044), new("Qty", Figures: true), new("For", 0.040), new("Note", 0.118), new("Counted by", 0.036)],
        [
            .. context.Model.Hardware().Select(h => new FlowRow(
            [
                Item(h.Item), h.Quantity?.ToString(CultureInfo.InvariantCulture) ?? "", h.Where, h.Note, h.Source,
            ])),
        ]);

    /// <summary>Keys of the project file stay in the lists; on paper the part has its printed name.</summary>
    private static string Item(string item) => item is "Fasteners, packer"
        ? "Fasteners, " + RoleTable.Of(Role.Packer).Printed
        : item;
}

/// <summary>An eye made with U-bolt clips: turn-back, places of the clips and their saddles on the live part.</summary>
internal static class ClipDetail
{
    /// <summary>Height of a clip across both parts of the rope, in rope diameters; a sign for it, no maker's size.</summary>
    private const double ClipOver = 1.1;

    /// <summary>Half a clip along the rope, in rope diameters.</summary>
    private const double ClipHalf = 0.55;

    /// <summary>From the dead end to the first clip's middle, in rope diameters (common practice, no source: one clip's width).</summary>
    private const double FirstFromEnd = 2;

    /// <summary>Half the width of the eye, in rope diameters, and its length: a thimble's (common practice, no source).</summary>
    private const double EyeHalf = 1.6;
    private const double EyeLength = 5;

    /// <summary>The eye at the left, the live part running on to the right.</summary>
    public static Detail Draw(DrawingContext context, WireRopeClip clips)
    {
        var d = clips.Diameter;
        var box = new SheetBox(-EyeLength * d, -(ClipOver + 1) * d, clips.TurnBack + (6 * d), (ClipOver + 1) * d);
        var note = "all four ends alike; saddles on the live part, U-bolts on the dead end; tighten the clip farthest from the eye first, "
            + "load, tighten again; " + clips.Source;
        return new Detail(box, "Eye with clips", note, (canvas, map) =>
        {
            Rope(canvas, map, clips);
            Clips(canvas, map, context, clips);
        });
    }

    private static void Rope(Canvas canvas, ViewMap map, WireRopeClip clips)
    {
        var d = clips.Diameter;
        void Line(double x1, double y1, double x2, double y2) => canvas.Line(PageLayers.Cut, map.Of(x1, y1), map.Of(x2, y2));

        // Two parts side by side, the live one below; the eye opens to the left of the thimble's neck.
        Line(0, 0, clips.TurnBack + (6 * d), 0);
        Line(0, -d, clips.TurnBack + (6 * d), -d);
        Line(0, 0, clips.TurnBack, 0);
        Line(0, d, clips.TurnBack, d);
        Line(clips.TurnBack, 0, clips.TurnBack, d);
        foreach (var (half, into) in (ReadOnlySpan<(double, double)>)[(EyeHalf, EyeLength), (EyeHalf - 1, EyeLength - 1)])
        {
            const int steps = 24;
            var points = Enumerable.Range(0, steps + 1).Select(i => i * Math.PI / steps).Select(a =>
            {
                var (sin, cos) = Elementary.SinCos(a);

                // Round at the far end, drawn together towards the neck.
                var x = -into * d * sin;
                return map.Of(x, cos * d * (half < 1 ? half * sin : 1 + ((half - 1) * sin)));
            });
            canvas.Add(new SheetPolyline(PageLayers.Cut, [.. points.Select(p => new SheetVertex(p.X, p.Y))], Closed: false));
        }
    }

    private static void Clips(Canvas canvas, ViewMap map, DrawingContext context, WireRopeClip clips)
    {
        var (d, text) = (clips.Diameter, context.Text);
        var places = Places(clips);
        foreach (var x in places)
        {
            SheetPoint[] corners =
            [
                map.Of(x - (ClipHalf * d), -ClipOver * d), map.Of(x + (ClipHalf * d), -ClipOver * d),
                map.Of(x + (ClipHalf * d), ClipOver * d), map.Of(x - (ClipHalf * d), ClipOver * d),
            ];
            canvas.Add(new SheetArea(PageLayers.Note, [.. corners], 0));
            canvas.Add(new SheetPolyline(PageLayers.Cut, [.. corners.Select(c => new SheetVertex(c.X, c.Y))], Closed: true));

            // The saddle's thick foot lies on the live part.
            canvas.Add(new SheetArea(
                PageLayers.Note,
                [corners[0], corners[1], map.Of(x + (ClipHalf * d), -d), map.Of(x - (ClipHalf * d), -d)],
                1));
        }

        var low = map.Of(0, -(ClipOver + 1) * d).Y;
        SheetPoint Foot(double x) => map.Of(x, -ClipOver * d);
        for (var i = 1; i < places.Length; i++)
        {
            canvas.Level(Foot(places[i - 1]), Foot(places[i]), low - 0.004, text.Size(clips.Spacing));
        }

        var high = map.Of(0, (ClipOver + 1) * d).Y;
        canvas.Level(map.Of(0, d), map.Of(clips.TurnBack, d), high + 0.004, "turn-back " + text.Size(clips.TurnBack));
        var last = map.Of(places[^1], -ClipOver * d);
        canvas.Leader(
            last, new SheetPoint(last.X + 0.010, low - 0.014),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{clips.Count} clips for rope {clips.Size}, nuts {Torque(context.Text, clips.Torque)}"));
        var dead = map.Of(clips.TurnBack, d / 2);
        canvas.Leader(dead, new SheetPoint(dead.X + 0.010, dead.Y + 0.010), "dead end, seized");
    }

    /// <summary>The clip nearest to the dead end stands short of it, the others towards the eye; nearest to the eye first.</summary>
    internal static ImmutableArray<double> Places(WireRopeClip clips) =>
    [
        .. Enumerable.Range(0, clips.Count).Reverse()
            .Select(i => clips.TurnBack - (FirstFromEnd * clips.Diameter) - (i * clips.Spacing)),
    ];

    private static string Torque(DrawingText text, double newtonMetres) => text.Imperial
        ? NumberText.Rounded(newtonMetres / (Quantities.Units.PoundForce * Quantities.Units.MetresPerFoot), 0) + " lbf·ft"
        : NumberText.Rounded(newtonMetres, 0) + " N·m";
}
