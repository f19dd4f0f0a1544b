using BridgeForm.Checks.Codes;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Part of the elevation, with a table of frames, stations and levels below it.</summary>
internal sealed class ElevationRow : GeneralRow
{
    private const double AboveRoom = 0.0195;
    private const double Below = 0.013;

    /// <summary>More where the least clearances of all cases are told. Metres.</summary>
    private const double ForChecks = 0.005;

    private double BelowRoom => Below + (IsOverSite ? ForChecks : 0);

    private bool IsOverSite => Context.Layout.Parameters.Site is { Ground.IsEmpty: false } or { Water: not null };
    private const double TextPad = 0.0016;

    /// <summary>From the row's upper edge to the dimension of the span, below the supports' letters; metres.</summary>
    private const double ToSpan = 0.0085;

    private readonly SheetBox _box;
    private readonly (string Head, Func<int, string> Of)[] _band;
    private readonly double[] _bandHeights;

    /// <summary>Figures stand upright where they are wider than the frames are apart.</summary>
    private readonly bool _upright;

    /// <summary>The elevation of some frames.</summary>
    public ElevationRow(DrawingContext context, WholeViews views, FrameRange range, DrawingScale scale)
        : base(context, views, range, scale)
    {
        var (poses, text) = (context.Layout.Poses, context.Text);
        (string Head, Func<int, string> Of) names = ("Frame", i => poses[i].Name);
        (string Head, Func<int, string> Of)[] all =
        [
            names,
            ("Station", i => text.Length(poses[i].Node.X)),
            ("Rope axis", i => text.Level(poses[i].Node.Y)),
            ("Walking surface", i => text.Level(Stations.DeckAt(context.Layout, i))),
        ];
        var closest = Frames(range).Skip(1).Min(i => poses[i].Node.X - poses[i - 1].Node.X) / scale.Ratio;
        double Widest(Func<int, string> of) =>
            Frames(range).Max(i => PageText.Width(of(i), PageText.Small, bold: true)) + (2 * TextPad);
        HasLevels = all.Max(b => Widest(b.Of)) <= closest;
        _band = HasLevels ? all : [names];
        _upright = Widest(names.Of) > closest;
        _bandHeights = _upright ? [Widest(names.Of)] : [.. _band.Select(_ => PageText.Small + (2 * TextPad))];
        _box = Box();
    }

    /// <summary>Stations and levels have room below the frames; else they stand in a table.</summary>
    public bool HasLevels { get; }

    /// <inheritdoc/>
    public override double Height =>
        AboveRoom + ((_box.MaxY - _box.MinY) / Scale.Ratio) + BelowRoom + _bandHeights.Sum() + 0.004
            + (IsCaptionBeside ? 0 : 0.002 + Captions.HeightOf(Note, BelowWidth));

    /// <summary>Room of the caption below the drawing, beside the key plan where there is one.</summary>
    private double BelowWidth => Context.Body.MaxX - Context.Body.MinX - (IsWhole ? 0 : 0.070);

    /// <summary>Room to the right of the drawing and its dimensions, metres.</summary>
    private double BesideWidth
    {
        get
        {
            const double dimensions = 0.030;
            var body = Context.Body;
            return body.MaxX - body.MinX - LeftRoom - ((MaxX - MinX) / Scale.Ratio) - dimensions;
        }
    }

    /// <summary>A steep bridge is drawn larger where its caption does not stand below it.</summary>
    private bool IsCaptionBeside
    {
        get
        {
            const double least = 0.070;
            return IsWhole && BesideWidth >= least;
        }
    }

    /// <inheritdoc/>
    public override void Draw(Canvas canvas, SheetBox cell)
    {
        var (left, top) = (cell.MinX + LeftRoom, cell.MaxY);
        var bottom = top - AboveRoom - ((_box.MaxY - _box.MinY) / Scale.Ratio);
        var map = ViewMap.Placing(_box, left, bottom, Scale.Ratio);
        var fine = (MaxX - MinX) / Scale.Ratio / (Range.Last - Range.First) < 0.012;
        canvas.Draw(Views.Side, map, PageLayers.Dim, fine ? PageLayers.Dim : PageLayers.Note, _box);

        // What has its place goes first, so that labels keep clear of it.
        var y = Band(canvas, map, bottom - BelowRoom);
        if (IsCaptionBeside)
        {
            var note = Captions.HeightOf(Note, BesideWidth);
            Caption(canvas, canvas.Bounds.MaxX - BesideWidth, y + note, BesideWidth);
        }
        else
        {
            Caption(canvas, canvas.Bounds.MinX, y - 0.002, BelowWidth);
        }

        Letters(canvas, map, top - Markers.Radius - 0.0002);
        SectionMarks(canvas, map, top - ToSpan - 0.0065);
        KeyPlan(canvas, canvas.Bounds.MaxX, bottom - BelowRoom - _bandHeights.Sum() - 0.006);
        Site.Draw(canvas, Context, map, _box);
        foreach (var atB in Ends)
        {
            new EndDrawing(Context, atB).Draw(canvas, map, _box);
        }

        Rope(canvas, map);
        Overall(canvas, map, top - ToSpan);
        MatchLines(canvas, map, bottom, top - AboveRoom + 0.0004);
    }

    private string Note
    {
        get
        {
            var chord = Dimensions.Distance(Point(0), Point(1));
            return FormattableString.Invariant($"{Context.Layout.Bays} bays, {Context.Text.Words.Size(chord)} from node to node at A; ")
                + "seen from the right-hand side; ropes along their true curve (axis chain-dotted)"
                + (IsOverSite ? "; empty: the bridge as drawn; all cases: the least that the checks found, loaded and stretched" : "");
        }
    }

    private void Caption(Canvas canvas, double x, double top, double width)
    {
        var name = IsWhole ? "Elevation" : $"Elevation, {Names}";
        canvas.Caption(
            x,
            top,
            name,
            Note,
            Scale,
            Context.Text,
            width);
    }

    private static IEnumerable<int> Frames(FrameRange range) => Enumerable.Range(range.First, range.Last - range.First + 1);

    private SheetPoint Point(int frame) => new(Context.Layout.Poses[frame].Node.X, Context.Layout.Poses[frame].Node.Y);

    /// <summary>What is seen between the row's ends, ground included.</summary>
    private SheetBox Box()
    {
        var window = new SheetBox(MinX, double.MinValue / 4, MaxX, double.MaxValue / 4);
        var box = SheetBox.Empty;
        foreach (var line in Views.Side)
        {
            if (ViewLines.Clip(line.From, line.To, window) is { } cut)
            {
                box = box.With(cut.From.X, cut.From.Y).With(cut.To.X, cut.To.Y);
            }
        }

        foreach (var y in Site.Levels(Context, MinX, MaxX).Concat(Ends.SelectMany(b => new EndDrawing(Context, b).Levels)))
        {
            box = box.With(MinX, y);
        }

        // The sag is measured from the straight line between the supports, which may lie above all that a row shows.
        var nodes = Context.Model.Rope.Nodes;
        var (middle, chord) = ((nodes[0].X + nodes[^1].X) / 2, (nodes[0].Y + nodes[^1].Y) / 2);
        var high = middle > Point(Range.First).X && middle <= Point(Range.Last).X ? Math.Max(box.MaxY, chord) : box.MaxY;
        return new SheetBox(MinX, box.MinY, MaxX, high);
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

    /// <summary>Supports that the row shows: false for A, true for B.</summary>
    private IEnumerable<bool> Ends => (bool[])[.. AtA ? [false] : Array.Empty<bool>(), .. AtB ? [true] : Array.Empty<bool>()];

    /// <summary>The supports' letters at the heads of the lines through their points.</summary>
    private void Letters(Canvas canvas, ViewMap map, double y)
    {
        foreach (var atB in Ends)
        {
            var at = map.Of(Point(atB ? Context.Layout.Bays : 0));
            canvas.Add(new SheetCircle(PageLayers.Cut, at, 0.0007));
            canvas.Marker(new SheetPoint(at.X, y), atB ? "B" : "A");
        }
    }

    /// <summary>Where frames and bays are cut that have sheets of their own.</summary>
    private void SectionMarks(Canvas canvas, ViewMap map, double y)
    {
        var left = double.NegativeInfinity;
        foreach (var (frame, target) in DetailMarks.Frames(Context).Where(f => Shows(f.Frame)).OrderBy(f => f.Frame))
        {
            // Beside the frame: the lines of the sag and of the row's ends go up from frames themselves.
            var side = frame == Range.Last ? -1 : 1;
            var foot = map.Of(Head(frame));
            var mark = new SheetPoint(PastEnd(map, Math.Max(left, foot.X + (side * 2.2 * DetailMarks.Radius))), y);
            canvas.Line(PageLayers.Frame, foot.X, foot.Y + 0.0004, mark.X, mark.Y - DetailMarks.Radius);
            canvas.SheetMark(mark, target);
            left = mark.X + (2.6 * DetailMarks.Radius);
        }
    }

    /// <summary>Clear of the line that goes up from the row's last frame.</summary>
    private double PastEnd(ViewMap map, double x)
    {
        var end = map.Of(Point(Range.Last)).X;
        return Math.Abs(x - end) < 1.3 * DetailMarks.Radius ? end + (1.5 * DetailMarks.Radius) : x;
    }

    private bool Shows(int frame) => frame >= Range.First && (frame < Range.Last || (AtB && frame == Range.Last));

    /// <summary>The top of a frame's posts with their cap.</summary>
    private SheetPoint Head(int frame)
    {
        var (p, layout) = (Context.Layout.Parameters, Context.Layout);
        var up = layout.Levels[frame].Top + (p.Frames.Post.Length * Elementary.Cos(p.Frames.Post.Lean)) + p.Guard.Cap.Thickness;
        var at = layout.Poses[frame].At(0, up, 0);
        return new SheetPoint(at.X, at.Y);
    }

    /// <summary>Height of the guard where it is least, in the row that shows the place.</summary>
    private void Guard(Canvas canvas, ViewMap map)
    {
        var least = GuardPlace.Least(Context.Layout);
        var frame = Context.Layout.Poses.Select(p => p.Name).ToList().IndexOf(least.Frame);
        if (Shows(frame))
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
            var x = map.Of(MaxX, 0).X + 0.001;
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
            var free = double.NegativeInfinity;
            foreach (var i in Frames(Range))
            {
                // A name that would touch the one before it is left out: the table has all.
                var text = InBand(map.Of(Point(i)).X, y - _bandHeights[row] + TextPad, _band[row].Of(i), bold: row == 0);
                var box = PageBox.Of(text);
                if (box.MinX >= free)
                {
                    canvas.Text(text);
                    free = box.MaxX + (TextPad / 4);
                }
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
