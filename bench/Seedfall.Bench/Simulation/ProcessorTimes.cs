using System.Globalization;
using Seedfall.Engine.Simulation.Ensemble;

namespace Seedfall.Bench.Simulation;

/// <summary>
/// Processor time of the ensemble by seasons, dates and patches, as a table: steadier than the clock where a machine is shared,
/// though caches and clock speed are still shared.
/// </summary>
internal static class ProcessorTimes
{
    private const int Runs = 15;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(2);

    internal static void Print()
    {
        Console.WriteLine("| seasons | dates | place | one patch more | first patch | four patches |\n| --- | --- | --- | --- | --- | --- |");
        foreach (var (years, dates) in new[] { (5, 120), (12, 120), (25, 120), (50, 120), (25, 30), (25, 60) })
        {
            var bench = new EnsembleBench { Years = years, Dates = dates };
            bench.Setup();
            Console.WriteLine($"| {years} | {dates} | {Milliseconds(() => bench.Place())} | {Milliseconds(() => bench.NextPatch())} | {Milliseconds(() => bench.FirstPatch())} | {Milliseconds(() => FourPatches(bench))} |");
        }

        var hour = new HourBench();
        hour.Setup();
        var times = Times(() => hour.OneHourOfOneSeason());
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nsimulated hour of one season: least {1e6 * times[0] / HourBench.Hours:0} ns, median {1e6 * times[Runs / 2] / HourBench.Hours:0} ns"));
        PrintWater();
    }

    /// <summary>The day's watering alone.</summary>
    internal static void PrintWater()
    {
        var water = new WaterBench();
        Console.WriteLine($"\nwatering of a day, one patch, day 14: {Milliseconds(() => water.Today())}; its place from {water.Seasons} past seasons: {Milliseconds(() => water.Place())}");
    }

    private static StandTable FourPatches(EnsembleBench bench)
    {
        var seasons = bench.Place();
        _ = bench.Run(seasons);
        _ = bench.Run(seasons);
        _ = bench.Run(seasons);
        return bench.Run(seasons);
    }

    private static string Milliseconds(Action work)
    {
        var times = Times(work);
        return string.Create(CultureInfo.InvariantCulture, $"{times[0]:0.0}, median {times[Runs / 2]:0.0} ms");
    }

    /// <summary>Processor time of the process for one run, ms, ascending.</summary>
    private static double[] Times(Action work)
    {
        for (var start = Environment.CpuUsage.TotalTime; Environment.CpuUsage.TotalTime - start < WarmUp;)
        {
            work();
        }

        var times = new double[Runs];
        for (var i = 0; i < Runs; i++)
        {
            var before = Environment.CpuUsage.TotalTime;
            work();
            times[i] = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
        }

        Array.Sort(times);
        return times;
    }
}
