// dotnet run -c Release --project bench/Seedfall.Bench -- --filter '*EnsembleBench*'   the clock, by BenchmarkDotNet
// dotnet run -c Release --project bench/Seedfall.Bench -- --processor-time             processor time of the ensemble, for a machine that is shared
if (args.Contains("--processor-time"))
{
    Seedfall.Bench.Simulation.ProcessorTimes.Print();
    return;
}

BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
