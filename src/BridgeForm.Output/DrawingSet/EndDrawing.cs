using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.DrawingSet;

/// <summary>
/// What a support holds in the elevation: stand-ins, dashed, for support, saddle, footing and anchor, which are by others; the
/// landing in front of the end frame. World x and y, metres.
/// </summary>
internal sealed class EndDrawing
{
    // Stand-ins: sizes at which they can be told from each other, no design (own figures).
    private const double PostHalf = 0.125;
    private const double TrunkHalf = 0.20;
    private const double TrunkOver = 0.9;
    private const double FootingHalf = 0.25;
    private const double FootingDepth = 0.30;
    private const double AnchorHalf = 0.25;
    private const double Slab = 0.05;
    private const double WithoutGround = 0.8;
    private const double Least = 0.60;
    private const double Shown = 1.20;

    private readonly DrawingContext _context;
    private readonly SupportParameters _support;
    private readonly bool _atB;
    private readonly SheetPoint _at;
    private readonly int _out;
    private readonly double _saddle;
    private readonly double? _ground;

    /// <summary>The end of a bridge.</summary>
    public EndDrawing(DrawingContext context, bool atB)
    {
        (_context, _atB, _out) = (context, atB, atB ? 1 : -1);
        var p = context.Layout.Parameters;
        _support = atB ? p.Site.B : p.Site.A;
        var node = context.Layout.Poses[atB ? context.Layout.Bays : 0].Node;
        _at = new SheetPoint(node.X, node.Y);
        _saddle = Math.Max(p.Saddle.Radius ?? 0, 4 * p.Ropes.Rope.Radius);
        _ground = Stations.GroundAt(context.Layout, node.X);
    }

    /// <summary>How far from the bridge's middle the plan must show, metres: trunks stand in line with the ropes.</summary>
    public static double HalfWidth(BridgeParameters p) =>
        p.Site.A.Kind == SupportKind.Tree || p.Site.B.Kind == SupportKind.Tree ? (p.Ropes.Spacing / 2) + TrunkHalf : 0;

    /// <summary>How far beyond a support the elevation reaches: to its anchor, and a little more.</summary>
    public static double Reach(DrawingContext context, bool atB)
    {
        var site = context.Layout.Parameters.Site;
        var stay = (atB ? site.B : site.A).Backstay;
        return Math.Max(Least, stay is null ? 0 : (stay.Length * Elementary.Cos(stay.Angle)) + (2 * AnchorHalf));
    }

    /// <summary>Levels that the elevation must show.</summary>
    public IEnumerable<double> Levels
    {
        get
        {
            yield return Foot - (HasFooting ? FootingDepth : 0);
            if (HasLanding || _support.Kind == SupportKind.Platform)
            {
                yield return LandingLevel;
                yield return LandingLevel - (2 * Slab);
            }

            if (_support.Kind == SupportKind.Tree)
            {
                yield return _at.Y + TrunkOver;
            }

            if (Anchor is { } anchor)
            {
                yield return anchor.Y - AnchorHalf;
                yield return anchor.Y + AnchorHalf;
            }
        }
    }

    /// <summary>Underside of what bears the saddle, as far as it is drawn.</summary>
    private double Foot => Math.Min(_ground ?? _at.Y - WithoutGround, Top - FootingDepth);

    private double Top => _at.Y - _context.Layout.Parameters.Ropes.Rope.Radius - _saddle;

    /// <summary>The file says something of it: what it does not say is for whoever makes it.</summary>
    private bool HasLanding => _support.LandingLevel is not null || _support.LandingGap is not null
        || _support.LandingDepth is not null || _support.LandingBearer is not null;

    /// <summary>x as far as platform, abutment and a landing without a depth are drawn, no farther than the window.</summary>
    private double Back(SheetBox window)
    {
        var reach = Math.Max(Shown, _support.LandingDepth ?? 0);
        return _atB ? Math.Min(window.MaxX, _at.X + reach) : Math.Max(window.MinX, _at.X - reach);
    }

    private bool HasFooting => _ground is not null && _support.Kind is null or SupportKind.Post or SupportKind.Platform;

    private SheetPoint? Anchor => _support.Backstay is { } stay
        ? new SheetPoint(
            _at.X + (_out * stay.Length * Elementary.Cos(stay.Angle)), _at.Y - (stay.Length * Elementary.Sin(stay.Angle)))
        : null;

    /// <summary>Draws it with its words.</summary>
    public void Draw(Canvas canvas, ViewMap map, SheetBox window)
    {
        Saddle(canvas, map);
        Stand(canvas, map, window);
        if (HasFooting)
        {
            Box(canvas, map, _at.X - FootingHalf, Foot - FootingDepth, _at.X + FootingHalf, Foot);
        }

        if (HasLanding)
        {
            Landing(canvas, map, window);
        }

        Name(
            canvas, map, new SheetPoint(_at.X - (_out * PostHalf), Math.Max(Foot, Top - (2 * FootingDepth))),
            $"{SupportWord}, saddle{(HasFooting ? ", footing" : "")} by others");
        if (Anchor is { } anchor)
        {
            Box(canvas, map, anchor.X - AnchorHalf, anchor.Y - AnchorHalf, anchor.X + AnchorHalf, anchor.Y + AnchorHalf);
            AnchorFigures(canvas, map, anchor);
        }
    }

    /// <summary>The same from above: supports and anchors dashed in line with both ropes, and the landing's edge.</summary>
    public void DrawPlan(Canvas canvas, ViewMap map, SheetBox window)
    {
        var p = _context.Layout.Parameters;
        var (rope, half) = (p.Ropes.Spacing / 2, p.Frames.Base.Length / 2);
        var edge = Back(window);
        void Across(double x1, double x2) => Box(canvas, map, Math.Min(x1, x2), -half, Math.Max(x1, x2), half);
        if (_support.Kind == SupportKind.Tree)
        {
            foreach (var z in (double[])[-rope, rope])
            {
                Ring(canvas, map, TrunkMiddle, z, TrunkHalf);
                Bracket(canvas, map, z);
            }
        }
        else if (_support.Kind is SupportKind.Platform or SupportKind.Abutment)
        {
            Across(_support.Kind == SupportKind.Platform ? _at.X : _at.X - (_out * PostHalf), edge);
        }

        foreach (var z in (double[])[-rope, rope])
        {
            if (_support.Kind is null or SupportKind.Post or SupportKind.Platform)
            {
                Box(canvas, map, _at.X - PostHalf, z - PostHalf, _at.X + PostHalf, z + PostHalf);
            }

            if (Anchor is { } anchor)
            {
                Box(canvas, map, anchor.X - AnchorHalf, z - AnchorHalf, anchor.X + AnchorHalf, z + AnchorHalf);
            }
        }

        if (HasLanding)
        {
            canvas.Line(PageLayers.Cut, map.Of(LandingEdge, -half), map.Of(LandingEdge, half));
        }

        var isPair = _support.Kind is null or SupportKind.Post or SupportKind.Tree;
        var at = _support.Kind == SupportKind.Tree ? map.Of(TrunkMiddle + (_out * TrunkHalf), -rope)
            : isPair ? map.Of(_at.X + (_out * PostHalf), PostHalf - rope) : map.Of(TrunkMiddle, 0);
        canvas.Leader(
            at, new SheetPoint(at.X + (_out * 0.006), at.Y + (isPair ? 0.004 : 0)),
            $"{SupportWord}{(isPair ? "s" : "")}{(Anchor is null ? "" : ", anchors")} by others", toLeft: !_atB);
    }

    private static void Ring(Canvas canvas, ViewMap map, double x, double z, double radius)
    {
        const int steps = 24;
        SheetPoint At(int i) =>
            map.Of(x + (radius * Elementary.Cos(i * Math.Tau / steps)), z + (radius * Elementary.Sin(i * Math.Tau / steps)));
        for (var i = 0; i < steps; i += 2)
        {
            canvas.Line(PageLayers.Cut, At(i), At(i + 1));
        }
    }

    /// <summary>From above: what holds a saddle to its trunk, as wide as the saddle is high.</summary>
    private void Bracket(Canvas canvas, ViewMap map, double z)
    {
        var (near, far, half) = (_at.X - (_out * _saddle), TrunkMiddle - (_out * TrunkHalf), Math.Min(_saddle, PostHalf));
        Box(canvas, map, Math.Min(near, far), z - half, Math.Max(near, far), z + half);
    }

    private string SupportWord => _support.Kind switch
    {
        SupportKind.Post => "post",
        SupportKind.Tree => "tree",
        SupportKind.Platform => "platform",
        SupportKind.Abutment => "abutment",
        _ => "support",
    };

    /// <summary>Half a round under the rope, on its foot.</summary>
    private void Saddle(Canvas canvas, ViewMap map)
    {
        var radius = _saddle / map.Ratio;
        var middle = map.Of(_at.X, Top);
        canvas.Add(new SheetArc(PageLayers.Cut, middle, radius, 0, Math.PI));
        canvas.Line(PageLayers.Cut, middle.X - radius, middle.Y, middle.X + radius, middle.Y);
    }

    private void Stand(Canvas canvas, ViewMap map, SheetBox window)
    {
        switch (_support.Kind)
        {
            case SupportKind.Tree:
                Trunk(canvas, map);
                break;
            case SupportKind.Platform:
                var edge = Back(window);
                var deck = LandingLevel - Slab;
                Box(canvas, map, Math.Min(_at.X, edge), deck - Slab, Math.Max(_at.X, edge), deck);
                Box(canvas, map, _at.X - PostHalf, Foot, _at.X + PostHalf, Top);
                var far = edge - (_out * PostHalf);
                Box(canvas, map, far - (PostHalf / 2), Foot, far + (PostHalf / 2), deck - Slab);
                break;
            case SupportKind.Abutment:
                var back = Back(window);
                Box(canvas, map, Math.Min(_at.X - PostHalf, back), Foot, Math.Max(_at.X + PostHalf, back), Top);
                break;
            default:
                Box(canvas, map, _at.X - PostHalf, Foot, _at.X + PostHalf, Top);
                break;
        }
    }

    /// <summary>A trunk that stands just behind the end frame and goes on upwards.</summary>
    private void Trunk(Canvas canvas, ViewMap map)
    {
        var middle = TrunkMiddle;
        foreach (var side in (double[])[-1, 1])
        {
            canvas.Line(
                PageLayers.Hidden, map.Of(middle + (side * TrunkHalf * 1.2), Foot), map.Of(middle + (side * TrunkHalf), _at.Y));
            canvas.Line(
                PageLayers.Hidden, map.Of(middle + (side * TrunkHalf), _at.Y),
                map.Of(middle + (side * TrunkHalf * 0.9), _at.Y + TrunkOver));
        }

        var (near, far) = (_at.X - (_out * _saddle), middle - (_out * TrunkHalf));
        Box(canvas, map, Math.Min(near, far), Top - (2 * Slab), Math.Max(near, far), Top);
    }

    private double TrunkMiddle => _at.X + (_out * (DeckEnd.Beyond(_context.Layout.Parameters) + TrunkHalf + Slab));

    /// <summary>Where the landing begins, behind the gap at the deck's end.</summary>
    private double LandingEdge => _at.X + (_out * (DeckEnd.Beyond(_context.Layout.Parameters) + (_support.LandingGap ?? 0)));

    private double LandingLevel => _at.Y + (_support.LandingLevel ?? Deck);

    /// <summary>The end frame's deck above the rope's axis.</summary>
    private double Deck => DeckEnd.Surface(_context.Layout, _atB ? _context.Layout.Bays : 0) - _at.Y;

    /// <summary>Its surface from the gap at the deck's end outwards.</summary>
    private void Landing(Canvas canvas, ViewMap map, SheetBox window)
    {
        var text = _context.Text;
        var from = LandingEdge;
        var edge = Back(window);
        var to = _support.LandingDepth is { } reach && Math.Abs(edge - from) > reach ? from + (_out * reach) : edge;
        Bearer(canvas, map, from);
        canvas.Line(PageLayers.Cut, map.Of(from, LandingLevel), map.Of(to, LandingLevel));
        canvas.Line(PageLayers.Hidden, map.Of(from, LandingLevel - Slab), map.Of(to, LandingLevel - Slab));
        canvas.Line(PageLayers.Cut, map.Of(from, LandingLevel), map.Of(from, LandingLevel - Slab));
        var at = map.Of((from + to) / 2, LandingLevel);
        var gap = (_support.LandingDepth is { } depth ? $", depth {text.Size(depth)}" : "")
            + (_support.LandingGap is { } given ? $", gap {text.Size(given)}" : "");
        canvas.Leader(
            at, new SheetPoint(at.X + (_out * 0.004), at.Y + 0.008),
            $"landing {(_support.LandingLevel is null ? "flush with the deck" : text.Level(LandingLevel))}{gap}", toLeft: !_atB);
    }

    /// <summary>What carries the landing's edge, by others.</summary>
    private void Bearer(Canvas canvas, ViewMap map, double from)
    {
        var stands = LandingStandIns.Lay(_context.Layout).Where(s => s.Id.StartsWith(_atB ? "b/" : "a/", StringComparison.Ordinal));
        foreach (var part in stands.Skip(1))
        {
            var top = LandingLevel - Slab;
            var (near, far) = (from, from + (_out * part.Body.Width));
            Box(canvas, map, Math.Min(near, far), top - part.Body.Thickness, Math.Max(near, far), top);
        }
    }

    private void AnchorFigures(Canvas canvas, ViewMap map, SheetPoint anchor)
    {
        var (text, stay) = (_context.Text, _support.Backstay!);
        var low = anchor.Y - AnchorHalf;
        var (from, to) = (map.Of(Math.Min(anchor.X, _at.X), low), map.Of(Math.Max(anchor.X, _at.X), low));
        canvas.Level(from, to, from.Y - 0.004, text.Length(Math.Abs(anchor.X - _at.X)));
        var middle = map.Of((anchor.X + _at.X) / 2, (anchor.Y + _at.Y) / 2);
        canvas.Leader(
            middle, new SheetPoint(middle.X + (_out * 0.004), middle.Y + 0.006),
            $"backstay {text.Length(stay.Length)}, {DrawingText.Angle(stay.Angle)}, {(stay.Sliding ? "sliding" : "fixed")} saddle",
            toLeft: !_atB);
        var block = map.Of(anchor.X + (_out * AnchorHalf), anchor.Y);
        canvas.Leader(block, new SheetPoint(block.X - (_out * 0.004), block.Y - 0.008), "anchor by others", toLeft: _atB);
    }

    /// <summary>A note towards mid-span, where there is room below the ropes.</summary>
    private void Name(Canvas canvas, ViewMap map, SheetPoint at, string words)
    {
        var point = map.Of(at);
        // Where no ground is known at B, the height of B is dimensioned beside it: the note stands beyond that.
        var beyond = _atB && _ground is null;
        canvas.Leader(
            point, new SheetPoint(point.X - (_out * (beyond ? -0.018 : 0.006)), point.Y - (beyond ? 0.008 : 0.004)), words,
            toLeft: _atB && !beyond);
    }

    private static void Box(Canvas canvas, ViewMap map, double left, double low, double right, double high)
    {
        SheetPoint[] corners = [map.Of(left, low), map.Of(right, low), map.Of(right, high), map.Of(left, high)];
        for (var i = 0; i < corners.Length; i++)
        {
            canvas.Line(PageLayers.Hidden, corners[i], corners[(i + 1) % corners.Length]);
        }
    }
}
