using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Checks.Codes;
using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Output.Preview;

/// <summary>A measured distance in the empty bridge, in world axes, metres.</summary>
/// <param name="Label">What is measured.</param>
/// <param name="Text">Its value in the project's units.</param>
/// <param name="From">One point.</param>
/// <param name="To">The other.</param>
/// <param name="LineFrom">Where the line with the value begins.</param>
/// <param name="LineTo">Where it ends.</param>
/// <param name="Words">Where the words of an upright line stand: <c>beside</c>, <c>over</c> or <c>under</c> it.</param>
internal sealed record PreviewDimension(
    string Label, string Text, Vector3d From, Vector3d To, Vector3d LineFrom, Vector3d LineTo, string Words = "beside");

/// <summary>The dimension lines of the measured views.</summary>
internal static class PreviewDimensions
{
    /// <summary>How far dimension lines stand off the bridge, metres.</summary>
    private const double Off = 0.35;

    /// <summary>Seen from the side: length, sag, rise, least guard height, step of the frames.</summary>
    public static ImmutableArray<PreviewDimension> Side(BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        var (span, rise) = (model.Parameters.Site.Span, model.Parameters.Site.Rise);
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        var low = Math.Min(0, model.Rope.Nodes.Min(n => n.Y)) - Off;
        var list = ImmutableArray.CreateBuilder<PreviewDimension>();
        list.Add(new("length", PreviewFacts.Plain(span, words), Flat(0, 0), Flat(span, rise), Flat(0, low - Off), Flat(span, low - Off)));
        var rope = model.Rope.HeightAt(span / 2);
        list.Add(Straight("sag", PreviewFacts.Plain(model.Rope.Sag, words), Flat(span / 2, rise / 2), Flat(span / 2, rope)));
        AddGuard(list, layout, words);
        AddStep(list, model, words);
        if (Math.Abs(rise) > model.Parameters.Ropes.Rope.Diameter)
        {
            list.Add(new(
                rise < 0 ? "B below A" : "B above A", PreviewFacts.Plain(Math.Abs(rise), words), Flat(0, 0), Flat(span, rise),
                Flat(span + (2 * Off), 0), Flat(span + (2 * Off), rise), "under"));
        }

        return list.ToImmutable();
    }

    /// <summary>
    /// Seen along the bridge, of the frame nearest mid-span: clear width, distance of the ropes. The rails' height has one figure, the
    /// least, which stands in the side view where it is.
    /// </summary>
    public static ImmutableArray<PreviewDimension> Section(BridgeModel model)
    {
        var words = new QuantityText(model.Parameters.Units);
        var frame = model.Frames[model.Frames.Length / 2];
        var levels = PreviewSite.Levels(frame, model.Parameters);
        var deck = levels.Top + model.Parameters.Deck.Thickness;
        var half = model.Parameters.Ropes.Spacing / 2;
        var list = ImmutableArray.CreateBuilder<PreviewDimension>();
        if (PreviewFacts.Measured(model, "clear-width") is { } clear)
        {
            var at = deck + (Off / 2);
            list.Add(Straight("clear width", words.LeastSize(clear), frame.At(0, at, -clear / 2), frame.At(0, at, clear / 2)));
        }

        var below = levels.Bottom - (Off / 2);
        list.Add(new(
            "ropes apart", PreviewFacts.Plain(2 * half, words), frame.At(0, 0, -half), frame.At(0, 0, half), frame.At(0, below, -half),
            frame.At(0, below, half)));
        return list.ToImmutable();
    }

    /// <summary>Writes one.</summary>
    public static void Write(Utf8JsonWriter json, PreviewDimension dimension)
    {
        json.WriteStartObject();
        json.WriteString("label", dimension.Label);
        json.WriteString("text", dimension.Text);
        json.WriteString("words", dimension.Words);
        Point("from", dimension.From);
        Point("to", dimension.To);
        Point("lineFrom", dimension.LineFrom);
        Point("lineTo", dimension.LineTo);
        json.WriteEndObject();

        void Point(string name, Vector3d p)
        {
            json.WritePropertyName(name);
            PreviewJson.Row(json, p.X, p.Y, p.Z);
        }
    }

    /// <summary>The least of all, which the facts and the check tell.</summary>
    private static void AddGuard(ImmutableArray<PreviewDimension>.Builder list, BridgeLayout layout, QuantityText words)
    {
        var least = GuardPlace.Least(layout);
        var (first, last) = (layout.Poses[0].Node.X, layout.Poses[^1].Node.X);
        var line = least.X - first <= last - least.X ? first - Off : last + Off;
        list.Add(new(
            $"rail height, least at {least.Frame}", words.LeastSize(least.Height),
            Flat(least.X, least.Deck), Flat(least.X, least.Cap), Flat(line, least.Deck), Flat(line, least.Cap), "over"));
    }

    private static void AddStep(ImmutableArray<PreviewDimension>.Builder list, BridgeModel model, QuantityText words)
    {
        var (a, b) = (model.Frames[0].Node, model.Frames[1].Node);
        var (from, to) = (Flat(a.X, a.Y), Flat(b.X, b.Y));
        var down = new Vector3d(0, -Off, 0);
        list.Add(new("frame to frame", PreviewFacts.Plain((b - a).Length, words), from, to, from + down, to + down));
    }

    private static PreviewDimension Straight(string label, string text, Vector3d from, Vector3d to) =>
        new(label, text, from, to, from, to);

    private static Vector3d Flat(double x, double y) => new(x, y, 0);
}
