using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Benchmarks;

/// <summary>Bridges of any number of bays: the same frame, sag and spacing, more of it.</summary>
internal static class LongBridges
{
    private const double Spacing = 0.9;
    private const double SagShare = 0.06;
    private const double LongestRead = 1000;

    /// <summary>A level bridge in square stance with that many bays.</summary>
    public static BridgeParameters Of(int bays)
    {
        // The chord is a little longer than its plan: a sag of 6 % lengthens the rope by just under 1 %.
        var span = bays * Spacing * 0.99;
        var text = string.Create(CultureInfo.InvariantCulture, $$"""
            name: Long (invented)
            units: metric
            site: { span: {{Math.Min(span, LongestRead):0.000}} m }
            ropes: { type: rope-6x19-iwrc-eips-1, spacing: 1200 mm, sag: 6 % }
            frames:
              spacing: {{Spacing:0.000}} m
              base: { section: 89 x 140 mm, length: 1500 mm }
              channel: { clearance: 3 mm, depth: 20 mm, end_depth: 25 mm }
              post: { section: 38 x 89 mm, length: 1020 mm, lean: 8 deg, foot: 470 mm }
              brace: { section: 38 x 89 mm, lean: 12 deg, foot: 725 mm }
            """);
        var reading = ProjectReader.Read(text, "long.yaml", RopeTable.Catalogue);
        var parameters = reading.Parameters ?? throw new InvalidOperationException(string.Join('\n', reading.Lines));

        // The reader refuses spans beyond any footbridge; the growth of the cost is measured beyond them all the same.
        return parameters with
        {
            Site = parameters.Site with { Span = span },
            Ropes = parameters.Ropes with { Sag = SagShare * span },
        };
    }
}
