using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water;

/// <summary>The fitted phases as the plan shows them.</summary>
internal static class PhaseWaterings
{
    internal static PhaseWatering Of(TriedPhase phase)
    {
        var (fit, need) = (phase.Fit, phase.Fit.Need);
        return new PhaseWatering(
            need.Phase.Id,
            Sentence(fit),
            need.RoundsPerWeek / 7.0,
            [.. Starts(phase).Select(minute => new TimeOnly(minute / 60, minute % 60))],
            [.. fit.Runs.Select(run => Run(run, need))],
            [.. need.Patches.Select(p => p.Figure).OfType<Figure>(), .. Totals(phase)])
        {
            Timetables = phase.Times,
        };
    }

    /// <summary>Starts of the rounds on the day with the fewest: of the timetable where there is one, else of the rounds that still fit.</summary>
    private static IReadOnlyList<int> Starts(TriedPhase phase)
    {
        if (phase.Times.Daily is not { Holds: true } week)
        {
            return phase.Times.Seldom is TimetableProof.Found seldom ? [seldom.Runs.Min(run => run.Start) % WateringHours.MinutesPerDay] : phase.Fit.Starts;
        }

        return Rounds(week.Days[0].Proof).Select(round => round.Min(run => run.Start)).ToList();
    }

    /// <summary>From the first start of a round to its last end, in the longest round; as first fitted where there is no timetable.</summary>
    internal static int RoundMinutes(TriedPhase phase) => phase.Times.Daily is { Holds: true } week
        ? week.Days.SelectMany(day => Rounds(day.Proof)).Max(round => round.Max(run => run.End) - round.Min(run => run.Start))
        : phase.Fit.RoundMinutes;

    private static IEnumerable<IGrouping<int, TimetableRun>> Rounds(TimetableProof proof) => ((TimetableProof.Found)proof).Runs.GroupBy(run => run.Round).OrderBy(round => round.Key);

    private static string Sentence(PhaseFit fit)
    {
        var need = fit.Need;
        var depth = Depths(need.LeastMm, need.MostMm);
        var often = (need.DaysPerWeek, need.RoundsPerDay) switch
        {
            (7, 1) => need.Evening ? "once each evening" : "once a day",
            (7, 2) => "twice a day",
            (7, var n) => $"{n} times a day",
            (1, _) => "once a week",
            (var days, _) => $"on {days} days a week",
        };
        var lengths = fit.Runs.Select(run => run.Minutes).ToArray();
        var minutes = lengths.Min() == lengths.Max() ? $"{lengths[0]} min" : $"{lengths.Min()} to {lengths.Max()} min";
        return $"Water {often}, about {depth} each time: {minutes} {(fit.Runs.Count > 1 ? "per set" : "each")}{(fit.Runs.Any(r => r.Set.Positions > 1) ? " in every position" : "")}.{(fit.Spread ? " Spread the sets over the days of the week." : "")}";
    }

    private static string Depths(double leastMm, double mostMm)
    {
        var (least, most) = (string.Create(CultureInfo.InvariantCulture, $"{new Depth(leastMm).Inches:0.00}"), string.Create(CultureInfo.InvariantCulture, $"{new Depth(mostMm).Inches:0.00}"));
        return least == most
            ? string.Create(CultureInfo.InvariantCulture, $"{most} in ({mostMm:0.#} mm)")
            : string.Create(CultureInfo.InvariantCulture, $"{least} to {most} in ({leastMm:0.#} to {mostMm:0.#} mm, by patch)");
    }

    private static SetRun Run(FittedRun run, PhaseNeed need)
    {
        var id = $"water.{need.Phase.Id}.{run.Set.Key}";
        var minutes = new Figure($"{id}.minutes", $"{run.Set.Name}: minutes a round", QuantityKind.Minutes, run.Minutes, new Working(
            run.Cycles > 1 ? "t = 60 d RTM / PR, in c cycles of whole minutes" : "t = 60 d RTM / PR, rounded up to whole minutes",
            [
                new("d", "net depth of the round, its thirstiest patch", new Depth(run.NetMm).Inches, "in"),
                new("RTM", "run-time multiplier", run.Set.RunTimeMultiplier, ""),
                new("PR", "precipitation rate on this tap", new PrecipitationRate(run.Set.RateMmh).InchesPerHour, "in/h"),
                new("c", "cycles", run.Cycles, ""),
            ],
            "definition of precipitation rate; run-time multiplier and cycle and soak common practice, no source read",
            Sureness.CommonPractice));
        var depth = new Figure($"{id}.depth", $"{run.Set.Name}: depth a round", QuantityKind.Depth, run.DepthMm, new Working(
            "D = PR t / 60",
            [new("PR", "precipitation rate on this tap", new PrecipitationRate(run.Set.RateMmh).InchesPerHour, "in/h"), new("t", "minutes", run.Minutes, "min")],
            "definition of precipitation rate",
            Sureness.Computed,
            "Mean over the set; the driest quarter gets less, which the multiplier makes up for."));
        return new SetRun(run.Set.Name, minutes, depth, run.Cycles, run.Cycles > 1 ? Soak(id, run) : null);
    }

    private static Figure Soak(string id, FittedRun run) => new($"{id}.soak", $"{run.Set.Name}: from the start of one cycle to the next, at least", QuantityKind.Minutes, Math.Max(CycleSoak.SoakMinutes, run.Minutes / run.Cycles), new Working(
        "starts at least 30 min apart",
        [new("I", "rate the bare ground takes", new PrecipitationRate(run.Set.IntakeMmh).InchesPerHour, "in/h"), new("S", "water the surface holds", new Depth(run.Set.StorageMm).Inches, "in")],
        "Texas A&M Water University: two or three short cycles, starts 30 to 60 minutes apart",
        Sureness.Published));

    private static IReadOnlyList<Figure> Totals(TriedPhase phase)
    {
        var (fit, minutes, timed) = (phase.Fit, RoundMinutes(phase), phase.Times.Daily is { Holds: true });
        var id = $"water.{fit.Need.Phase.Id}";
        var perDay = fit.Need.RoundsPerDay;
        List<Figure> totals =
        [
            new($"{id}.round-minutes", "Minutes for one round over all sets", QuantityKind.Minutes, minutes, new Working(
                timed ? "from the first start of a round to its last end in the timetable" : "sum over sets of minutes times positions, moves between, or the longest set with its pauses",
                [new("sets", "sprinkler sets", fit.Runs.Count, ""), new("m", "moves", fit.Moves, ""), new("t", "minutes a move (assumed)", WaterScene.UsualMinutesPerMove, "min"), new("s", "set after set", fit.RoundMinutes, "min")],
                timed ? "this plan's timetable: sets run together where flow, timers and hands allow" : "sets run one after another on the tap",
                Sureness.Computed)),
            new($"{id}.day-minutes", "Minutes on a watering day", QuantityKind.Minutes, minutes * perDay, new Working(
                "T = n t", [new("n", "rounds", perDay, ""), new("t", "minutes for one round", minutes, "min")], "arithmetic", Sureness.Computed)),
            new($"{id}.day-volume", "Water on a watering day", QuantityKind.Volume, fit.LitersPerRound * perDay, new Working(
                "V = n sum(D A)", [new("n", "rounds", perDay, ""), new("v", "water of one round", new Volume(fit.LitersPerRound).Gallons, "gal")], "1 in on 1,000 sq ft is 623.4 gal", Sureness.Computed)),
            new($"{id}.hours", "Rounds that fit on the tightest day", QuantityKind.Count, timed ? perDay : fit.TightestRounds, new Working(
                timed ? "all rounds have their runs in the timetable" : "rounds that lie whole inside the allowed hours, each in its own part of the day",
                [new("t", "minutes for one round", minutes, "min"), new("n", "rounds wanted", perDay, "")],
                "allowed hours entered for this lawn; 5:00 to 22:00 where hands are needed, parts of the day assumed",
                Sureness.Computed)),
        ];
        if (fit.Moves > 0)
        {
            totals.Add(new Figure($"{id}.day-moves", "Times a sprinkler is moved on a watering day", QuantityKind.Count, fit.Moves * perDay, new Working(
                "M = n m", [new("n", "rounds", perDay, ""), new("m", "moves in a round", fit.Moves, "")], "arithmetic", Sureness.Computed)));
        }

        return totals;
    }
}
