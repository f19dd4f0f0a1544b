using BenchmarkDotNet.Running;
using BridgeForm.Benchmarks;

if (args is ["pipeline", .. var sizes])
{
    PipelineTimes.Print(sizes.Length > 0 ? sizes.Select(int.Parse) : [20, 200, 2_000], runs: 5);
    return 0;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
