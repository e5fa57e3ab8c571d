using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>The timetables of one phase: a week of daily rounds, or rounds spread over a week.</summary>
/// <param name="PhaseId">Id of the <see cref="Timing.Phase"/>.</param>
/// <param name="Daily">For phases watered every day.</param>
/// <param name="Seldom">For phases watered on some days; minutes count from Monday 0:00.</param>
public sealed record PhaseTimetables(string PhaseId, WeekTimetable? Daily, TimetableProof? Seldom)
{
    /// <summary>Its proofs, by the days they hold for.</summary>
    public IReadOnlyList<DayTimetable> Proofs => Daily?.Days ?? (Seldom is null ? [] : [new DayTimetable(WeekDays.All, Seldom)]);

    /// <summary>True where every one was found.</summary>
    public bool Holds => Proofs.Count > 0 && Proofs.All(day => day.Proof is TimetableProof.Found);

    /// <summary>True where at least one cannot be.</summary>
    public bool Refused => Proofs.Any(day => day.Proof is TimetableProof.Impossible);
}

/// <summary>A fitted phase of the water proof as a timetable's problem: its runs, free to run together where flow, timers and hands allow.</summary>
internal static class PhaseTimetable
{
    /// <summary>Programs and starts of a timer of which nothing is known but that there is one: enough never to bind.</summary>
    private const int Ample = 99;

    /// <summary>The timetables of a phase.</summary>
    /// <param name="scene">The lawn.</param>
    /// <param name="fit">The phase.</param>
    /// <param name="detail">How much is asked.</param>
    /// <param name="budget">Work left to the solver over all that shares it; null for a budget of its own for each proof.</param>
    internal static PhaseTimetables Of(WaterScene scene, PhaseFit fit, ProofDetail detail, WorkBudget? budget = null)
    {
        var (day, id) = (Problem(scene, fit), fit.Need.Phase.Id);
        if (fit.Need.DaysPerWeek != 7)
        {
            return new PhaseTimetables(id, null, ProofNaming.Of(WeekTimetabling.Seldom(day, Allowed(scene), fit.Need.DaysPerWeek * fit.Need.RoundsPerDay, detail, budget), $"{id}.week"));
        }

        var week = WeekTimetabling.Daily(day, Allowed(scene), detail, budget);
        return new PhaseTimetables(
            id,
            new WeekTimetable([.. week.Days.Select((kind, k) => kind with { Proof = ProofNaming.Of(kind.Proof, FormattableString.Invariant($"{id}.days-{k + 1}")) })], week.MoreDays is { } more ? ProofNaming.Of(more, id) : null),
            null);
    }

    private static TimetableProblem Problem(WaterScene scene, PhaseFit fit) => new()
    {
        Taps = scene.Lines.Taps,
        Main = scene.Lines.Main,
        Sets = [.. fit.Runs.Select(run => Set(scene, run, fit.Runs.Count(other => other.Set.Name == run.Set.Name) == 1))],
        Timers = Timers(scene),
        Rounds = fit.Need.Evening ? RoundPlacing.EveningStart(fit.RoundMinutes) : RoundPlacing.Starts(fit.Need.RoundsPerDay, fit.RoundMinutes),
        Allowed = [],
        Hands = Spans(WateringHours.Usable(null, WeekDays.Monday, byHand: true)),
        MinutesPerTrip = scene.MinutesPerMove,
        GapMinutes = 0,
    };

    private static IReadOnlyList<TimetableTimer> Timers(WaterScene scene) =>
    [
        .. scene.Sets.Select(set => SetTimers.Of(scene, set)).OfType<string>().Distinct()
            .Select(name => scene.Lines.Timers.FirstOrDefault(t => name == t.Name || name.StartsWith($"{t.Name} (", StringComparison.Ordinal)) is { } known ? known with { Name = name } : new TimetableTimer(name, Ample, Ample)),
    ];

    private static TimetableSet Set(WaterScene scene, FittedRun run, bool namedAlone) => new()
    {
        Name = namedAlone ? run.Set.Name : $"{run.Set.Name} ({run.Set.Key})",
        PatchIds = run.Set.PatchIds,
        Flow = FlowRate.FromLitersPerMinute(run.Set.DrawLpm),
        CycleMinutes = run.Minutes / run.Cycles,
        Cycles = run.Cycles,
        Positions = run.Set.Positions,
        Taps = run.Set.Tap is { } tap && scene.Lines.Taps.Any(t => t.Name == tap) ? [tap] : [],
        Timer = SetTimers.Of(scene, run.Set),
    };

    private static IReadOnlyList<IReadOnlyList<MinuteSpan>> Allowed(WaterScene scene) => [.. WateringHours.Week.Select(day => Spans(WateringHours.On(scene.Supply, day)))];

    private static IReadOnlyList<MinuteSpan> Spans(IReadOnlyList<Stretch> stretches) => [.. stretches.Select(s => new MinuteSpan(s.From, s.To))];
}
