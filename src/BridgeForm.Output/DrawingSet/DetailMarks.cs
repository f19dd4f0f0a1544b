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

    /// <summary>The end base at A along its rope, and at B where that mirrors it.</summary>
    public const int EndBase = 12;

    /// <summary>Feet of post and brace.</summary>
    public const int Feet = 13;

    /// <summary>Head of the brace.</summary>
    public const int BraceHead = 14;

    /// <summary>Head of the post.</summary>
    public const int Head = 15;

    /// <summary>The end base at B where that does not mirror the one at A.</summary>
    public const int EndBaseB = 16;

    /// <summary>Numbers of the rows of a long bridge's elevation and plan, which match lines lead to; printed nowhere.</summary>
    public const int Elevations = 1000;

    /// <summary>Of the plan.</summary>
    public const int Plans = 2000;

    /// <summary>The detail that shows a frame's base on its rope.</summary>
    public static int OfBase(DrawingContext context, int frame) => frame > 0 && frame < context.Layout.Bays ? Channel
        : frame > 0 && context.EndsDiffer ? EndBaseB : EndBase;

    /// <summary>The detail of a head is of the frame in the middle: it does for another whose head is cut alike.</summary>
    public static bool ShowsHead(DrawingContext context, int frame, Role role)
    {
        var middle = context.Layout.Bays / 2;
        return IsEnd(frame) == IsEnd(middle) && string.Equals(Cut(frame), Cut(middle), StringComparison.Ordinal);

        bool IsEnd(int f) => role == Role.Post && (f == 0 || f == context.Layout.Bays);
        string Cut(int f) => HeadCut(context, f, role);
    }

    /// <summary>How the head of a frame's post or brace is cut.</summary>
    public static string HeadCut(DrawingContext context, int frame, Role role) =>
        context.Shapes.PieceAt(new PartId(context.Layout.Poses[frame].Name, role, Side.Right).ToString()) is { } piece
            ? PartTable.Cut(piece.Far) : "";

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
