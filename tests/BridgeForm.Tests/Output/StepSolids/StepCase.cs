using System.Globalization;
using BridgeForm.Benchmarks.Fuzz;
using BridgeForm.Pieces;
using BridgeForm.Project.Files;
using BridgeForm.Solids;
using BridgeForm.Tests.Frames;
using BridgeForm.Tests.Output.Samples;
using BridgeForm.Tests.Output.ScaleModel;
using BridgeForm.Tests.Samples;
using BridgeForm.Tests.Solids;

namespace BridgeForm.Tests.Output.StepSolids;

/// <summary>Bridges and sticks that are written for outside readers.</summary>
internal static class StepCase
{
    private const int RandomBridges = 25;
    private const int MostBays = 3;
    private const int MostRandomPieces = 60;
    private const int Meeting = 16;
    private const int Few = 2;

    /// <summary>Through and blind holes in every face, on a bridge of three bays.</summary>
    private const string Holes = """

        holes:
          post: [ { face: wide, from_end: 10 in, diameter: 1/2 in }, { face: top, from_far_end: 6 in, diameter: 3/8 in, depth: 2 in } ]
          brace: [ { face: bottom, from_end: 6 in, diameter: 3/8 in } ]
          base: [ { face: wide, from_end: 20 in, across: 1 in, diameter: 5/8 in } ]
        """;

    /// <summary>A whole bridge with holes.</summary>
    public static BridgeModel Whole { get; } = Bridges.Build(
        Bridges.Garden.Replace("span: 30 ft", "span: 9 ft", StringComparison.Ordinal) + Holes);

    /// <summary>
    /// A bridge with plates and bolts, landings on a sill and on a ledger; one with nets; one with round handrails whose ends are not
    /// square; and bridges that nobody chose: two in every
    /// run, <c>BRIDGEFORM_SOLIDS=200</c> in the environment asks for two hundred.
    /// </summary>
    public static IReadOnlyList<(string Name, BridgeModel Model)> Others { get; } =
    [
        ("joined", Bridges.Build(JointSteelTests.Text("square")
            .Replace("span: 20 ft, rise: 2 ft", "span: 9 ft, rise: 1 ft, a: { landing: { depth: 4 ft, bearer: sill } }, "
                + "b: { landing: { depth: 5 ft, bearer: ledger } }", StringComparison.Ordinal))),
        ("netted", Bridges.Build("""
            name: Netted (invented)
            site: { span: 8 ft }
            guard: { net: { opening: 2 in, mass: 0.1 lb/ft2 } }
            """)),
        ("turned", Bridges.Build("""
            name: Turned (invented)
            site: { span: 12 ft, rise: 2 ft }
            frames: { stance: plumb }
            guard: { handrail: { diameter: 1-1/2 in } }
            """)),
        .. PrintCases.Random(AskedFor("BRIDGEFORM_SOLIDS", Few)),
    ];

    /// <summary>A garden bridge of three bays with another line for its site.</summary>
    public static string Short(string site) => Bridges.Garden.Replace("site: { span: 30 ft }", site, StringComparison.Ordinal);

    /// <summary>A number in the environment.</summary>
    public static int AskedFor(string variable, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out var n) ? n : usual;

    /// <summary>One of each piece of the samples, and of random bridges some that are not plain sticks.</summary>
    public static BridgeModel Pieces()
    {
        var random = Enumerable.Range(1, RandomBridges)
            .Select(seed => ProjectReader.Read(RandomProject.Of(seed, MostBays), "random.yaml", Bridges.Catalogue).Parameters!)
            .Select(p => Bridge.TryBuild(p, out var model, out _) ? model : null)
            .OfType<BridgeModel>();
        var drawn = random.SelectMany((m, i) => m.Pieces.Select(p => ($"R{i}-{p.Mark}", p)))
            .Where(x => !x.p.Shape.IsPlainPrism() || !x.p.Shape.Holes.IsEmpty).Take(MostRandomPieces);
        var pieces = Sample.Names.SelectMany(n => MadeSample.Of(n).Model.Pieces.Select(p => ($"{n}-{p.Mark}", p))).Concat(drawn)
            .Select(x => Stick(x.Item1, x.p.Shape, x.p.Solid));
        return Model(pieces);
    }

    /// <summary>Random sticks with one hole that meets an end, a rip or a channel, and that stays round.</summary>
    public static IReadOnlyList<Piece> MeetingHoles { get; } =
    [
        .. Enumerable.Range(0, int.MaxValue)
            .Select(seed => (seed, RandomMember.Make(seed, withinRoundOff: false).Stock))
            .Where(s => s.Stock.Holes.Length == 1 && !LooseHoles.Any(s.Stock))
            .Select(s => (s.seed, s.Stock, Solid: s.Stock.ToSolid().OrNull))
            .Where(s => s.Solid is { ComponentCount: 1 } && RoundedSolidTests.IsRound(s.Stock, s.Solid))
            .Take(Meeting)
            .Select(s => Stick($"S{s.seed}", s.Stock, s.Solid!)),
    ];

    /// <summary>The same sticks without their holes.</summary>
    public static IEnumerable<Piece> Undrilled => MeetingHoles
        .Select(p => (p.Mark, Shape: p.Shape with { Holes = [] }))
        .Select(p => Stick(p.Mark, p.Shape, p.Shape.ToSolid().Value));

    public static BridgeModel Model(IEnumerable<Piece> pieces) =>
        SampleModel.Small with { Pieces = [.. pieces], Groups = [], RopeLines = [] };

    private static Piece Stick(string mark, CutStock shape, Solid solid) => SamplePieces.Post with
    {
        Mark = mark,
        Shape = shape,
        Solid = solid,
        Volume = solid.Volume,
        Occurrences = [new Occurrence("F00/" + mark, Placement.Identity)],
    };
}
