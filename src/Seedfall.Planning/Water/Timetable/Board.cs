using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>A timetable's problem laid out as jobs, links and taps in whole minutes and milliliters.</summary>
internal sealed record Board(
    TimetableProblem Problem,
    IReadOnlyList<Job> Jobs,
    IReadOnlyList<JobLink> Links,
    IReadOnlyList<Rig> Rigs,
    IReadOnlyList<BoardTap> Taps,
    long? Main)
{
    private const double Milliliters = 1000.0;

    private const double Guard = 1e-6;

    internal int Horizon => Problem.Days * WateringHours.MinutesPerDay;

    /// <summary>Most water all taps give in a minute, mL.</summary>
    internal long MostFlow => Math.Min(Main ?? long.MaxValue, Taps.Sum(tap => tap.Flow));

    /// <summary>Distance of a job from its round's wish: sum over its runs of water times twice the minutes from mid-run, mL half-min.</summary>
    internal long Cost(Job job, int start) => job.Runs.Sum(run => run.Water * Math.Abs((2 * (start + run.Offset)) + run.Minutes - (2 * Problem.Rounds[job.Round].Wish)));

    /// <summary>The start of a span that costs a job least. The cost is convex in the start: halve towards the lower side.</summary>
    internal int Nearest(Job job, MinuteSpan span)
    {
        var (low, high) = (span.From, span.To);
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            (low, high) = Cost(job, middle) <= Cost(job, middle + 1) ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    /// <summary>Lays the problem out with so many programs in use at each timer.</summary>
    internal static Board Of(TimetableProblem problem, IReadOnlyDictionary<string, int> programs)
    {
        var layout = new BoardLayout(problem);
        var byTimer = problem.Sets.Select((set, index) => (Index: index, Set: set)).GroupBy(s => s.Set.Timer ?? $"\0{s.Index}");
        foreach (var group in byTimer)
        {
            (int Index, TimetableSet Set)[] sets = [.. group];
            if (sets[0].Set.Timer is { } timer)
            {
                layout.AddTimer(sets, TimerPrograms.Of(sets, programs[timer]));
            }
            else
            {
                layout.AddByHand(sets[0].Index, sets[0].Set);
            }
        }

        return new Board(
            problem,
            layout.Jobs,
            layout.Links,
            layout.Rigs,
            [.. problem.Taps.Select(tap => new BoardTap(
                Whole(tap.Flow - tap.Reserved),
                [.. tap.Household.Select(use => (use.When, Whole(use.Flow)))],
                tap.Well is { } well ? (long)Math.Floor((well.Stored.Liters * Milliliters) + Guard) : null,
                tap.Well is { } back ? Recovery(problem, tap, back) : 0))],
            problem.Main is { } main ? Whole(main) : null);
    }

    /// <summary>
    /// Whole mL/min, rounded down for draws and taps alike: what just fits a tap still does, and a tap is overdrawn by no more than a
    /// milliliter a minute for each set that runs.
    /// </summary>
    internal static long Whole(FlowRate flow) => (long)Math.Floor((flow.LitersPerMinute * Milliliters) + Guard);

    /// <summary>What comes back in one entry of the well's books, no faster than the weakest draw.</summary>
    private static long Recovery(TimetableProblem problem, TimetableTap tap, WellLimit well)
    {
        var weakest = problem.Sets.Where(set => set.Taps.Count == 0 || set.Taps.Contains(tap.Name)).Select(set => set.Flow)
            .Concat(tap.Household.Select(use => use.Flow).Where(flow => flow.LitersPerMinute > 0.0))
            .Append(well.Recovery)
            .Min();
        return (long)Math.Floor((weakest.LitersPerMinute * WellBook.MinutesPerEntry * Milliliters) + Guard);
    }
}
