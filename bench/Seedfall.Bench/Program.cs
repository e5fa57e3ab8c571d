// dotnet run -c Release --project bench/Seedfall.Bench -- --filter '*EnsembleBench*'   the clock, by BenchmarkDotNet
// dotnet run -c Release --project bench/Seedfall.Bench -- --processor-time             processor time of the ensemble, for a machine that is shared
// dotnet run -c Release --project bench/Seedfall.Bench -- --water-time                 the same of the day's watering alone
// dotnet run -c Release --project bench/Seedfall.Bench -- --proof                      processor time of need, proof and timetables
// dotnet run -c Release --project bench/Seedfall.Bench -- --timetable                  processor time of the timetable's proof
if (args.Contains("--timetable"))
{
    Seedfall.Bench.Water.TimetableTimes.Print();
    return;
}

if (args.Contains("--proof"))
{
    Seedfall.Bench.Water.ProofTimes.Print();
    return;
}

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
