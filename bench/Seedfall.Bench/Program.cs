// dotnet run -c Release --project bench/Seedfall.Bench -- --filter '*EnsembleBench*'   the clock, by BenchmarkDotNet
// dotnet run -c Release --project bench/Seedfall.Bench -- --processor-time             processor time of the ensemble, for a machine that is shared
// dotnet run -c Release --project bench/Seedfall.Bench -- --water-time                 the same of the day's watering alone
if (args.Contains("--processor-time"))
{
    Seedfall.Bench.Simulation.ProcessorTimes.Print();
    return;
}

if (args.Contains("--water-time"))
{
    Seedfall.Bench.Simulation.ProcessorTimes.PrintWater();
    return;
}

BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
