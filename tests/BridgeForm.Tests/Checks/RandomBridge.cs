using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Checks;

/// <summary>Bridges drawn by lot from a seed, short ones of all kinds; most of them fail some check.</summary>
internal static class RandomBridge
{
    private static readonly string[] Ropes = [
        "rope-6x19-iwrc-eips-galvanized-3/4", "rope-6x19-iwrc-ips-5/8", "strand-ehs-galvanized-1", "cord-7x19-3/8", "rope-6x19-iwrc-eips-1",
    ];
    private static readonly string[] Sections = ["2x4", "2x6", "3x4", "3x6", "4x4", "4x6", "2x8"];
    private static readonly string[] Boards = ["2x6", "5/4x6", "2x4", "1x6", "2x8"];

    /// <summary>Parameters of the first <paramref name="count"/> files that can be read, by a fixed seed.</summary>
    public static IEnumerable<BridgeParameters> Some(int seed, int count)
    {
        var lot = new Random(seed);
        while (count > 0)
        {
            var reading = ProjectReader.Read(Text(lot), "random.yaml", Bridges.Catalogue);
            if (reading.Parameters is { } parameters)
            {
                count--;
                yield return parameters;
            }
        }
    }

    private static string Text(Random lot)
    {
        double Between(double low, double high) => Math.Round(low + (lot.NextDouble() * (high - low)), 2);
        string One(string[] of) => of[lot.Next(of.Length)];
        bool Half() => lot.Next(2) == 0;
        var (span, post) = (Between(1, 14), Between(15, 22));
        var brace = Between(post + 4, 34);
        return string.Create(CultureInfo.InvariantCulture, $$"""
            name: By lot (invented)
            units: {{(Half() ? "imperial" : "metric")}}
            use: {{(Half() ? "private" : "public")}}
            site: { span: {{span}} m, rise: {{Math.Round(span * Between(-0.25, 0.25), 2)}} m }
            ropes: { type: {{One(Ropes)}}, spacing: {{Between(20, 60)}} in, sag: {{Between(1, 12)}} %, safety_factor: {{Between(1, 8)}} }
            frames:
              spacing: {{Between(400, 1500)}} mm
              step: {{(Half() ? "rope" : "plan")}}
              stance: {{(Half() ? "square" : "plumb")}}
              base: { section: {{One(Sections)}}, length: {{Math.Round((2 * brace) + Between(0.5, 14), 2)}} in, flat: {{(lot.Next(5) == 0 ? "true" : "false")}}, stock: {{(Half() ? "treated" : "cedar")}} }
              channel: { clearance: {{Between(1, 8)}} mm, depth: {{Between(4, 40)}} mm, end_depth: {{Between(4, 50)}} mm, liner: {{(Half() ? 0 : Between(1, 4))}} mm }
              post: { section: {{One(Sections)}}, length: {{Between(24, 50)}} in, lean: {{Between(0, 15)}} deg, foot: {{post}} in }
              brace: { section: {{One(Sections)}}, lean: {{Between(5, 25)}} deg, foot: {{brace}} in }
            deck: { layout: {{(Half() ? "along" : "across")}}, board: { section: {{One(Boards)}} }, gap: {{Between(0, 20)}} mm, butt_gap: {{Between(0, 15)}} mm }
            guard: { rails: { section: 1x4, count: {{lot.Next(0, 8)}} } }
            loads: { live: {{Between(5, 100)}} psf, snow: {{Between(0, 60)}} psf, uplift: {{Between(0, 30)}} psf }
            """);
    }
}
