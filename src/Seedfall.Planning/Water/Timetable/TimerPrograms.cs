namespace Seedfall.Planning.Water.Timetable;

/// <summary>How a timer's sets are divided among its programs.</summary>
internal static class TimerPrograms
{
    /// <summary>
    /// Programs, each a run of sets in the order entered. Sets with as many cycles share one; where there are more kinds than programs,
    /// those with fewest cycles take on the next number, for a program has one number of starts. Programs left over halve the longest.
    /// A moved set has a program to itself, so that more than wanted may come out.
    /// </summary>
    /// <param name="sets">The timer's sets with their indexes.</param>
    /// <param name="wanted">Programs to use; at least 1.</param>
    internal static IReadOnlyList<TimerProgram> Of(IReadOnlyList<(int Index, TimetableSet Set)> sets, int wanted)
    {
        var groups = sets.GroupBy(s => (s.Set.Cycles, Moved: s.Set.Positions > 1 ? s.Index : -1)).OrderBy(g => g.Key.Cycles).Select(g => g.ToList()).ToList();
        while (groups.Count > wanted && groups.Count(g => g[0].Set.Positions == 1) > 1)
        {
            var still = groups.Where(g => g[0].Set.Positions == 1).Take(2).ToArray();
            groups[groups.IndexOf(still[1])] = [.. still[0].Concat(still[1]).OrderBy(s => s.Index)];
            groups.Remove(still[0]);
        }

        while (groups.Count < wanted && groups.Any(g => g.Count > 1))
        {
            var longest = groups.Where(g => g.Count > 1).MaxBy(g => g.Sum(s => s.Set.CycleMinutes))!;
            var at = groups.IndexOf(longest);
            var half = (longest.Count + 1) / 2;
            groups.Insert(at + 1, longest[half..]);
            groups[at] = longest[..half];
        }

        return [.. groups.Select(Program)];
    }

    private static TimerProgram Program(List<(int Index, TimetableSet Set)> group)
    {
        var cycles = group.Max(s => s.Set.Cycles);
        return new TimerProgram(
            [.. group.Select(s => s.Index)],
            [.. group.Select(s => ((s.Set.CycleMinutes * s.Set.Cycles) + cycles - 1) / cycles)],
            cycles,
            group.Max(s => s.Set.SoakMinutes));
    }
}

/// <summary>A program: its sets, their minutes at every start, and starts a round.</summary>
internal sealed record TimerProgram(IReadOnlyList<int> Sets, IReadOnlyList<int> Minutes, int Cycles, int SoakMinutes);
