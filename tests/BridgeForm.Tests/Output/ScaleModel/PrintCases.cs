using BridgeForm.Benchmarks.Fuzz;
using BridgeForm.Output.ScaleModel;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Tests.Output.StepSolids;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.ScaleModel;

/// <summary>
/// Models to print: the samples, and bridges that nobody chose. A few of these in every run; <c>BRIDGEFORM_PRINTS=200</c> in the
/// environment asks for two hundred.
/// </summary>
internal static class PrintCases
{
    private const int Few = 4;
    private const int MostBays = 6;

    /// <summary>Rails and boards; treads, a rise; a ground line, plumb frames.</summary>
    public static IEnumerable<(string Name, BridgeModel Model)> Samples { get; } =
        [.. new[] { "alder-dell", "wren-landing", "fern-rise" }.Select(n => (n, MadeSample.Of(n).Model))];

    /// <summary>
    /// Bridges by chance, and two of them whose parts once met when they were thickened: cleats under rails right over them, and handrails
    /// of a bridge hardly wider than they are.
    /// </summary>
    public static IEnumerable<(string Name, BridgeModel Model)> Random() =>
        Random(StepCase.AskedFor("BRIDGEFORM_PRINTS", Few)).Concat(s_met.Value).DistinctBy(c => c.Name);

    private static readonly Lazy<(string Name, BridgeModel Model)[]> s_met = new(() => [.. Case(82), .. Case(121)]);

    /// <summary>So many bridges by chance, the same ones each time.</summary>
    public static IEnumerable<(string Name, BridgeModel Model)> Random(int asked) =>
        Enumerable.Range(1, int.MaxValue).SelectMany(Case).Take(asked);

    private static IEnumerable<(string Name, BridgeModel Model)> Case(int seed)
    {
        if (Built(seed) is { } model)
        {
            yield return (FormattableString.Invariant($"seed {seed}"), model);
        }
    }

    /// <summary>The bytes of the file.</summary>
    public static byte[] Bytes(BridgeModel model, PrintPlan plan)
    {
        using var stream = new MemoryStream();
        ThreeMfWriter.Write(model, plan, stream);
        return stream.ToArray();
    }

    /// <summary>The same bridge printed otherwise.</summary>
    public static BridgeModel At(this BridgeModel model, double scale, double thinnest = 0.0012, double bed = 0.22) => model with
    {
        Parameters = model.Parameters with
        {
            Shop = model.Parameters.Shop with
            {
                Print = new PrintParameters { Scale = scale, BedWidth = bed, BedDepth = bed, Thinnest = thinnest },
            },
        },
    };

    private static BridgeModel? Built(int seed)
    {
        var reading = ProjectReader.Read(RandomProject.Of(seed, MostBays), "random.yaml", Bridges.Catalogue);
        return reading.Parameters is { } parameters && Bridge.TryBuild(parameters, out var model, out _) ? model : null;
    }
}
