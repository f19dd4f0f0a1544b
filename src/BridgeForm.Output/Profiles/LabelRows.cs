using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Profiles;

/// <summary>A short text that belongs below a place of a view.</summary>
/// <param name="Layer">Layer of the thing it names.</param>
/// <param name="X">Where its left end should be, on the page.</param>
/// <param name="Text">The text.</param>
internal sealed record Label(string Layer, double X, string Text);

/// <summary>Puts texts into rows so that none touches another.</summary>
internal static class LabelRows
{
    /// <summary>Height of letters, 3/16 in: read at arm's length on a print at true size. Metres.</summary>
    public const double TextHeight = 0.0047625;

    /// <summary>From one base line to the next. Metres.</summary>
    public const double Pitch = 1.75 * TextHeight;

    /// <summary>Each label below its place, in the first row with room.</summary>
    /// <param name="labels">Labels in any order.</param>
    /// <param name="top">Y above the first row; further rows go down from there.</param>
    /// <param name="right">Labels that would reach past this X begin further left, but not left of 0.</param>
    /// <returns>The texts, and the Y below the last row.</returns>
    public static (ImmutableArray<SheetEntity> Texts, double Bottom) Place(
        IEnumerable<Label> labels, double top, double right)
    {
        var ends = new List<double>();
        var texts = ImmutableArray.CreateBuilder<SheetEntity>();
        var moved = labels.Select(l => l with { X = Math.Max(0, Math.Min(l.X, right - WidthOf(l.Text.Length))) });
        foreach (var label in moved.OrderBy(l => l.X).ThenBy(l => l.Text, StringComparer.Ordinal))
        {
            var row = ends.FindIndex(end => end < label.X);
            if (row < 0)
            {
                row = ends.Count;
                ends.Add(label.X);
            }

            ends[row] = label.X + WidthOf(label.Text.Length + 1);
            texts.Add(new SheetText(label.Layer, new SheetPoint(label.X, BaseLine(top, row)), TextHeight, label.Text));
        }

        return (texts.ToImmutable(), top - (ends.Count * Pitch));
    }

    /// <summary>Lines of text one below the other from x = 0.</summary>
    /// <returns>The texts, and the Y below the last row.</returns>
    public static (ImmutableArray<SheetEntity> Texts, double Bottom) Column(
        string layer, IReadOnlyList<string> lines, double top) =>
        ([.. lines.Select((line, row) => new SheetText(layer, new SheetPoint(0, BaseLine(top, row)), TextHeight, line))],
            top - (lines.Count * Pitch));

    private static double WidthOf(int characters) => SheetText.WidthOf(characters, TextHeight);

    private static double BaseLine(double top, int row) => top - (row * Pitch) - TextHeight;
}
