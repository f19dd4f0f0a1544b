using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Templates;

/// <summary>Strips at true size with all marks of the rope and of the rails, so that nothing is measured twice.</summary>
internal static class StoryPole
{
    /// <summary>
    /// A rope longer than this is marked with a tape by the table of rope marks: a paper strip of more sheets creeps. Metres.
    /// </summary>
    private const double LongestRope = 40;

    /// <summary>More sets of heights than this are a pile of strips, which are printed only when asked for.</summary>
    private const int MostSets = 3;

    private const double RopeHeight = 0.018;
    private const double RailHeight = 0.026;

    /// <summary>Strips of the rails, one a set of heights, then the rope's.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="units">How lengths are written.</param>
    /// <param name="choice">Which are wanted.</param>
    /// <param name="onRoll">The paper is a roll: on sheets the rope's strip would be taped together from dozens of pieces.</param>
    public static IEnumerable<TemplateBlock> Draw(BridgeModel model, DisplayUnits units, TemplateChoice choice, bool onRoll)
    {
        var sets = GuardHeights.Measure(model).ToList();
        foreach (var heights in choice.All || sets.Count <= MostSets ? sets : [])
        {
            yield return new TemplateBlock(
                "Story pole of the guard: " + Names(heights.Frames),
                ["Zero on the base's top, along the inner face of the post. Rails centered on their lines, their edges dashed."],
                [.. Rails(heights, model.Parameters.Guard.Rail.Width, units)]);
        }

        var tension = model.Parameters.Ropes.MarkingTension;
        var last = model.Ropework.Chosen.Marks[^1].AtMarkingTension;
        if (onRoll && last <= LongestRope)
        {
            yield return new TemplateBlock(
                "Story pole of the rope",
                [
                    "Center line of every frame along the rope laid out straight, from support A's point, "
                        + (tension > 0 ? "pulled to the marking tension of the project. " : "unstressed. ")
                        + model.Ropework.Chosen.Sentence + " "
                        + "Join the strips, check the last mark with a steel tape, then mark both ropes from it.",
                ],
                [.. Rope(model, units)]);
        }
    }

    private static string Names(ImmutableArray<string> frames) =>
        frames.Length <= 2 ? string.Join(", ", frames) : $"{frames[0]} to {frames[^1]}";

    private static IEnumerable<SheetEntity> Rope(BridgeModel model, DisplayUnits units)
    {
        var marks = model.Ropework.Chosen.Marks;
        yield return Strip(marks[^1].AtMarkingTension, RopeHeight);
        foreach (var mark in marks)
        {
            yield return Upright(PageLayers.Accent, mark.AtMarkingTension, RopeHeight);
            var x = mark.AtMarkingTension;
            var last = mark == marks[^1];
            SheetText Text(double y, string words, double height, bool bold) => last
                ? PageText.Right(x - 0.001, y, words, height, bold)
                : PageText.Left(x + 0.001, y, words, height, bold);
            yield return Text(RopeHeight - 0.005, mark.Frame, PageText.Normal, true);
            yield return Text(0.003, units.Length(x), PageText.Small, false);
        }
    }

    private static IEnumerable<SheetEntity> Rails(GuardHeights heights, double width, DisplayUnits units)
    {
        yield return Strip(heights.Head, RailHeight);
        var marks = heights.Rails.Select((h, i) => (Height: h, Name: FormattableString.Invariant($"rail {i + 1}")))
            .Append((heights.Deck, "deck"));
        yield return PageText.Left(0.001, RailHeight - 0.005, "base", PageText.Small, bold: true);
        yield return PageText.Right(heights.Head - 0.001, 0.003, "head " + units.Length(heights.Head), PageText.Small);
        foreach (var (height, name) in marks)
        {
            yield return Upright(PageLayers.Accent, height, RailHeight);
            yield return PageText.Left(height + 0.001, RailHeight - 0.005, name, PageText.Small, bold: true);
            yield return PageText.Left(height + 0.001, 0.009, units.Length(height), PageText.Small);
        }

        foreach (var edge in heights.Rails.SelectMany(h => new[] { h - (width / 2), h + (width / 2) }))
        {
            yield return Upright(PageLayers.Hidden, edge, RailHeight);
        }
    }

    private static SheetPolyline Strip(double length, double height) =>
        new(PageLayers.Cut, [new(0, 0), new(length, 0), new(length, height), new(0, height)], Closed: true);

    private static SheetLine Upright(string layer, double x, double height) =>
        new(layer, new SheetPoint(x, 0), new SheetPoint(x, height));
}
