using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;

namespace Seedfall.Bench.Water;

/// <summary>Processor time of need, proof and timetables: an invented lawn of 4 patches and 12 sets, and the demo's lawns; beside the whole plan.</summary>
internal static class ProofTimes
{
    private const int Runs = 7;

    internal static void Print()
    {
        var weather = DemoTown.Weather with { Days = [.. DemoTown.Weather.Days.Where(d => d.Date.Year >= DemoTown.Season - 20)] };
        var choices = new Choices { Season = DemoTown.Season, Today = DemoTown.Today };
        Console.WriteLine("| lawn | proof | least ms | median ms | most ms | whole plan, median ms |\n| --- | --- | --- | --- | --- | --- |");
        foreach (var lawn in (Lawn[])[Twelve(12.0, 5, 21), Twelve(12.0, 5, 9), .. DemoTown.Lawns])
        {
            var plan = RecoveryPlanner.Plan(lawn, choices, weather, Trade.Tables);
            var proof = Times(() => WaterPlanning.Prove(lawn, plan.Patches, plan.Timing, weather, Trade.Tables, choices));
            var whole = Times(() => RecoveryPlanner.Plan(lawn, choices, weather, Trade.Tables));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"| {lawn.Name} | {plan.Water.Result} | {proof[0]:0} | {proof[Runs / 2]:0} | {proof[^1]:0} | {whole[Runs / 2]:0} |"));
        }
    }

    private static double[] Times(Action work)
    {
        work();
        return [.. Enumerable.Range(0, Runs).Select(_ =>
        {
            var before = Environment.CpuUsage.TotalTime;
            work();
            return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
        }).Order()];
    }

    private static Lawn Twelve(double gpm, int fromHour, int toHour)
    {
        var lawn = DemoTown.Lawns.First(l => l.Patches.Count > 1);
        Patch[] patches = [.. Enumerable.Range(1, 4).Select(k => lawn.Patches[0] with { Id = $"patch-{k}", Name = $"Patch {k}", SunHours = 4 + k, SlopePercent = 2.0 * k })];
        return lawn with
        {
            Name = FormattableString.Invariant($"12 sets, {fromHour} to {toHour} o'clock"),
            Patches = patches,
            Water = new WaterSupply
            {
                Flow = FlowRate.FromGallonsPerMinute(gpm),
                Timer = true,
                Allowed = [new WateringWindow(WeekDays.All, new TimeOnly(fromHour, 0), new TimeOnly(toHour, 0))],
                Sets = [.. Enumerable.Range(0, 12).Select(k => new SprinklerSet { Name = $"set {k + 1}", PatchIds = [$"patch-{(k % 4) + 1}"], Kind = SprinklerKind.Rotor, Rate = PrecipitationRate.FromInchesPerHour(0.4 + (0.05 * k)) })],
            },
        };
    }
}
