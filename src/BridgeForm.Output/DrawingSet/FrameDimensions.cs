using BridgeForm.Checks.Codes;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Figures around the drawing of a frame.</summary>
internal sealed class FrameDimensions(DrawingContext context, int frame, FrameDrawing drawing)
{
    private readonly BridgeParameters _p = context.Layout.Parameters;
    private readonly BaseLevels _level = context.Layout.Levels[frame];
    private readonly DrawingText _text = context.Text;

    /// <summary>From the frame's outermost edge to the middle of the marks, metres.</summary>
    private const double FromFrame = 0.026;

    private double Deck => Top(context.Layout.Deck, _p.Deck.Thickness);

    private double Cap => Top(context.Layout.Caps, _p.Guard.Cap.Thickness);

    private PostParameters Post => _p.Frames.Post;

    /// <summary>Draws all of them.</summary>
    public void Draw(Canvas canvas, ViewMap map)
    {
        Below(canvas, map);
        Beside(canvas, map);
        Angles(canvas, map);
        Members(canvas, map);
        Widths(canvas, map);
        HeadCuts(canvas, map);
        Names(canvas, map);
        Net(canvas, map);
    }

    /// <summary>Netting, dashed, with its mesh.</summary>
    private void Net(Canvas canvas, ViewMap map)
    {
        foreach (var side in (Side[])[Side.Left, Side.Right])
        {
            if (drawing.Net(frame, side) is var (low, high))
            {
                canvas.Line(PageLayers.Hidden, map.Of(low), map.Of(high));
            }
        }

        if (drawing.Net(frame, Side.Left) is var (foot, top))
        {
            var at = map.Of((foot.X + top.X) / 2, (foot.Y + top.Y) / 2);
            canvas.Leader(at, at with { X = at.X + 0.006 }, "net, opening " + _text.Size(_p.Guard.Net!.Opening));
        }
    }

    /// <summary>Marks to the right that lead to the details.</summary>
    public void Enlarged(Canvas canvas, ViewMap map)
    {
        var (post, brace) = (Post, _p.Frames.Brace);
        var (sin, cos) = Elementary.SinCos(brace.Lean);
        (SheetPoint At, int Number, bool IsShown)[] places =
        [
            (
                map.Of(PostAxis.Head(post), _level.Top + (post.Length * Elementary.Cos(post.Lean))), DetailMarks.Head,
                DetailMarks.ShowsHead(context, frame, Role.Post)),
            (
                map.Of(brace.Foot - (brace.Length * sin), _level.Top + (brace.Length * cos)), DetailMarks.BraceHead,
                DetailMarks.ShowsHead(context, frame, Role.Brace)),
            (map.Of(brace.Foot, _level.Top), DetailMarks.Feet, true),
            (map.Of(_p.Ropes.Spacing / 2, _level.Bottom), DetailMarks.OfBase(context, frame), true),
        ];
        canvas.SheetMarks(
            map.Of(drawing.Box.MaxX, 0).X + FromFrame, [.. places.Where(p => p.IsShown).Select(p => (p.At, p.Number))]);
    }

    /// <summary>Cuts of heads that no detail shows.</summary>
    private void HeadCuts(Canvas canvas, ViewMap map)
    {
        var (post, brace) = (Post, _p.Frames.Brace);
        var (sin, cos) = Elementary.SinCos(brace.Lean);
        if (!DetailMarks.ShowsHead(context, frame, Role.Post))
        {
            var at = map.Of(PostAxis.Head(post), _level.Top + (post.Length * Elementary.Cos(post.Lean)));
            canvas.Leader(
                at, new SheetPoint(at.X + 0.012, at.Y + 0.002), $"head {DetailMarks.HeadCut(context, frame, Role.Post)}, follows the caps");
        }

        if (!DetailMarks.ShowsHead(context, frame, Role.Brace))
        {
            var at = map.Of(brace.Foot - (brace.Length * sin), _level.Top + (brace.Length * cos));
            canvas.Leader(
                at, new SheetPoint(at.X + 0.016, at.Y), "brace's head " + DetailMarks.HeadCut(context, frame, Role.Brace));
        }
    }

    private void Below(Canvas canvas, ViewMap map)
    {
        var (half, rope, brace) = (_p.Frames.Base.Length / 2, _p.Ropes.Spacing / 2, _p.Frames.Brace.Foot);
        SheetPoint At(double z) => map.Of(z, _level.Bottom);
        SheetPoint Top(double z) => map.Of(z, _level.Top);
        var y = At(0).Y - 0.007;
        canvas.LevelChain(y, [At(-half), At(-rope), At(0)], [_text.Size(half - rope), _text.Size(rope)]);
        canvas.LevelChain(
            y,
            [At(0), Top(Post.Foot), Top(brace), At(half)],
            [_text.Size(Post.Foot), _text.Size(brace - Post.Foot), _text.Size(half - brace)]);
        canvas.Level(At(-rope), At(rope), y - Dimensions.Row, "ropes " + _text.Size(2 * rope));
        canvas.Level(At(-half), At(half), y - (2 * Dimensions.Row), "base " + _text.Size(2 * half));
        canvas.Line(PageLayers.Layout, map.Of(0, _level.Bottom).X, y - 0.002, map.Of(0, _level.Bottom).X, map.Of(0, Deck).Y + 0.0012);
    }

    private void Beside(Canvas canvas, ViewMap map)
    {
        var box = drawing.Box;
        var left = map.Of(box.MinX, 0).X;
        var head = _level.Top + (Post.Length * Elementary.Cos(Post.Lean));
        var edge = -_p.Frames.Base.Length / 2;
        SheetPoint At(double n) => map.Of(edge, n);
        canvas.Upright(At(_level.Bottom), At(_level.Top), left - 0.008, _text.Size(_level.Top - _level.Bottom));
        canvas.Upright(At(_level.Top), map.Of(-PostAxis.Head(Post), head), left - 0.008, _text.Size(head - _level.Top));
        var cap = Cap;
        canvas.Upright(map.Of(-Post.Foot, Deck), map.Of(box.MinX, cap), left - 0.015, "deck to cap " + _text.Size(cap - Deck));
        canvas.Upright(
            map.Of(-_p.Ropes.Spacing / 2, 0), map.Of(box.MinX, cap), left - 0.022, "rope to cap " + _text.Size(cap));
    }

    /// <summary>
    /// n of the top of boards or caps at t = 0. They may lie aslant in the frame, as in every end frame on a slope: their
    /// thickness is square to them, and along n there is more of it.
    /// </summary>
    private double Top(BearingLine line, double thickness)
    {
        var pose = context.Layout.Poses[frame];
        var up = Vector3d.UnitZ.Cross(line.Direction(context.BayOf(frame)));
        return pose.Up.Dot(line.Points[frame] - pose.Node) + (thickness / pose.Up.Dot(up));
    }

    private void Angles(Canvas canvas, ViewMap map)
    {
        const double quarter = Math.PI / 2;
        var brace = _p.Frames.Brace;
        Lean(canvas, map, quarter);
        canvas.Angle(map.Of(brace.Foot, _level.Top), quarter, quarter + brace.Lean, 0.024, DrawingText.Angle(brace.Lean));
        canvas.Angle(map.Of(-brace.Foot, _level.Top), quarter - brace.Lean, quarter, 0.024, DrawingText.Angle(brace.Lean));
    }

    /// <summary>Inside the post, above the brace: the only place where nothing else is drawn.</summary>
    private void Lean(Canvas canvas, ViewMap map, double quarter)
    {
        var up = (_p.Frames.Brace.Length * Elementary.Cos(_p.Frames.Brace.Lean)) + 0.03;
        var z = Post.Foot + (Post.Section.Width / Elementary.Cos(Post.Lean)) + (up * Elementary.Tan(Post.Lean));
        canvas.Angle(map.Of(z, _level.Top + up), quarter - Post.Lean, quarter, 0.022, DrawingText.Angle(Post.Lean));
    }

    /// <summary>Lengths of post and brace, along them.</summary>
    private void Members(Canvas canvas, ViewMap map)
    {
        var (sin, cos) = Elementary.SinCos(Post.Lean);
        var foot = PostAxis.Foot(Post);
        var (from, to) = (map.Of(foot, _level.Top), map.Of(foot + (Post.Length * sin), _level.Top + (Post.Length * cos)));
        // Close to the rails: the room within is for the names of those on the left.
        var off = ((Post.Section.Width / 2) + _p.Guard.Rail.Thickness) / map.Ratio;
        canvas.Between(from, to, off + 0.004, "post " + _text.Size(Post.Length));
        var brace = _p.Frames.Brace;
        (sin, cos) = Elementary.SinCos(brace.Lean);
        canvas.Between(
            map.Of(brace.Foot, _level.Top),
            map.Of(brace.Foot - (brace.Length * sin), _level.Top + (brace.Length * cos)),
            -0.011,
            "brace " + _text.Size(brace.Length));
    }

    private void Widths(Canvas canvas, ViewMap map)
    {
        var inner = DeckWidth.BetweenPosts(_p) / 2;
        const double row = 0.0045;
        var y = map.Of(0, Deck).Y + 0.003;
        canvas.Level(map.Of(-inner, Deck), map.Of(inner, Deck), y, "posts " + _text.Size(2 * inner));
        if (drawing.StubsOf(Role.Rail, Side.Right) is [var (_, rail), ..])
        {
            // From corner to corner, or from the corners up: no witness line crosses a rail.
            var low = rail.MinY + (_p.Guard.Rail.Thickness * Elementary.Sin(Post.Lean));
            var corner = map.Of(rail.MinX, low);
            var at = Math.Max(corner.Y, y + row);
            canvas.Level(map.Of(-rail.MinX, low), corner, at, "rails " + _text.Size(2 * rail.MinX));
            y = at;
        }

        ClearWidth(canvas, map, y + row);

        var (left, right, top) = (drawing.Box.MinX, drawing.Box.MaxX, drawing.Box.MaxY);
        canvas.Level(map.Of(left, top), map.Of(right, top), map.Of(0, top).Y + 0.012, "widest " + _text.Size(right - left));
        var (capLeft, capRight) = (drawing.StubsOf(Role.Cap, Side.Left)[0].Box, drawing.StubsOf(Role.Cap, Side.Right)[0].Box);
        canvas.Level(
            map.Of(capLeft.MaxX, top), map.Of(capRight.MinX, top), map.Of(0, top).Y + 0.005,
            "between caps " + _text.Size(capRight.MinX - capLeft.MaxX));
        canvas.Level(
            map.Of(capRight.MinX, top), map.Of(capRight.MaxX, top), map.Of(0, top).Y + 0.005, _text.Size(capRight.MaxX - capRight.MinX));
    }

    /// <summary>Between pickets or handrails, which stand further in than the rails; nothing without them.</summary>
    private void ClearWidth(Canvas canvas, ViewMap map, double y)
    {
        var half = PassableWidth.At(context.Layout, frame) / 2;
        if (_p.Guard.Pickets is null && _p.Guard.Handrail is null)
        {
            return;
        }

        canvas.Between(
            new SheetPoint(map.Of(-half, 0).X, y), new SheetPoint(map.Of(half, 0).X, y), 0, "clear width " + _text.LeastSize(2 * half));
    }

    /// <summary>Handrail with its height over the deck, and the first picket with the widest gap of the bay.</summary>
    private void InnerParts(Canvas canvas, ViewMap map)
    {
        if (drawing.StubsOf(Role.Handrail, Side.Right) is [var (rail, box), ..])
        {
            var at = map.Of(box.MinX, (box.MinY + box.MaxY) / 2);
            canvas.Leader(
                at, new SheetPoint(at.X - 0.006, at.Y), $"{Mark(rail)}, top {_text.Size(box.MaxY - Deck)} over deck", toLeft: true);
        }

        var bay = context.BayOf(frame);
        var name = FramePoses.BayName(bay, context.Layout.Bays);
        if (drawing.PicketAt(Side.Right) is { } picket && PicketGaps.Widest(context.Layout, bay) is { } gap)
        {
            var (at, mark) = (map.Of(picket), Mark(new PartId(name, Role.Picket, Side.Right, 1)));
            canvas.Leader(at, new SheetPoint(at.X - 0.006, at.Y), $"{mark}, gaps up to {_text.Size(gap)}", toLeft: true);
        }
    }

    private void Names(Canvas canvas, ViewMap map)
    {
        InnerParts(canvas, map);
        var name = context.Layout.Poses[frame].Name;
        var rails = drawing.StubsOf(Role.Rail, Side.Left);

        // Of many rails, or between guards that stand close, the lowest and the highest: the table of heights has all.
        foreach (var (part, box) in HasRoom(map.Ratio) ? rails : [rails[0], rails[^1]])
        {
            var at = map.Of(box.MaxX, (box.MinY + box.MaxY) / 2);
            canvas.Leader(at, at with { X = at.X + 0.006 }, RailName(part));
        }

        var corner = map.Of(_p.Frames.Base.Length / 2, _level.Top - 0.02);
        canvas.Leader(corner, new SheetPoint(corner.X + 0.006, corner.Y), Mark(new PartId(name, Role.Base)));
        var post = map.Of(PostAxis.Head(Post) + 0.01, _level.Top + (Post.Length * Elementary.Cos(Post.Lean) * 0.85));
        canvas.Leader(post, new SheetPoint(post.X + 0.012, post.Y), Mark(new PartId(name, Role.Post, Side.Right)));
        var brace = _p.Frames.Brace;
        var middle = map.Of(
            brace.Foot - (brace.Length * 0.75 * Elementary.Sin(brace.Lean)),
            _level.Top + (brace.Length * 0.75 * Elementary.Cos(brace.Lean)));
        canvas.Leader(middle, new SheetPoint(middle.X + 0.016, middle.Y + 0.008), Mark(new PartId(name, Role.Brace, Side.Right)));
        var (capId, cap) = drawing.StubsOf(Role.Cap, Side.Right)[0];
        var end = map.Of(cap.MaxX, (cap.MinY + cap.MaxY) / 2);
        canvas.Leader(end, new SheetPoint(end.X + 0.005, end.Y), Mark(capId));
    }

    private string Mark(PartId id) => context.Shapes.PieceAt(id.ToString())?.Mark ?? "";

    private string RailName(PartId rail) => $"{Mark(rail)} at {_text.Size(RailHeight(rail))}";

    /// <summary>What scale, paper over true length, so many names below each other ask for.</summary>
    private double Crowd(int names) => names * PageText.HeightOf(1, PageText.Small) * Spread / Post.Length;

    /// <summary>Room that names and their leaders take, over the names' own.</summary>
    private const double Spread = 1.6;

    /// <summary>Beside a name: its leader and the dimension of the post. Metres.</summary>
    private const double BesideName = 0.0135;

    /// <summary>
    /// The rails' names have room at a scale, true length over length on paper: below each other, and between the guards.
    /// </summary>
    public bool HasRoom(double ratio)
    {
        var rails = drawing.StubsOf(Role.Rail, Side.Left);
        var widest = rails.Select(r => PageText.Width(RailName(r.Id), PageText.Small)).DefaultIfEmpty(0).Max();
        return Crowd(rails.Count) <= 1 / ratio && rails.TrueForAll(r => -2 * r.Box.MaxX / ratio >= widest + BesideName);
    }

    private double RailHeight(PartId rail)
    {
        var heights = Templates.GuardHeights.Measure(context.Model)
            .First(h => h.Frames.Contains(context.Layout.Poses[frame].Name, StringComparer.Ordinal)).Rails;
        return heights[rail.Number - 1];
    }

    /// <summary>Deck and channel in words, for the caption.</summary>
    public string Note()
    {
        var filled = DeckWidth.Filled(_p);
        var words = _p.Deck.Stringer is { } stringer
            ? FormattableString.Invariant($"{stringer.Count} stringers {stringer.Section.Name}, treads {_p.Deck.Board.Name}")
            : FormattableString.Invariant($"{DeckWidth.BoardCount(_p)} boards {_p.Deck.Board.Name}, gaps ")
                + FormattableString.Invariant($"{_text.Size(DeckWidth.EqualGap(filled, _p.Deck.Board.Width, DeckWidth.BoardCount(_p)))}");
        var mark = context.Shapes.PieceAt(context.Shapes.DeckFromSide(context.BayOf(frame)).First())?.Mark;
        return $"deck: {words}, {_text.Size(_p.Deck.SideGap)} to posts' feet, {mark}; channels {_text.Size(_p.Frames.Channel.Width)} wide, "
            + $"{_text.Size(_level.ChannelDepth)} deep at the middle of the base";
    }
}

/// <summary>Where a post's axis lies, metres from the bridge's middle.</summary>
internal static class PostAxis
{
    /// <summary>At the base's top.</summary>
    public static double Foot(PostParameters post) => post.Foot + (post.Section.Width / 2 / Elementary.Cos(post.Lean));

    /// <summary>At the head.</summary>
    public static double Head(PostParameters post) => Foot(post) + (post.Length * Elementary.Sin(post.Lean));
}
