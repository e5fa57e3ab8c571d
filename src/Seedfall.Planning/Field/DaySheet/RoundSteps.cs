using System.Globalization;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Field;

/// <summary>The first water of seed-down day, and the rounds of the days after it.</summary>
internal static class RoundSteps
{
    internal static DayStep First(DayFacts facts)
    {
        var (task, runs) = (facts.Task("water.first"), SetRuns.OfPhase(facts, "seedbed"));
        return new DayStep
        {
            Id = "water.first",
            Kind = TaskKind.Water,
            Title = "First water",
            Start = task?.Start,
            Big = [.. runs.Select(r => r.Minutes)],
            Lines = ["Gently, until the top half inch is wet and before anything puddles or runs.", .. runs.Select(r => r.Line)],
            OnlyWhen = task?.Conditions ?? [],
            Timers = SetRuns.Timers("water.first", runs),
            Records = SetRuns.Records("water.first", runs),
            Troubles = Trouble.Watering,
        };
    }

    /// <summary>The day's rounds, one step each, and the finger in the soil before the second.</summary>
    internal static IEnumerable<DayStep> Of(DayFacts facts, PlanTask task)
    {
        var (rounds, why) = Rounds(facts, task);
        if (rounds.Count == 0)
        {
            yield return Finger(facts, task, null) with { Title = "No round today: check with a finger", Lines = [why, FingerLine] };
            yield break;
        }

        yield return Finger(facts, task, rounds.Count > 1 ? rounds[1].Start?.AddMinutes(-10) : rounds[0].Start?.AddMinutes(-10));
        for (var i = 0; i < rounds.Count; i++)
        {
            var id = FormattableString.Invariant($"{task.Id}.round-{i + 1}");
            yield return new DayStep
            {
                Id = id,
                Kind = TaskKind.Water,
                Title = rounds.Count == 1 ? "Water" : string.Create(CultureInfo.InvariantCulture, $"Round {i + 1} of {rounds.Count}"),
                Start = rounds[i].Start,
                Big = [.. rounds[i].Runs.Select(r => r.Minutes)],
                Lines = [.. i == 0 ? [why] : Array.Empty<string>(), .. rounds[i].Runs.Select(r => r.Line)],
                OnlyWhen = task.Conditions,
                Timers = SetRuns.Timers(id, rounds[i].Runs),
                Records = SetRuns.Records(id, rounds[i].Runs),
                Troubles = Trouble.Watering,
            };
        }
    }

    private const string FingerLine = "Push a finger in at the driest place: the top half to three quarters of an inch should be moist, not soggy.";

    private static DayStep Finger(DayFacts facts, PlanTask task, TimeOnly? start) => new()
    {
        Id = $"{task.Id}.finger",
        Kind = TaskKind.Look,
        Title = "Finger in the soil",
        Start = start,
        Lines = [FingerLine],
        Records = [SoakSteps.Felt($"{task.Id}.finger.felt", facts)],
        Troubles = [new("It is dry crumbs", "Give a round now, then look whether the sprinklers reach this place."), new("Water shows", "Leave the next round out and look again before the one after.")],
    };

    private static (IReadOnlyList<(TimeOnly? Start, IReadOnlyList<DayRun> Runs)> Rounds, string Why) Rounds(DayFacts facts, PlanTask task)
    {
        if (facts.Water?.Week.FirstOrDefault(d => d.Day == facts.Date) is { } day)
        {
            var rounds = TapRound.Of(day.Runs);
            return (
                [.. rounds.Select((round, i) => ((TimeOnly?)round.Start, SetRuns.OfRound(FormattableString.Invariant($"{task.Id}.round-{i + 1}"), round)))],
                rounds.Count == 0 ? "The ground holds enough until tomorrow's first round." : day.Forecast ? "Worked out from what fell, what was given and the forecast." : "Worked out from what fell and what was given; the weather ahead is only the usual.");
        }

        var phase = facts.Plan.Water.Phases.FirstOrDefault(p => $"water.{p.PhaseId}" == task.Id);
        var runs = phase is null ? [] : SetRuns.OfPhase(facts, phase.PhaseId);
        return runs.Count == 0 ? ([], "The water proof has no rounds for this lawn yet: water so that the top stays moist.")
            : phase!.RoundsPerDay < 1.0 - 1e-9 ? ([(phase.Starts is { Count: > 0 } first ? first[0] : null, runs)], $"{phase.Sentence} Leave today out where yesterday had its turn.")
            : ([.. phase.Starts.Select(start => ((TimeOnly?)start, runs))], phase.Sentence);
    }
}
