using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>A timetable's problem laid out as jobs, links and taps in whole minutes and centiliters.</summary>
internal sealed record Board(
    TimetableProblem Problem,
    IReadOnlyList<Job> Jobs,
    IReadOnlyList<JobLink> Links,
    IReadOnlyList<Rig> Rigs,
    IReadOnlyList<BoardTap> Taps,
    long? Main)
{
    private const double Centiliters = 100.0;

    private const double Guard = 1e-6;

    internal int Horizon => Problem.Days * WateringHours.MinutesPerDay;

    /// <summary>Most water all taps give in a minute, cL.</summary>
    internal long MostFlow => Math.Min(Main ?? long.MaxValue, Taps.Sum(tap => tap.Flow));

    /// <summary>Distance of a job from its round's wish: sum over its runs of water times twice the minutes from mid-run, cL half-min.</summary>
    internal long Cost(Job job, int start) => job.Runs.Sum(run => run.Water * Math.Abs((2 * (start + run.Offset)) + run.Minutes - (2 * Problem.Rounds[job.Round].Wish)));

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
                Down(tap.Flow) - Up(tap.Reserved),
                [.. tap.Household.Select(use => (use.When, Up(use.Flow)))],
                tap.Well is { } well ? (long)Math.Floor((well.Stored.Liters * Centiliters) + Guard) : null,
                tap.Well is { } back ? Recovery(problem, tap, back) : 0))],
            problem.Main is { } main ? Down(main) : null);
    }

    internal static long Up(FlowRate flow) => (long)Math.Ceiling((flow.LitersPerMinute * Centiliters) - Guard);

    /// <summary>What comes back in one entry of the well's books, no faster than the weakest draw.</summary>
    private static long Recovery(TimetableProblem problem, TimetableTap tap, WellLimit well)
    {
        var weakest = problem.Sets.Where(set => set.Taps.Count == 0 || set.Taps.Contains(tap.Name)).Select(set => set.Flow)
            .Concat(tap.Household.Select(use => use.Flow).Where(flow => flow.LitersPerMinute > 0.0))
            .Append(well.Recovery)
            .Min();
        return (long)Math.Floor((weakest.LitersPerMinute * WellBook.MinutesPerEntry * Centiliters) + Guard);
    }

    private static long Down(FlowRate flow) => (long)Math.Floor((flow.LitersPerMinute * Centiliters) + Guard);
}
