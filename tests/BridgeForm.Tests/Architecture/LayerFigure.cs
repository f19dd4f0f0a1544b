using System.Globalization;
using System.Text;

namespace BridgeForm.Tests.Architecture;

/// <summary>The floors as a picture: the file on the ground, the command line under the roof; every use goes down.</summary>
internal static class LayerFigure
{
    private const int Height = 44;
    private const int Step = 56;
    private const int Left = 24;
    private const int Width = 920;

    /// <summary>SVG. Beside each floor, the floors whose types it uses.</summary>
    public static string Svg(IEnumerable<TypeUse> uses)
    {
        var used = uses.Select(u => (From: Layers.FloorOf(u.From.Namespace), To: Layers.FloorOf(u.To.Namespace)))
            .Where(u => u.From != u.To)
            .ToLookup(u => u.From, u => u.To, StringComparer.Ordinal);
        var text = new StringBuilder();
        var bottom = Layers.All.Count * Step;
        text.Append(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Width} {bottom + 40}\" font-family=\"sans-serif\">\n");
        text.Append(CultureInfo.InvariantCulture, $"<rect width=\"{Width}\" height=\"{bottom + 40}\" fill=\"#ffffff\"/>\n");
        for (var i = 0; i < Layers.All.Count; i++)
        {
            Floor(text, bottom - ((i + 1) * Step) + 20, Layers.All[i], used);
        }

        return text.Append("</svg>\n").ToString();
    }

    private static void Floor(StringBuilder text, int top, (string Name, string[] Rooms) floor, ILookup<string, string> used)
    {
        var below = Layers.All.Select(l => l.Floor).Where(f => used[floor.Name].Contains(f, StringComparer.Ordinal)).ToArray();
        text.Append(
            CultureInfo.InvariantCulture,
            $"<rect x=\"{Left}\" y=\"{top}\" width=\"128\" height=\"{Height}\" rx=\"3\" fill=\"#eee5d6\" stroke=\"#6b5a45\"/>\n");
        text.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{Left + 12}\" y=\"{top + 27}\" font-size=\"15\" fill=\"#2b2318\">{floor.Name}</text>\n");
        Line(text, top + 18, "#2b2318", below.Length == 0 ? "uses none of ours" : "uses " + string.Join(", ", below));
        if (floor.Rooms.Length > 1)
        {
            Line(
                text, top + 36, "#6b5a45",
                "rooms, lowest first: " + string.Join(", ", floor.Rooms.Select(r => r[(r.LastIndexOf('.') + 1)..])));
        }
    }

    private static void Line(StringBuilder text, int y, string colour, string words)
    {
        text.Append(
            CultureInfo.InvariantCulture, $"<text x=\"{Left + 144}\" y=\"{y}\" font-size=\"12\" fill=\"{colour}\">{words}</text>\n");
    }
}
