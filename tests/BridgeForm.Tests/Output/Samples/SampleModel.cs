using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Samples;

/// <summary>A model put together by hand: frames in a row, each with the same few pieces, and two ropes.</summary>
internal static class SampleModel
{
    public static BridgeParameters Parameters { get; } = new()
    {
        Name = "Alder Dell (invented)",
        Units = UnitSystem.Imperial,
        Use = BridgeUse.Private,
        Site = new SiteParameters { Span = 1.8, Rise = 0, ReferenceTemperature = 15.6, Temperatures = [] },
        Ropes = Bridges.Read(Bridges.Garden).Ropes,
        Frames = Bridges.Read(Bridges.Garden).Frames,
        Deck = null!,
        Guard = null!,
        Loads = Bridges.Read(Bridges.Garden).Loads,
        Stock = [Stock("treated", true), Stock("cedar", false)],
        Shop = Bridges.Read(Bridges.Garden).Shop,
    };

    /// <summary>Two bays, every sample piece once a frame or bay, and one load case without a solution.</summary>
    public static BridgeModel Small { get; } = WithBays(2, extraParts: 0);

    /// <summary>So many bays; each frame with a base, two posts, and <paramref name="extraParts"/> more posts.</summary>
    public static BridgeModel WithBays(int bays, int extraParts)
    {
        var frames = Enumerable.Range(0, bays + 1).Select(i => new FramePose(
            Name('F', i), Node(i, bays), Vector3d.UnitX, Vector3d.UnitY, Slope(i, bays), i == 0 || i == bays)).ToImmutableArray();
        ImmutableArray<Piece> pieces =
        [
            Placed(SamplePieces.Base, frames, "base", f => Placement.FromLengthAndThickness(f.At(0, 0, -0.7), Vector3d.UnitZ, -f.Along)),
            Placed(SamplePieces.Post, frames, "post-left", f => Leaning(f, -0.45), [.. Enumerable.Range(0, extraParts)]),
            Placed(
                SamplePieces.Rail, frames[1..], "rail-left-1",
                f => Placement.FromLengthAndThickness(f.At(-0.9, 0.5, -0.4), f.Along, Vector3d.UnitZ), bay: true),
            Placed(
                SamplePieces.Board, frames[1..], "board-1", f => Placement.FromLengthAndThickness(f.At(-0.9, 0.1, 0), f.Along, f.Up),
                bay: true),
        ];
        var ids = pieces.SelectMany(p => p.Occurrences).Select(o => o.Id).ToLookup(
            id => id[..id.IndexOf('/', StringComparison.Ordinal)], StringComparer.Ordinal);
        var groups = frames.Select(f => f.Name).Concat(frames[1..].Select(f => "B" + f.Name[1..]));
        ImmutableArray<HoistingRow> hoisting = [new HoistingRow("bare", 15.6, 0.45, 1200), new HoistingRow("frames", 15.6, 0.5, 4100)];
        ImmutableArray<RopeMark> marks = [.. frames.Select((f, i) => new RopeMark(f.Name, i * 0.9017, i * 0.9021))];
        return new BridgeModel
        {
            Parameters = Parameters,
            Rope = Rope(bays),
            Frames = frames,
            Groups = [.. groups.Select(g => new GroupIds(g, [.. ids[g]]))],
            Pieces = pieces,
            Hoisting = hoisting,
            Marks = marks,
            Ropework = new RopeWork { Chosen = new MarkedRopes(NewRopeWay.DrawnIn, 0, marks, new HoistingTable(hoisting, [])) },
            Cases =
            [
                new LoadCaseResult
                {
                    Id = "dead",
                    Title = "Bridge, empty",
                    Shape = Rope(bays),
                    ReactionA = new(-1, 2.5),
                    ReactionB = new(1, 2.5),
                },
                new LoadCaseResult { Id = "hot", Title = "Hot", Shape = null, Failure = "no equilibrium found" },
            ],
            Checks =
            [
                new CheckResult(
                    "rope-strength", "Rope's strength, \"as is\"", CheckStatus.Fail, 12000, 9000.5, "N", 1.3333,
                    "common practice, no source", "H / T") { Parts = ["ropes/left", "F01/base"] },
                new CheckResult("sway", "Sway", CheckStatus.Engineer, 0, null, "1", null, "common practice, no source", "–"),
            ],
            RopeLines = [Line("left", -0.5588, bays), Line("right", 0.5588, bays)],
        };
    }

    private static StockParameters Stock(string name, bool treated) => new()
    {
        Name = name,
        Species = "southern-pine",
        Grade = "no1",
        Treated = treated,
        Incised = false,
        Lengths = [2.4384],
        Density = new DensityRange(500, 560, 800, "test"),
    };

    private static string Name(char kind, int i) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{kind}{i:00}");

    private static Vector3d Node(int i, int bays) => new(0.9 * i, 0.02 * i * (i - bays), 0);

    private static double Slope(int i, int bays) => Math.Atan(0.02 / 0.9 * ((2 * i) - bays));

    private static Placement Leaning(FramePose f, double z)
    {
        var up = f.Direction(0, Math.Cos(0.14), Math.Sign(z) * Math.Sin(0.14));
        return Placement.FromLengthAndThickness(f.At(0, 0.1, z), up, f.Along);
    }

    private static Piece Placed(
        Piece piece, ImmutableArray<FramePose> frames, string name, Func<FramePose, Placement> place, ImmutableArray<int> extra = default,
        bool bay = false)
    {
        string Id(FramePose f) => (bay ? "B" + f.Name[1..] : f.Name) + "/" + name;
        var occurrences =
            from f in frames
            from k in extra.IsDefault ? [-1] : extra.Prepend(-1)
            let at = place(f)
            select new Occurrence(
                k < 0 ? Id(f) : Id(f) + "-" + k.ToString(System.Globalization.CultureInfo.InvariantCulture),
                at with { Origin = at.Origin + ((k + 1) * new Vector3d(0, 0, 0.05)) });
        return piece with { Occurrences = [.. occurrences] };
    }

    private static RopeShape Rope(int bays) => new()
    {
        Nodes = [.. Enumerable.Range(0, bays + 1).Select(i => new RopePoint(Node(i, bays).X, Node(i, bays).Y))],
        Segments = [.. Enumerable.Range(0, bays).Select(_ => new RopeSegment(0.9017, 0.9021, 5000, 100))],
        Loads = [.. Enumerable.Range(0, bays + 1).Select(i => i == 0 || i == bays ? 0 : 320.5)],
        WeightPerLength = 15.2,
        AxialStiffness = 1.2e7,
        Horizontal = 5000,
        LargestTension = 5100,
        Sag = 0.02,
    };

    private static RopeLine Line(string name, double z, int bays) =>
        new(name, 0.0095, [.. Enumerable.Range(0, bays + 1).Select(i => Node(i, bays) + new Vector3d(0, 0, z))]);
}
