using BenchmarkDotNet.Running;
using BridgeForm.Benchmarks;

if (args is ["solids-vs"]) return SolidsVersus.RunQuick();
BenchmarkSwitcher.FromAssembly(typeof(SolidsVersus).Assembly).Run(args);
return 0;
