namespace Seedfall.Planning.Water.Timetable;

/// <summary>Refuses a problem that cannot be meant.</summary>
internal static class TimetableDoor
{
    internal static void Check(TimetableProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        Require(problem.Taps.Count > 0, "at least one tap is needed");
        Require(problem.Sets.Count > 0, "at least one set is needed");
        Require(problem.Rounds.Count > 0, "at least one round is needed");
        Require(problem.Days is >= 1 and <= 7, "days from 1 to 7 are needed");
        Require(problem.MinutesPerTrip >= 0 && problem.GapMinutes >= 0, "minutes cannot be negative");
        Require(Unique(problem.Taps.Select(t => t.Name)) && Unique(problem.Sets.Select(s => s.Name)) && Unique(problem.Timers.Select(t => t.Name)), "names must differ");
        Spans(problem.Allowed, problem, nameof(problem.Allowed));
        Spans(problem.Hands, problem, nameof(problem.Hands));
        foreach (var tap in problem.Taps)
        {
            Require(tap.Flow.LitersPerMinute > 0.0 && tap.Reserved.LitersPerMinute >= 0.0 && tap.Household.All(use => use.Flow.LitersPerMinute >= 0.0), $"{tap.Name}: a flow above zero is needed");
            Require(tap.Household.All(use => use.When.From >= 0 && use.When.To > use.When.From && use.When.To <= Horizon(problem)), $"{tap.Name}: household hours outside the days");
            Require(tap.Well is null || (tap.Well.Stored.Liters >= 0.0 && tap.Well.Recovery.LitersPerMinute >= 0.0), $"{tap.Name}: a well cannot hold less than nothing");
        }

        foreach (var set in problem.Sets)
        {
            Require(set.Flow.LitersPerMinute > 0.0, $"{set.Name}: a flow above zero is needed");
            Require(set is { CycleMinutes: > 0, Cycles: > 0, Positions: > 0, SoakMinutes: >= 0 }, $"{set.Name}: minutes, cycles and positions above zero are needed");
            Require(set.Taps.All(name => problem.Taps.Any(tap => tap.Name == name)), $"{set.Name}: unknown tap");
            Require(set.Timer is null || problem.Timers.Any(timer => timer.Name == set.Timer), $"{set.Name}: unknown timer");
        }

        Require(problem.Timers.All(timer => timer is { Programs: > 0, StartsPerDay: > 0 }), "a timer needs a program and a start");
        Require(problem.Rounds.All(round => round.From >= 0 && round.To >= round.From), "a round's part ends before it begins");
        Require(
            problem.Sets.Where(set => set.Timer is not null).GroupBy(set => set.Timer).All(group => group.All(set => set.Taps.SequenceEqual(group.First().Taps))),
            "the sets of one timer stand on the same taps");
    }

    private static int Horizon(TimetableProblem problem) => problem.Days * WateringHours.MinutesPerDay;

    private static bool Unique(IEnumerable<string> names) => names.GroupBy(name => name).All(group => group.Count() == 1);

    private static void Spans(IReadOnlyList<MinuteSpan> spans, TimetableProblem problem, string name)
    {
        var end = 0;
        foreach (var span in spans)
        {
            Require(span.From >= end && span.To > span.From && span.To <= Horizon(problem), $"{name}: spans in order inside the days are needed");
            end = span.To;
        }
    }

    private static void Require(bool held, string message)
    {
        if (!held)
        {
            throw new ArgumentException(message, "problem");
        }
    }
}
