using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Water;

/// <summary>
/// A first look at whether every phase fits the allowed hours: set after set, without looking at what could run together, at timers or at
/// the household. It says how much is missing; whether there is a timetable is for <see cref="Timetable.PhaseTimetable"/> to say.
/// </summary>
internal static class WaterFitting
{
    private const double RoundUpGuard = 1e-9;

    internal static IReadOnlyList<PhaseFit> Fit(WaterScene scene) => [.. scene.Needs.Select(need => Fit(scene, need))];

    private static PhaseFit Fit(WaterScene scene, PhaseNeed need)
    {
        FittedRun[] runs = [.. scene.Sets.Select(set => Run(set, need.DepthOf(set)))];
        var moves = runs.Sum(run => (run.Set.Positions - 1) * run.Cycles);
        var minutes = RoundMinutes(runs, scene);
        var byHand = moves > 0 || SetTimers.AnyByHand(scene);
        var evening = false;
        var byDay = new List<IReadOnlyList<int>>();
        var weekMinutes = 0;
        foreach (var day in WateringHours.Week)
        {
            var usable = WateringHours.Usable(scene.Supply, day, byHand);
            byDay.Add(Starts(need, usable, minutes, ref evening));
            weekMinutes += usable.Where(s => s.To - s.From >= LongestPiece(runs)).Sum(s => s.To - s.From);
        }

        return new PhaseFit(need, runs, minutes, moves, byDay, evening, Short(need, byDay, minutes, weekMinutes));
    }

    /// <summary>The longest run that cannot be put off to another day: one position with its pauses.</summary>
    private static int LongestPiece(IReadOnlyList<FittedRun> runs) => runs.Max(run => ((run.Cycles - 1) * (int)CycleSoak.SoakMinutes) + (run.Minutes / run.Cycles));

    private static IReadOnlyList<int> Starts(PhaseNeed need, IReadOnlyList<Stretch> allowed, int minutes, ref bool evening)
    {
        if (need.Evening)
        {
            return RoundPlacing.PlaceEvening(allowed, minutes) is { } start ? [start] : [];
        }

        var starts = RoundPlacing.Place(allowed, minutes, need.RoundsPerDay, out var forced);
        evening |= forced;
        return starts;
    }

    /// <summary>
    /// Minutes a week without allowed time. Daily rounds must each find their part of the day; the seldom, deep ones may be spread set
    /// by set over the week's hours.
    /// </summary>
    private static double Short(PhaseNeed need, IReadOnlyList<IReadOnlyList<int>> byDay, int minutes, int weekMinutes) => need.DaysPerWeek == 7
        ? byDay.Sum(starts => need.RoundsPerDay - starts.Count) * (double)minutes
        : Math.Max(0, (need.DaysPerWeek * need.RoundsPerDay * minutes) - weekMinutes);

    /// <summary>
    /// Whole minutes; the cycles are those of the set's own rate, so that a stronger tap never splits a run further. A hose in the hand
    /// needs no cycles.
    /// </summary>
    private static FittedRun Run(SetFacts set, double netMm)
    {
        var grossMm = netMm * set.RunTimeMultiplier;
        var longest = set.Hand ? null : CycleSoak.LongestRunMinutes(new PrecipitationRate(set.NominalMmh), new PrecipitationRate(set.IntakeMmh), new Depth(set.StorageMm));
        var cycles = CycleSoak.Cycles(60.0 * grossMm / set.NominalMmh, longest);
        var perCycle = (int)Math.Max(1.0, Math.Ceiling((60.0 * grossMm / set.RateMmh / cycles) - RoundUpGuard));
        return new FittedRun(set, netMm, perCycle * cycles, cycles, perCycle * cycles * set.RateMmh / 60.0);
    }

    /// <summary>
    /// Sets run one after another on each tap; while one soaks another runs. Never shorter than the longest set with its own pauses.
    /// Seeding in stages divides the running and moving among the stages.
    /// </summary>
    private static int RoundMinutes(IReadOnlyList<FittedRun> runs, WaterScene scene)
    {
        var busy = new int[scene.Lines.Taps.Count];
        foreach (var run in runs.OrderByDescending(r => r.PositionMinutes))
        {
            var minutes = (run.PositionMinutes + ((run.Set.Positions - 1) * run.Cycles * scene.MinutesPerMove) + scene.Stages - 1) / scene.Stages;
            busy[Array.IndexOf(busy, busy.Min())] += minutes;
        }

        return Math.Max(busy.Max(), LongestPiece(runs));
    }
}
