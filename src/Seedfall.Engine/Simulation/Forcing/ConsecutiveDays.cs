using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>
/// Days without holes for the hourly column: a hole of up to 120 days is bridged with the usual year so that the soil
/// keeps its memory; a longer one starts a new run.
/// </summary>
internal static class ConsecutiveDays
{
    private const int LongestBridgeDays = 120;
    private const double UsualRangeC = 11.0;

    /// <summary>Runs of consecutive days. Each entry names the index of a day in the input, or -1 for a bridging day.</summary>
    internal static IReadOnlyList<(WeatherDay[] Days, int[] Source)> Runs(IReadOnlyList<WeatherDay> days, PlaceClimate climate, double latitudeDeg)
    {
        var runs = new List<(WeatherDay[] Days, int[] Source)>();
        var (run, source) = (new List<WeatherDay>(days.Count), new List<int>(days.Count));
        for (var i = 0; i < days.Count; i++)
        {
            var missing = run.Count == 0 ? 0 : days[i].Date.DayNumber - run[^1].Date.DayNumber - 1;
            if (missing > LongestBridgeDays)
            {
                runs.Add(([.. run], [.. source]));
                (run, source) = ([], []);
                missing = 0;
            }

            for (var k = 0; k < missing; k++)
            {
                run.Add(UsualDay(run[^1].Date.AddDays(1), climate, latitudeDeg));
                source.Add(-1);
            }

            run.Add(days[i]);
            source.Add(i);
        }

        runs.Add(([.. run], [.. source]));
        return runs;
    }

    /// <summary>A day of the usual year, without rain.</summary>
    internal static WeatherDay UsualDay(DateOnly date, PlaceClimate climate, double latitudeDeg)
    {
        var mean = climate.SmoothedC(SeasonAngle.Rad(date, latitudeDeg), 0.0);
        return new WeatherDay(date, mean + (0.5 * UsualRangeC), mean - (0.5 * UsualRangeC), 0.0);
    }
}
