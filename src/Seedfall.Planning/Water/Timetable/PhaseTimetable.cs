using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>The timetables of one phase: a week of daily rounds, or rounds spread over a week.</summary>
/// <param name="PhaseId">Id of the <see cref="Timing.Phase"/>.</param>
/// <param name="Daily">For phases watered every day.</param>
/// <param name="Seldom">For phases watered on some days; minutes count from Monday 0:00.</param>
public sealed record PhaseTimetables(string PhaseId, WeekTimetable? Daily, TimetableProof? Seldom);

/// <summary>A fitted phase of the water proof as a timetable's problem: the same runs, but free to run together where the flow allows.</summary>
internal static class PhaseTimetable
{
    /// <summary>Programs and starts of a timer of which nothing is known but that there is one: enough never to bind.</summary>
    private const int Ample = 99;

    internal static PhaseTimetables Of(WaterScene scene, PhaseFit fit, FlowRate tap)
    {
        var day = Problem(scene, fit, tap);
        return fit.Need.DaysPerWeek == 7
            ? new PhaseTimetables(fit.Need.Phase.Id, WeekTimetabling.Daily(day, Allowed(scene)), null)
            : new PhaseTimetables(fit.Need.Phase.Id, null, WeekTimetabling.Seldom(day, Allowed(scene), fit.Need.DaysPerWeek * fit.Need.RoundsPerDay));
    }

    private static TimetableProblem Problem(WaterScene scene, PhaseFit fit, FlowRate tap)
    {
        var timed = scene.Supply?.Timer == true;
        return new TimetableProblem
        {
            Taps = [.. Enumerable.Range(1, scene.Taps).Select(n => new TimetableTap($"tap {n}", tap))],
            Sets = [.. fit.Runs.Select(run => Set(run, timed && !run.Set.Hand, fit.Runs.Count(other => other.Set.Name == run.Set.Name) == 1))],
            Timers = timed ? [.. fit.Runs.Where(run => !run.Set.Hand).Select(run => new TimetableTimer(run.Set.Key, Ample, Ample))] : [],
            Rounds = fit.Need.Evening ? RoundPlacing.EveningStart(fit.RoundMinutes) : RoundPlacing.Starts(fit.Need.RoundsPerDay, fit.RoundMinutes),
            Allowed = [],
            Hands = Spans(WateringHours.Usable(null, WeekDays.Monday, byHand: true)),
            MinutesPerTrip = scene.MinutesPerMove,
            GapMinutes = 0,
        };
    }

    private static TimetableSet Set(FittedRun run, bool timed, bool namedAlone) => new()
    {
        Name = namedAlone ? run.Set.Name : $"{run.Set.Name} ({run.Set.Key})",
        PatchIds = run.Set.PatchIds,
        Flow = FlowRate.FromLitersPerMinute(run.Set.DrawLpm),
        CycleMinutes = run.Minutes / run.Cycles,
        Cycles = run.Cycles,
        Positions = run.Set.Positions,
        Timer = timed ? run.Set.Key : null,
    };

    private static IReadOnlyList<IReadOnlyList<MinuteSpan>> Allowed(WaterScene scene) => [.. WateringHours.Week.Select(day => Spans(WateringHours.On(scene.Supply, day)))];

    private static IReadOnlyList<MinuteSpan> Spans(IReadOnlyList<Stretch> stretches) => [.. stretches.Select(s => new MinuteSpan(s.From, s.To))];
}
