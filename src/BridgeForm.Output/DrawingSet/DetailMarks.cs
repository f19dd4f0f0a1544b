using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>
/// Circles that lead from one sheet to another: above the line the drawing's number, below it the sheet on which it stands. The sheet
/// is not known before all pages are laid out; until then a stand-in is written.
/// </summary>
internal static class DetailMarks
{
    /// <summary>Of the circle, metres.</summary>
    public const double Radius = 0.0034;

    /// <summary>First letter of a stand-in: one that no font has and no user writes.</summary>
    private const char StandIn = '\uE000';

    /// <summary>Frames that are drawn by themselves, with the numbers of their drawings.</summary>
    public static IEnumerable<(int Frame, int Number)> Frames(DrawingContext context) =>
        FrameSheet.Shown(context).Select((frame, i) => (frame, i + 1));

    /// <summary>The channel across its rope.</summary>
    public const int Channel = 11;

    /// <summary>The end base at A along its rope, and at B where that does not mirror it.</summary>
    public const int EndBase = 12;

    /// <summary>Feet of post and brace.</summary>
    public const int Feet = 13;

    /// <summary>Head of the brace.</summary>
    public const int BraceHead = 14;

    /// <summary>Head of the post.</summary>
    public const int Head = 15;

    /// <summary>First number of the details that differ from the ones above: at B, or of another frame.</summary>
    private const int Others = 16;

    /// <summary>Numbers of the rows of a long bridge's elevation and plan, which match lines lead to; printed nowhere.</summary>
    public const int Elevations = 1000;

    /// <summary>Of the plan.</summary>
    public const int Plans = 2000;

    /// <summary>What is drawn of a frame as a detail.</summary>
    private enum Kind
    {
        EndBase,
        Head,
        BraceHead,
    }

    /// <summary>The detail of a frame's base on its rope, which it is a mark to.</summary>
    public static int OfBase(DrawingContext context, int frame) =>
        frame > 0 && frame < context.Layout.Bays ? Channel : NumberOf(context, Kind.EndBase, frame) ?? EndBase;

    /// <summary>The detail of a frame's post's head.</summary>
    public static int OfHead(DrawingContext context, int frame) => NumberOf(context, Kind.Head, frame) ?? Head;

    /// <summary>The detail of a frame's brace's head.</summary>
    public static int OfBraceHead(DrawingContext context, int frame) => NumberOf(context, Kind.BraceHead, frame) ?? BraceHead;

    /// <summary>Ends, heads and brace's heads that have details of their own besides the first ones.</summary>
    public static IEnumerable<(int Frame, int Number)> OtherBases(DrawingContext context) => Of(context, Kind.EndBase);

    /// <summary>Frames whose posts' heads are cut otherwise.</summary>
    public static IEnumerable<(int Frame, int Number)> OtherHeads(DrawingContext context) => Of(context, Kind.Head);

    /// <summary>Frames whose braces' heads are cut otherwise.</summary>
    public static IEnumerable<(int Frame, int Number)> OtherBraceHeads(DrawingContext context) => Of(context, Kind.BraceHead);

    private static IEnumerable<(int Frame, int Number)> Of(DrawingContext context, Kind kind) =>
        Extra(context).Select((e, i) => (e.Kind, e.Frame, Number: Others + i)).Where(e => e.Kind == kind).Select(e => (e.Frame, e.Number));

    private static int? NumberOf(DrawingContext context, Kind kind, int frame)
    {
        var look = Look(context, kind, frame);
        return Of(context, kind).Where(o => string.Equals(Look(context, kind, o.Frame), look, StringComparison.Ordinal))
            .Select(o => (int?)o.Number).FirstOrDefault();
    }

    /// <summary>One of each that looks unlike the first, in order of the frames that are drawn.</summary>
    private static IEnumerable<(Kind Kind, int Frame)> Extra(DrawingContext context)
    {
        if (context.EndsDiffer)
        {
            yield return (Kind.EndBase, context.Layout.Bays);
        }

        foreach (var kind in (Kind[])[Kind.Head, Kind.BraceHead])
        {
            var shown = FrameSheet.Shown(context).ToList();
            foreach (var frame in shown.DistinctBy(f => Look(context, kind, f), StringComparer.Ordinal).Skip(1))
            {
                yield return (kind, frame);
            }
        }
    }

    /// <summary>What would be printed beside it: frames that look alike share a detail.</summary>
    private static string Look(DrawingContext context, Kind kind, int frame)
    {
        if (kind == Kind.EndBase)
        {
            return frame == context.Layout.Bays ? "B" : "A";
        }

        var (name, end) = (context.Layout.Poses[frame].Name, frame == 0 || frame == context.Layout.Bays);
        var part = new PartId(name, kind == Kind.Head ? Role.Post : Role.Brace, Side.Right).ToString();
        var cut = context.Shapes.PieceAt(part) is { } piece ? PartTable.Cut(piece.Far) : "";
        return kind == Kind.Head ? $"{cut}, {(end ? "end" : "on the ropes")}" : cut;
    }

    /// <summary>Where the number of a drawing's sheet will stand, at the end of a text.</summary>
    public static string SheetOf(int drawing) => StandIn + drawing.ToString(CultureInfo.InvariantCulture);

    /// <summary>Circles in a column, each with a line to the place that its drawing enlarges; none nearer than they are wide.</summary>
    /// <param name="x">Of the column.</param>
    /// <param name="places">Places on paper from the highest to the lowest, and the drawings' numbers.</param>
    public static void SheetMarks(this Canvas canvas, double x, ReadOnlySpan<(SheetPoint At, int Number)> places)
    {
        const double apart = 2.3 * Radius;
        var below = double.PositiveInfinity;
        foreach (var (at, number) in places)
        {
            var y = Math.Min(at.Y, below - apart);
            canvas.Line(PageLayers.Frame, at, new SheetPoint(x - Radius, y));
            canvas.SheetMark(new SheetPoint(x, y), number);
            below = y;
        }
    }

    /// <summary>A circle with the drawing's number and its sheet.</summary>
    public static void SheetMark(this Canvas canvas, SheetPoint at, int number)
    {
        var name = number.ToString(CultureInfo.InvariantCulture);
        canvas.Add(new SheetCircle(PageLayers.Frame, at, Radius));
        canvas.Line(PageLayers.Frame, at.X - Radius, at.Y, at.X + Radius, at.Y);

        // The sheet's number is longer than its stand-in.
        canvas.Keep(new SheetBox(at.X - Radius, at.Y - Radius, at.X + Radius, at.Y + Radius));
        canvas.Text(PageText.Centered(at.X, at.Y + 0.0005, name, PageText.Small, bold: true));
        canvas.Text(PageText.Left(at.X, at.Y - 0.0005 - PageText.Small, StandIn + name, PageText.Small));
    }

    /// <summary>The pages with each stand-in's sheet in its place.</summary>
    /// <param name="pages">All pages in order.</param>
    public static ImmutableArray<DrawnPage> Resolved(ImmutableArray<DrawnPage> pages)
    {
        var sheets = pages.SelectMany((p, i) => p.Drawings.Select(d => (Drawing: d, Sheet: i + 1)))
            .ToDictionary(p => p.Drawing, p => p.Sheet.ToString(CultureInfo.InvariantCulture));
        return [.. pages.Select(p => p with { Content = [.. p.Content.Select(e => Resolved(e, sheets))] })];
    }

    private static SheetEntity Resolved(SheetEntity entity, Dictionary<int, string> sheets) =>
        entity is SheetText { Text: var words } line && words.IndexOf(StandIn, StringComparison.Ordinal) is > 0 and var at
            ? line with { Text = words[..at] + sheets[int.Parse(words[(at + 1)..], CultureInfo.InvariantCulture)] }
            : entity is SheetText { Text: [StandIn, ..] text } mark
            ? PageText.Centered(
                mark.At.X, mark.At.Y, sheets[int.Parse(text[1..], CultureInfo.InvariantCulture)], mark.Height)
            : entity;
}
