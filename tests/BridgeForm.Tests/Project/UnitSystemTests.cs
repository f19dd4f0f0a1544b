using System.Text.Json;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Project;

/// <summary>The same bridge written in inches and in millimetres is the same bridge.</summary>
public sealed class UnitSystemTests
{
    private static readonly JsonSerializerOptions s_options = new() { WriteIndented = true, Converters = { new Rounded() } };

    // Each length of the example times 25.4 or 304.8, worked by hand.
    private const string InMillimetres = """
        name: Alder Dell (invented)
        units: imperial
        use: private
        site: { span: 9144 mm, rise: 0 mm, reference_temperature: 60 F, temperatures: [20 F, 100 F] }
        ropes:
          type: rope-6x19-iwrc-eips-galvanized-3/4
          spacing: 1117.6 mm
          sag: 548.64 mm
          termination: { kind: clips, efficiency: 80 % }
          safety_factor: 5
        frames:
          spacing: 0.9144 m
          base: { section: 4x4, length: 142.24 cm }
          channel: { width: 22.225 mm, depth: 15.875 mm, end_depth: 19.05 mm, liner: 0 mm }
          post: { section: 2x4, length: 1016 mm, lean: 8 deg, foot: 450.85 mm }
          brace: { section: 2x4, lean: 12 deg, foot: 698.5 mm }
          keeper: { hole: 6.35 mm, spread: 63.5 mm, depth: 50.8 mm }
          hardware: 3 lb
        deck: { board: { section: 2x6 }, count: auto, gap: 6.35 mm, side_gap: 12.7 mm, butt_gap: 3.175 mm }
        guard: { rails: { section: 1x4, count: 6, stock: cedar }, cap: { section: 2x6 } }
        loads: { live: 60 psf, point: { force: 300 lbf, patch: 762 mm, edge: 152.4 mm }, eccentricity: 60 % }
        stock:
          treated: { species: southern-pine, grade: no1, treated: true, lengths: [4876.8 mm, 3657.6 mm, 3048 mm, 2438.4 mm] }
          cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [2438.4 mm, 3048 mm, 3657.6 mm] }
        shop: { saw: { mitre_limit: 50 deg, bevel_limit: 45 deg, kerf: 3.175 mm }, router_bit: 6.35 mm, tolerance: 0.5 mm, paper: letter }
        prices: prices.csv
        """;

    [Fact]
    public void Inches_and_millimetres_give_the_same_parameters() =>
        Assert.Equal(Json(Examples.Good(Examples.Contract)), Json(Examples.Good(InMillimetres)));

    [Fact]
    public void A_short_metric_file_takes_metric_defaults()
    {
        var p = Examples.Good("name: Metric defaults (invented)\nunits: metric\nsite: { span: 9 m }\n");
        Assert.Equal(UnitSystem.Metric, p.Units);
        Assert.Equal(9, p.Site.Span, 12);
        // 77.7 / 1470 = 5.29 %, to 0.1 %, of 9 m.
        Assert.Equal(0.477, p.Ropes.Sag, 12);
        Assert.Equal(15, p.Site.ReferenceTemperature, 12);
        Assert.Equal((0.17, 0.095, 1.82), (p.Frames.Base.Depth, p.Frames.Base.Along, p.Frames.Base.Length));
        Assert.Equal("45 x 145 mm", p.Deck.Board.Name);
        Assert.Equal(2900, p.Loads.Live, 9);
        Assert.Equal("a4", p.Shop.Paper);
        Assert.Equal(2.4, p.StockNamed("cedar").Lengths[0], 12);
    }

    [Fact]
    public void Live_load_left_out_follows_use_and_names_its_source()
    {
        var text = Examples.With("use: private", "use: public").Replace("live: 60 psf", "# live", StringComparison.Ordinal);
        var p = Examples.Good(text);
        Assert.Equal(4309.2233, p.Loads.Live, 3); // 90 psf
        Assert.Contains("AASHTO", p.Loads.LiveSource, StringComparison.Ordinal);
        Assert.Contains("from memory", p.Loads.LiveSource, StringComparison.Ordinal);
    }

    // Values to twelve figures: sums and products of equal quantities may differ in the last bit.
    private static string Json(BridgeParameters p) => JsonSerializer.Serialize(p, s_options);

    private sealed class Rounded : System.Text.Json.Serialization.JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.ToString("G12", System.Globalization.CultureInfo.InvariantCulture));
    }
}
