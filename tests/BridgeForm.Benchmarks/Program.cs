using BenchmarkDotNet.Running;
using BridgeForm.Benchmarks;
using BridgeForm.Benchmarks.Fuzz;

switch (args)
{
    case ["pipeline", .. var sizes]:
        PipelineTimes.Print(sizes.Length > 0 ? sizes.Select(int.Parse) : [20, 200, 2_000], runs: 5);
        return 0;
    case ["ropes", .. var bays]:
        RopeTimes.Print(bays.Length > 0 ? bays.Select(int.Parse) : [20, 200, 2_000, 20_000], runs: 7);
        return 0;
    case ["stock-plan", .. var sizes]:
        StockPlanTimes.Print(sizes.Length > 0 ? sizes.Select(int.Parse) : [20, 200], runs: 5);
        return 0;
    case ["fuzz", .. var asked]:
        return FuzzCommand.Run(asked);
    case ["answers"]:
        AnswerTimes.Print();
        return 0;
    case ["sites", var first, var count]:
        return SiteSearches.Print(int.Parse(first), int.Parse(count));
    case ["sites-grid", var first, var count]:
        SiteSearches.Compare(int.Parse(first), int.Parse(count));
        return 0;
    case ["bytes", var list]:
        OutputBytes.Record(list);
        return 0;
    case ["gltf-vs"]:
        GltfVersus.Print([11, 200]);
        return 0;
    case ["solids-vs"]:
        return SolidsVersus.RunQuick();
    default:
        BenchmarkSwitcher.FromAssembly(typeof(FuzzCommand).Assembly).Run(args);
        return 0;
}
