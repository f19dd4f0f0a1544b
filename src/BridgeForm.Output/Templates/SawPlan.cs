using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>
/// A cut on the mitre saw seen from above, one to five: fence, block if there is one, work, the blade's path with its kerf, the
/// side that falls off, and where to clamp. X runs to the right along the fence, Y up the page towards it.
/// </summary>
/// <param name="Stock">The stick.</param>
/// <param name="Mitre">The cut's mitre, that of saw and block together, radians, not negative.</param>
/// <param name="Bevel">Tilt of the blade, radians, not negative.</param>
/// <param name="Wedge">Angle of the block; 0 for none.</param>
/// <param name="Right">The piece lies to the right of the blade; else to its left.</param>
/// <param name="Kerf">Width of the cut, metres.</param>
internal sealed record SawPlan(CutStock Stock, double Mitre, double Bevel, double Wedge, bool Right, double Kerf)
{
    /// <summary>A cut of two feet fits a sheet of letter paper.</summary>
    public const double Scale = 0.2;

    // Waste that is shown, work that is shown beyond the clamp, fence that is shown beyond the work, metres.
    private const double OffCut = 0.080;
    private const double Shown = 0.290;
    private const double Beyond = 0.020;
    private const double StopSize = 0.030;
    private const double ClampRadius = 0.0025;

    // From the blade's foot to the fence's name, which stands where neither work nor stop is.
    private const double NameClear = 0.010;

    /// <summary>What the saw is set to, radians.</summary>
    public double Setting => Mitre - Wedge;

    /// <summary>The block; its angle is 0 where there is none.</summary>
    public TaperBlock Wedged => TaperBlock.For(Stock.Width, Stock.Thickness, Mitre, Bevel, Wedge, Right, Hold);

    /// <summary>From the fence to the far edge of the work, along the blade, metres.</summary>
    public double Path => (Off / Elementary.Cos(Setting)) + SawPath.Across(Stock.Width, Stock.Thickness, Mitre, Bevel);

    /// <summary>+1 where the piece lies to the right of the blade, −1 to its left.</summary>
    private double Way => Right ? 1 : -1;

    /// <summary>Where the blade crosses the work: from (0, 0) at the fence's edge to (W·tan m, W).</summary>
    private double Slant => Stock.Width * Elementary.Tan(Mitre);

    /// <summary>Where the blade meets the edge that lies at the fence or on the block: along the fence and off it, metres.</summary>
    private (double X, double Y) AtBlade => (Off * Elementary.Tan(Setting), Off);

    private double Off => Wedge > 0 ? Wedged.OffAtBlade : 0;

    /// <summary>From the cut along the work's edge to the stop, metres; null for none.</summary>
    public double? Stop { get; init; }

    /// <summary>A stop stands there; else the piece is cut to a line.</summary>
    public bool HasStop { get; init; } = true;

    /// <summary>How the stop's place is told.</summary>
    public string StopWords { get; init; } = "";

    /// <summary>From the cut along the work's edge to its end, metres; null for a long stick.</summary>
    public double? Length { get; init; }

    /// <summary>The piece is parted from a blank that goes on beyond the blade, and is clamped there.</summary>
    public bool HeldBeyond { get; init; }

    /// <summary>What a clamp needs.</summary>
    public HoldParameters Hold { get; init; } = HoldParameters.For(UnitSystem.Metric);

    /// <summary>Where the work that is drawn ends, along its edge at the fence: at the stop, where that is so near.</summary>
    public double End => Way * Math.Min(
        Math.Max(Right ? Slant + Shown : Shown, HeldBeyond ? 0 : Math.Abs(ClampAlong) + Hold.Clamp),
        Stop ?? Length ?? double.PositiveInfinity);

    /// <summary>The finished end that lies at the stop or the line, drawn as it is; null for a stick that goes on.</summary>
    public FinishedEnd? Finished { get; init; }

    /// <summary>
    /// Beside a block's thin end the work's edge runs into the fence: the stick is cut square to its length first, and what falls off is
    /// no more than a corner.
    /// </summary>
    private bool IsCutFirst => Wedge > 0 && Right;

    /// <summary>Everything, with the blade's foot on the fence at the origin.</summary>
    public IEnumerable<SheetEntity> Draw() => [.. Fence(), .. Wedge > 0 ? Block() : [], .. Work(), .. Blade(), .. StopBlock()];

    /// <summary>A point of the work: along its edge at the fence, to the right from the blade, and across it.</summary>
    public SheetPoint On(double along, double over)
    {
        var (sin, cos) = (Elementary.Sin(Wedge), Elementary.Cos(Wedge));
        var (x, y) = AtBlade;
        return At(x + (along * cos) - (over * sin), y + (along * sin) + (over * cos));
    }

    private static SheetPoint At(double x, double y) => new(x * Scale, -y * Scale);

    private IEnumerable<SheetEntity> Fence()
    {
        var reach = OffCut + Shown + Slant + Beyond;
        yield return new SheetLine(
            PageLayers.Frame, At(Right ? -OffCut - Beyond : -reach, 0), At(Right ? reach : OffCut + Slant + Beyond, 0));
        yield return Right
            ? PageText.Right(At(-NameClear, 0).X, 0.0015, "fence", PageText.Small)
            : PageText.Left(At(NameClear, 0).X, 0.0015, "fence", PageText.Small);
    }

    /// <summary>The block, clamped in its middle.</summary>
    private IEnumerable<SheetEntity> Block()
    {
        var (x, y) = AtBlade;
        var first = Right ? x + Wedged.Beside : x - Wedged.Beside - Wedged.Length;
        double Slope(double at) => y + ((at - x) * Elementary.Tan(Wedge));
        var last = first + Wedged.Length;
        SheetPoint[] corners = [At(first, 0), At(last, 0), At(last, Slope(last)), At(first, Slope(first))];
        yield return new SheetPolyline(PageLayers.Pocket, [.. corners.Select(p => new SheetVertex(p.X, p.Y))], Closed: true);
        var middle = (first + last) / 2;
        var clamp = At(middle, Slope(middle) / 2);
        yield return new SheetCircle(PageLayers.Drill, clamp, ClampRadius);
        yield return PageText.Left(clamp.X + ClampRadius + 0.001, clamp.Y - 0.001, "clamp, block", PageText.Small);
    }

    /// <summary>Both edges of the work, what falls off dashed, and its clamp.</summary>
    private IEnumerable<SheetEntity> Work()
    {
        var (atFence, away) = Finished is { } f ? (EndAt(f, f.UpperAtFence), EndAt(f, f.UpperAway)) : (End, End);
        yield return new SheetLine(PageLayers.Cut, On(0, 0), On(atFence, 0));
        yield return new SheetLine(PageLayers.Cut, On(Slant, Stock.Width), On(away, Stock.Width));
        yield return new SheetLine(Finished is null ? PageLayers.Fold : PageLayers.Cut, On(atFence, 0), On(away, Stock.Width));
        if (Finished is { } low && Math.Abs(low.LowerAway - low.UpperAway) > Visible)
        {
            yield return new SheetLine(
                PageLayers.Hidden, On(EndAt(low, low.LowerAtFence), 0), On(EndAt(low, low.LowerAway), Stock.Width));
        }

        foreach (var part in (IEnumerable<SheetEntity>)[.. IsCutFirst ? Corner() : Rest(), WorkClamp, ClampName])
        {
            yield return part;
        }
    }

    // A line of the lower side that is told from that of the upper one at this scale, metres.
    private const double Visible = 0.002;

    /// <summary>A corner of the finished end along the edge, in the picture: shifted with the stop where that is off it.</summary>
    private double EndAt(FinishedEnd end, double corner) => End + (Way * (corner - end.Touch));

    /// <summary>The stick beyond the blade: an offcut, or the rest of a blank that is clamped there.</summary>
    private IEnumerable<SheetEntity> Rest()
    {
        var shown = HeldBeyond ? Math.Abs(ClampAlong) + (Right ? 0 : -Slant) + Hold.Clamp + OffCut : OffCut;
        var off = Right ? -shown : Slant + shown;
        yield return new SheetLine(PageLayers.Hidden, On(0, 0), On(off, 0));
        yield return new SheetLine(PageLayers.Hidden, On(Slant, Stock.Width), On(off, Stock.Width));
        var waste = On(Right ? -OffCut / 2 : Slant + (OffCut / 2), Stock.Width / 2);
        yield return HeldBeyond
            ? PageText.Centered(On(off / 2, 0).X, On(off, Stock.Width).Y - 0.004, "rest of the blank", PageText.Small)
            : PageText.Centered(waste.X, waste.Y, "offcut", PageText.Small, layer: PageLayers.Accent);
    }

    /// <summary>The corner that falls off a stick that was cut square to its length.</summary>
    private IEnumerable<SheetEntity> Corner()
    {
        yield return new SheetLine(PageLayers.Hidden, On(0, 0), On(0, Stock.Width));
        yield return new SheetLine(PageLayers.Hidden, On(0, Stock.Width), On(Slant, Stock.Width));
        var middle = On(Slant / 3, Stock.Width * 2 / 3);
        yield return PageText.Centered(middle.X, middle.Y, "offcut", PageText.Small, layer: PageLayers.Accent);
    }

    /// <summary>
    /// Where the work is clamped, as far square from its path as hold says: in the middle of its width, on a block near the edge that it
    /// bears on, and where a piece is parted from a blank on the blank.
    /// </summary>
    private SheetPoint ClampAt => On(ClampAlong, Wedge > 0 ? Holding.ClampAcross(Stock.Width, Hold) : Stock.Width / 2);

    private double ClampAlong => Holding.ClampAlong(
        Stock.Width, Stock.Thickness, Mitre, Bevel, Wedge > 0, HeldBeyond != Right, Hold);

    private double ClampWay => HeldBeyond ? -Way : Way;

    private SheetCircle WorkClamp => new(PageLayers.Drill, ClampAt, ClampRadius);

    /// <summary>Its name lies between it and the blade, where nothing else is; on a block below it, in the work.</summary>
    private SheetText ClampName => Wedge > 0
        ? PageText.Centered(ClampAt.X, ClampAt.Y - ClampRadius - 0.003, "clamp, work", PageText.Small)
        : ClampWay > 0 ? PageText.Right(ClampAt.X - ClampRadius - 0.001, ClampAt.Y - 0.001, ClampWords, PageText.Small)
        : PageText.Left(ClampAt.X + ClampRadius + 0.001, ClampAt.Y - 0.001, ClampWords, PageText.Small);

    private string ClampWords => HeldBeyond ? "clamp, blank" : "clamp, work";

    /// <summary>
    /// The stop, its face cut back so that it touches at the fence alone, in its place where that is on the picture, else at the end of
    /// what is drawn: on a block it stands on the slope carried on, not at the fence.
    /// </summary>
    private IEnumerable<SheetEntity> StopBlock()
    {
        if (Stop is null || !HasStop)
        {
            yield break;
        }

        var at = End;
        SheetPoint[] corners =
            [On(at, 0), On(at + (Way * StopSize), StopSize), On(at + (Way * 2 * StopSize), StopSize), On(at + (Way * 2 * StopSize), 0)];
        yield return new SheetPolyline(PageLayers.Pocket, [.. corners.Select(p => new SheetVertex(p.X, p.Y))], Closed: true);
        var words = "stop" + (StopWords.Length > 0 ? ", " + StopWords : "");

        // Below all other words of the plan.
        var tip = At(Path * Elementary.Sin(Setting), Path * Elementary.Cos(Setting));
        var (x, y) = (On(at, Stock.Width).X, Math.Min(tip.Y, On(End, Stock.Width).Y) - 0.0085);
        yield return Right
            ? PageText.Right(Math.Max(x, PageText.Width(words, PageText.Small)), y, words, PageText.Small, layer: PageLayers.Accent)
            : PageText.Left(x, y, words, PageText.Small, layer: PageLayers.Accent);
    }

    /// <summary>Both sides of the kerf; it lies in the waste.</summary>
    private IEnumerable<SheetEntity> Blade()
    {
        var (sin, cos) = (Elementary.Sin(Setting), Elementary.Cos(Setting));
        foreach (var kerf in (double[])[0, -Way * Kerf / cos])
        {
            yield return new SheetLine(PageLayers.Accent, At(kerf, 0), At(kerf + (Path * sin), Path * cos));
        }

        var tip = At(Path * sin, Path * cos);
        yield return PageText.Centered(tip.X, tip.Y - 0.0035, "blade", PageText.Small, layer: PageLayers.Accent);
    }
}
