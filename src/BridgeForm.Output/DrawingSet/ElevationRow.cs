using BridgeForm.Checks.Codes;
using BridgeForm.Output.Drawing;
using BridgeForm.Ropes;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Part of the elevation, with a table of frames, stations and levels below it.</summary>
internal sealed class ElevationRow : GeneralRow
{
    private const double AboveRoom = 0.013;
    private const double BelowRoom = 0.013;
    private const double TextPad = 0.0016;

    /// <summary>From the window's edge to the middle of a support's marker, and to lines that must clear it; metres.</summary>
    private const double ToMarker = 0.0035;
    private const double PastMarker = 0.0068;

    private readonly WholeViews _views;
    private readonly SheetBox _box;
    private readonly (string Head, Func<int, string> Of)[] _band;
    private readonly double[] _bandHeights;

    /// <summary>Figures stand upright where they are wider than the frames are apart.</summary>
    private readonly bool _upright;

    /// <summary>The elevation of some frames.</summary>
    public ElevationRow(DrawingContext context, WholeViews views, FrameRange range, DrawingScale scale)
        : base(context, range, scale)
    {
        _views = views;
        var (poses, text) = (context.Layout.Poses, context.Text);
        _band =
        [
            ("Frame", i => poses[i].Name),
            ("Station", i => text.Length(poses[i].Node.X)),
            ("Rope axis", i => text.Level(poses[i].Node.Y)),
            ("Walking surface", i => text.Level(Stations.DeckAt(context.Layout, i))),
        ];
        double[] widths =
            [.. _band.Select(b => Frames(range).Max(i => PageText.Width(b.Of(i), PageText.Small, bold: true)) + (2 * TextPad))];
        var closest = Frames(range).Skip(1).Min(i => poses[i].Node.X - poses[i - 1].Node.X) / scale.Ratio;
        _upright = widths.Max() > Math.Min(closest, 2 * WholeViews.Beyond / scale.Ratio);
        _bandHeights = _upright ? widths : [.. widths.Select(_ => PageText.Small + (2 * TextPad))];
        _box = Box();
    }

    /// <inheritdoc/>
    public override double Height =>
        AboveRoom + ((_box.MaxY - _box.MinY) / Scale.Ratio) + BelowRoom + _bandHeights.Sum() + 0.002 + Captions.Height + 0.004;

    /// <inheritdoc/>
    public override void Draw(Canvas canvas, SheetBox cell)
    {
        var (left, top) = (cell.MinX + LeftRoom, cell.MaxY);
        var bottom = top - AboveRoom - ((_box.MaxY - _box.MinY) / Scale.Ratio);
        var map = ViewMap.Placing(_box, left, bottom, Scale.Ratio);
        var fine = (MaxX - MinX) / Scale.Ratio / (Range.Last - Range.First) < 0.012;
        canvas.Draw(_views.Side, map, PageLayers.Dim, fine ? PageLayers.Dim : PageLayers.Note, _box);
        Site.Draw(canvas, Context, map, _box);
        Rope(canvas, map);
        Overall(canvas, map, top - 0.004);
        MatchLines(canvas, map, bottom, top - AboveRoom + 0.004);
        var y = Band(canvas, map, bottom - BelowRoom);
        var words = Context.Text.Words;
        var bays = Context.Layout.Bays;
        var chord = Dimensions.Distance(Point(0), Point(1));
        var name = IsWhole ? "Elevation" : $"Elevation, {Names}";
        canvas.Caption(
            canvas.Bounds.MinX,
            y - 0.002,
            name,
            FormattableString.Invariant($"{bays} bays, {words.Size(chord)} from node to node at A; seen from the right-hand side; ropes ")
                + "along their true curve (axis chain-dotted)",
            Scale,
            Context.Text);
    }

    private static IEnumerable<int> Frames(FrameRange range) => Enumerable.Range(range.First, range.Last - range.First + 1);

    private SheetPoint Point(int frame) => new(Context.Layout.Poses[frame].Node.X, Context.Layout.Poses[frame].Node.Y);

    /// <summary>What is seen between the row's ends, ground included.</summary>
    private SheetBox Box()
    {
        var window = new SheetBox(MinX, double.MinValue / 4, MaxX, double.MaxValue / 4);
        var box = SheetBox.Empty;
        foreach (var line in _views.Side)
        {
            if (ViewLines.Clip(line.From, line.To, window) is { } cut)
            {
                box = box.With(cut.From.X, cut.From.Y).With(cut.To.X, cut.To.Y);
            }
        }

        foreach (var y in Site.Levels(Context, MinX, MaxX))
        {
            box = box.With(MinX, y);
        }

        return new SheetBox(MinX, box.MinY, MaxX, box.MaxY);
    }

    /// <summary>The axis of the rope through its channels, the line from support to support, and the sag.</summary>
    private void Rope(Canvas canvas, ViewMap map)
    {
        var rope = Context.Model.Rope;
        var curve = rope.Curve(4).Where(p => p.X >= _box.MinX && p.X <= _box.MaxX).Select(p => map.Of(p.X, p.Y));
        canvas.Add(new SheetPolyline(PageLayers.Layout, [.. curve.Select(p => new SheetVertex(p.X, p.Y))], Closed: false));
        var (a, b) = (rope.Nodes[0], rope.Nodes[^1]);
        if (ViewLines.Clip(new SheetPoint(a.X, a.Y), new SheetPoint(b.X, b.Y), _box) is { } chord)
        {
            canvas.Line(PageLayers.Dim, map.Of(chord.From), map.Of(chord.To));
        }

        Supports(canvas, map, a, b);
        var middle = (a.X + b.X) / 2;
        if (middle > Point(Range.First).X && middle <= Point(Range.Last).X)
        {
            var low = map.Of(middle, rope.HeightAt(middle));
            var high = map.Of(middle, (a.Y + b.Y) / 2);
            canvas.Between(low, high, 0, "sag " + Context.Text.Length(rope.Sag));
        }

        Guard(canvas, map);
        Slopes(canvas, map);
    }

    private void Supports(Canvas canvas, ViewMap map, RopePoint a, RopePoint b)
    {
        foreach (var (point, name, side, here) in (ReadOnlySpan<(RopePoint, string, int, bool)>)[(a, "A", -1, AtA), (b, "B", 1, AtB)])
        {
            if (here)
            {
                var at = map.Of(point.X, point.Y);
                canvas.Add(new SheetCircle(PageLayers.Cut, at, 0.0007));
                var marker = new SheetPoint(map.Of(point.X + (side * WholeViews.Beyond), 0).X + (side * ToMarker), at.Y);
                canvas.Marker(marker, name);
            }
        }
    }

    /// <summary>Height of the guard where it is least, in the row that shows the place.</summary>
    private void Guard(Canvas canvas, ViewMap map)
    {
        var least = GuardPlace.Least(Context.Layout);
        var frame = Context.Layout.Poses.Select(p => p.Name).ToList().IndexOf(least.Frame);
        if (frame >= Range.First && (frame < Range.Last || (AtB && frame == Range.Last)))
        {
            canvas.Between(
                map.Of(least.X, least.Deck), map.Of(least.X, least.Cap), 0, "least guard " + Context.Text.LeastSize(least.Height));
        }
    }

    private void Slopes(Canvas canvas, ViewMap map)
    {
        var (first, last) = Context.Model.Rope.EndSlopes();
        var bays = Context.Layout.Bays;
        if (AtA)
        {
            Slope(canvas, map, 0, 1, first);
        }

        if (AtB)
        {
            Slope(canvas, map, bays, bays - 1, last);
        }
    }

    private void Slope(Canvas canvas, ViewMap map, int end, int inner, double slope)
    {
        var at = map.Of((Point(end).X + Point(inner).X) / 2, (Point(end).Y + Point(inner).Y) / 2);
        // Below the rope on the side where it is the higher: there is nothing else.
        var left = slope < 0;
        var words = (inner < end ? "last bay " : "first bay ") + DrawingText.Slope(slope);
        canvas.Leader(at, new SheetPoint(at.X + ((left ? -1 : 1) * 0.007), at.Y - 0.009), words, left);
    }

    private void Overall(Canvas canvas, ViewMap map, double y)
    {
        var (first, last) = (Point(Range.First), Point(Range.Last));
        var text = IsWhole ? "span " + Context.Text.Length(last.X - first.X) : $"{Names}: {Context.Text.Length(last.X - first.X)}";
        canvas.Level(map.Of(first), map.Of(last), y, text);
        var rise = Context.Layout.Parameters.Site.Rise;
        if (AtB && Math.Abs(rise) > 0)
        {
            // Beside the marker of B, which stands at the upper or lower end.
            var x = map.Of(MaxX, 0).X + PastMarker;
            var (a, b) = (new SheetPoint(x, map.Of(0, 0).Y), new SheetPoint(x, map.Of(0, rise).Y));
            canvas.Upright(
                rise > 0 ? a : b, rise > 0 ? b : a, x + 0.005, $"{DrawingText.RiseWord(rise)} {Context.Text.Length(Math.Abs(rise))}");
        }
    }

    private SheetText InBand(double x, double y, string text, bool bold) => _upright
        ? PageText.Left(x + (PageText.Small / 2), y, text, PageText.Small, bold) with { Turn = Math.PI / 2 }
        : PageText.Centered(x, y, text, PageText.Small, bold);

    private double Band(Canvas canvas, ViewMap map, double top)
    {
        var (left, right) = (canvas.Bounds.MinX, map.Of(MaxX, 0).X);
        var y = top;
        for (var row = 0; row < _band.Length; row++)
        {
            canvas.Line(PageLayers.Dim, left, y, right, y);
            canvas.Text(
                PageText.Left(
                    left + 0.001, y - (_bandHeights[row] / 2) - (PageText.Small / 2), _band[row].Head, PageText.Small, bold: true));
            foreach (var i in Frames(Range))
            {
                canvas.Text(InBand(map.Of(Point(i)).X, y - _bandHeights[row] + TextPad, _band[row].Of(i), bold: row == 0));
            }

            y -= _bandHeights[row];
        }

        canvas.Line(PageLayers.Dim, left, y, right, y);
        foreach (var i in Frames(Range))
        {
            var x = map.Of(Point(i)).X;
            canvas.Line(PageLayers.Dim, x, top, x, top + 0.0025);
        }

        return y;
    }
}
