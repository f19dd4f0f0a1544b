using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

/// <summary>Project files to test with, and two ropes that they may name.</summary>
internal static class Examples
{
    private static readonly ImmutableDictionary<string, RopeProperties> Known = new[]
    {
        Rope("rope-6x19-iwrc-eips-galvanized-3/4", 0.01905),
        Rope("strand-ehs-1/2", 0.0127),
    }.ToImmutableDictionary(r => r.Name, StringComparer.Ordinal);

    public static RopeCatalogue Ropes { get; } = new([.. Known.Keys.Order(StringComparer.Ordinal)], key => Known.GetValueOrDefault(key));

    /// <summary>The example that the outside contract prints, word for word.</summary>
    public const string Contract = """
        name: Alder Dell (invented)
        units: imperial              # imperial | metric
        use: private                 # private | public: guard height 36 in | 42 in, opening under a 4 in sphere, live load
        site:
          span: 30 ft                # horizontal, support to support
          rise: 0 ft                 # B above A; may be negative
          reference_temperature: 60 F   # F | C
          temperatures: [20 F, 100 F]
        ropes:
          type: rope-6x19-iwrc-eips-galvanized-3/4   # key of the built-in table, or a mapping
          spacing: 44 in
          sag: 6 %                   # share of span, or a length
          termination: { kind: clips, efficiency: 80 % }
          safety_factor: 5
        frames:
          spacing: 3 ft
          step: rope                 # rope | plan
          stance: square             # square | plumb
          base:    { section: 4x4, length: 56 in, stock: treated }
          channel: { clearance: 1/8 in, depth: 5/8 in, end_depth: 3/4 in, liner: 0 in }   # or width:
          post:    { section: 2x4, length: 40 in, lean: 8 deg, foot: 17-3/4 in, stock: treated }
          brace:   { section: 2x4, lean: 12 deg, foot: 27-1/2 in, stock: treated }   # or length:
          keeper:  { hole: 1/4 in, spread: 2-1/2 in, depth: 2 in }
          hardware: 3 lb             # fasteners and keepers of one frame, as weight on the ropes
        deck:
          layout: along              # along | across
          board: { section: 2x6, stock: treated }
          count: auto                # or a number
          gap: 1/4 in                # least gap between boards
          side_gap: 1/2 in
          butt_gap: 1/8 in
          # across: board is the tread; stringer: { section: 2x6, count: 3, stock: treated }
        guard:
          rails: { section: 1x4, count: 6, stock: cedar }     # or heights: [6 in, 12 in, …]
          cap:   { section: 2x6, stock: cedar }
        loads:
          live: 60 psf               # psf | kPa, on the clear width between the posts' inner faces at the deck
          point: { force: 300 lbf, patch: 30 in, edge: 6 in }   # square patch
          eccentricity: 60 %         # share of the area load on one rope
        stock:
          treated: { species: southern-pine, grade: no1, treated: true,  lengths: [8 ft, 10 ft, 12 ft, 16 ft] }
          cedar:   { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft, 10 ft, 12 ft] }
        shop:
          saw: { mitre_limit: 50 deg, bevel_limit: 45 deg, kerf: 1/8 in }
          router_bit: 1/4 in
          tolerance: 0.5 mm
          paper: letter              # letter | tabloid | arch-d | a4 | a3 | a1 | roll-24 | roll-36
        prices: prices.csv           # optional, the user's own
        """;

    public static ProjectReading Read(string text) => ProjectReader.Read(text, "bridge.yaml", Ropes);

    /// <summary>Parameters of a file that must be without faults.</summary>
    public static BridgeParameters Good(string text)
    {
        var reading = Read(text);
        Assert.Empty(reading.Lines);
        return reading.Parameters!;
    }

    /// <summary>The example of every key with one text put in place of another that must occur in it exactly once.</summary>
    public static string With(string old, string replacement)
    {
        Assert.Equal(2, Contract.Split(old).Length);
        return Contract.Replace(old, replacement, StringComparison.Ordinal);
    }

    private static RopeProperties Rope(string key, double diameter) => new()
    {
        Name = key,
        Kind = RopeKind.WireRope,
        Diameter = diameter,
        MassPerLength = 1.55,
        BreakingStrength = 235e3,
        MetallicArea = 1.75e-4,
        Modulus = 100e9,
        Galvanized = true,
        Source = "made up for tests",
    };
}
