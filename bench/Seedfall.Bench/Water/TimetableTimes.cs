using System.Globalization;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Bench.Water;

/// <summary>Processor time of the timetable's proof for invented lawns of 12 and 30 sets, three rounds a day; the second of two runs.</summary>
internal static class TimetableTimes
{
    internal static void Print()
    {
        Console.WriteLine("| lawn | sets | tap L/min | hours | processor ms | outcome |\n| --- | --- | --- | --- | --- | --- |");
        Row("ample", Mixed(12, 40.0, 5, 18, 1));
        Row("mixed", Mixed(30, 40.0, 5, 18, 2));
        Row("mixed, strong tap", Mixed(30, 60.0, 5, 18, 3));
        Row("on controllers", Mixed(30, 40.0, 0, 24, 4, timersOnly: true));
        Row("tight", Mixed(30, 30.0, 5, 19, 5, 4.0, 28.0));
        Row("morning only", Mixed(30, 40.0, 6, 12, 6));
        Row("tight, strong sets", Mixed(30, 32.0, 4, 20, 7, 10.0, 30.0));
        Row("each takes the whole tap", Mixed(30, 30.0, 4, 20, 8, 29.0, 30.0, 2, 6));
    }

    private static void Row(string name, TimetableProblem problem)
    {
        TimetablePlanning.Prove(problem);
        var before = Environment.CpuUsage.TotalTime;
        var proof = TimetablePlanning.Prove(problem);
        var spent = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {problem.Sets.Count} | {problem.Taps[0].Flow.LitersPerMinute:0} | {problem.Allowed[0].From / 60} to {problem.Allowed[0].To / 60} | {spent:0} | {Outcome(proof)} |"));
    }

    private static string Outcome(TimetableProof proof) => proof switch
    {
        TimetableProof.Found found => string.Create(CultureInfo.InvariantCulture, $"{found.Runs.Count} runs, {found.MinutesAway.Value:0.0} min away, bound {found.Bound.Value:0.0}{(found.BySolver ? ", solver asked" : "")}"),
        TimetableProof.Impossible none => $"impossible; {string.Join(", ", none.Limits.Select(limit => limit.Limit))}; {none.Unserved.Count} sets unserved",
        TimetableProof.NotProven open => $"not proven; {open.Unserved.Count} sets unserved",
        _ => throw new InvalidOperationException("no such outcome"),
    };

    private static TimetableProblem Mixed(int count, double tapLpm, int from, int to, ulong seed, double leastLpm = 4.0, double mostLpm = 30.0, int least = 4, int most = 12, bool timersOnly = false)
    {
        var random = new SplitMix64(seed);
        TimetableSet[] sets =
        [
            .. Enumerable.Range(0, count).Select(k => new TimetableSet
            {
                Name = $"set {k + 1}",
                PatchIds = [$"patch {(k % 4) + 1}"],
                Flow = FlowRate.FromLitersPerMinute(leastLpm + ((mostLpm - leastLpm) * random.NextDouble())),
                CycleMinutes = least + (int)(random.NextDouble() * (most - least)),
                Cycles = random.NextDouble() < 0.3 ? 2 : 1,
                Positions = random.NextDouble() < 0.3 && !timersOnly ? 2 : 1,
                Timer = timersOnly ? $"controller {(k / 8) + 1}" : random.NextDouble() < 0.5 ? $"timer {k + 1}" : null,
            }),
        ];
        return new TimetableProblem
        {
            Taps = [new TimetableTap("tap", FlowRate.FromLitersPerMinute(tapLpm))],
            Sets = sets,
            Timers = [.. sets.Select(set => set.Timer).OfType<string>().Distinct().Select(name => new TimetableTimer(name, 3, 16))],
            Rounds = [new RoundPart(0, 599, 420), new RoundPart(600, 839, 660), new RoundPart(840, 1080, 900)],
            Allowed = [new MinuteSpan(from * 60, to * 60)],
            Hands = [new MinuteSpan(300, 1320)],
        };
    }
}
