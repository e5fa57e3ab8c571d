using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation;

/// <summary>Which measured soil temperatures a validation scores.</summary>
public static class MeasuredSoil
{
    /// <summary>Days of exactly one value, away from freezing, from which a probe counts as stuck.</summary>
    public const int StuckDays = 7;

    private const double LowestC = -30.0;
    private const double HighestC = 50.0;

    /// <summary>True for August to November (February to May in the south) with a believable value.</summary>
    public static bool Scored(WeatherDay day, double latitudeDeg) =>
        SeasonAngle.Month(day.Date, latitudeDeg) is >= 8 and <= 11 && day.Soil5CmC is >= LowestC and <= HighestC;

    /// <summary>For each day whether it is scored: in season, believable, and not part of a run of a stuck probe.</summary>
    public static bool[] ScoredDays(IReadOnlyList<WeatherDay> days, double latitudeDeg, out int stuck)
    {
        bool[] scored = [.. days.Select(day => Scored(day, latitudeDeg))];
        stuck = 0;
        foreach (var run in StuckRuns(days))
        {
            for (var d = run.First; d <= run.Last; d++)
            {
                stuck += scored[d] ? 1 : 0;
                scored[d] = false;
            }
        }

        return scored;
    }

    /// <summary>Runs of days on which a probe stood at one value, by the days' indices. Near freezing soil does hold still, so there none counts.</summary>
    public static IReadOnlyList<StuckRun> StuckRuns(IReadOnlyList<WeatherDay> days)
    {
        var runs = new List<StuckRun>();
        for (var first = 0; first < days.Count;)
        {
            var next = first + 1;
            while (next < days.Count && days[first].Soil5CmC is { } value && days[next].Soil5CmC == value)
            {
                next++;
            }

            if (next - first >= StuckDays && days[first].Soil5CmC is { } stood && Math.Abs(stood) > 1.0)
            {
                runs.Add(new StuckRun(first, next - 1, stood));
            }

            first = next;
        }

        return runs;
    }
}

/// <summary>Days on which a probe stood still.</summary>
/// <param name="First">Index of the first day.</param>
/// <param name="Last">Index of the last.</param>
/// <param name="ValueC">Where it stood, degC.</param>
public readonly record struct StuckRun(int First, int Last, double ValueC);
