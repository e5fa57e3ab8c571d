namespace Seedfall.Planning.Water.Timetable;

/// <summary>What timers can be set to.</summary>
internal static class TimerLimits
{
    /// <summary>Why a timer cannot hold its sets however they are timed; null where it can.</summary>
    internal static string? Of(TimetableProblem problem)
    {
        foreach (var timer in problem.Timers)
        {
            if (Sets(problem, timer) is { Count: > 0 } sets)
            {
                var (programs, starts) = Needed(problem, sets, timer.Programs);
                if (programs > timer.Programs)
                {
                    return $"{timer.Name} needs {programs} programs for sets that are moved by hand, and has {timer.Programs}.";
                }

                if (starts > timer.StartsPerDay)
                {
                    return $"{timer.Name} needs {starts} starts a day, and has {timer.StartsPerDay}.";
                }
            }
        }

        return null;
    }

    /// <summary>Programs used at each timer, from fewest to all.</summary>
    internal static IReadOnlyList<IReadOnlyDictionary<string, int>> Choices(TimetableProblem problem)
    {
        var used = problem.Timers.Select(timer => (timer, Sets: Sets(problem, timer))).Where(t => t.Sets.Count > 0).ToArray();
        var choices = new List<IReadOnlyDictionary<string, int>>();
        var most = used.Select(u => Math.Min(u.timer.Programs, u.Sets.Count)).DefaultIfEmpty(1).Max();
        for (var extra = 0; extra < most; extra++)
        {
            var choice = used.ToDictionary(u => u.timer.Name, u => Math.Min(Math.Min(u.timer.Programs, u.Sets.Count), Kinds(u.Sets) + extra));
            if (choices.Count == 0 || used.Any(u => choices[^1][u.timer.Name] != choice[u.timer.Name]))
            {
                choices.Add(choice);
            }
        }

        return choices;
    }

    /// <summary>Programs and starts a day a timer's sets need, with no more than so many programs.</summary>
    internal static (int Programs, int Starts) Needed(TimetableProblem problem, IReadOnlyList<(int Index, TimetableSet Set)> sets, int most)
    {
        var programs = TimerPrograms.Of(sets, Math.Min(most, Kinds(sets)));
        var rounds = problem.Days == 1 ? problem.Rounds.Count : 1;
        return (programs.Count, programs.Max(p => p.Cycles * problem.Sets[p.Sets[0]].Positions) * rounds);
    }

    internal static IReadOnlyList<(int Index, TimetableSet Set)> Sets(TimetableProblem problem, TimetableTimer timer) =>
        [.. problem.Sets.Select((set, index) => (index, set)).Where(s => s.set.Timer == timer.Name)];

    private static int Kinds(IReadOnlyList<(int Index, TimetableSet Set)> sets) => sets.GroupBy(s => (s.Set.Cycles, s.Set.Positions > 1 ? s.Index : -1)).Count();
}
