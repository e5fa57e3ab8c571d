using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;

namespace Seedfall.Planning.Water;

/// <summary>The sky and the water given as far as they are known, by the hour from the season's first day.</summary>
/// <param name="Sky">Rain as the gauge on the lawn has it, and demand; the days forecast at its end.</param>
/// <param name="GivenMm">Water given to the beginning of today, mm.</param>
/// <param name="Today">Index of today.</param>
/// <param name="Assumed">True where nothing was written of water given: the fixed rounds are taken as given.</param>
/// <param name="Missing">Days without weather, taken as the usual year's.</param>
internal sealed record WaterKnown(BedWeather Sky, double[] GivenMm, int Today, bool Assumed, int Missing)
{
    /// <summary>A set stands in its place for so long before the usual answer is doubted, mm.</summary>
    private const double MostMm = 100.0;

    internal static WaterKnown Of(DailyScene scene)
    {
        var first = scene.Place.FirstDay;
        var (today, missing) = (scene.Today.DayNumber - first.DayNumber, 0);
        var days = new List<WeatherDay>();
        for (var date = first; date < scene.Today || scene.Weather.Day(date) is not null; date = date.AddDays(1))
        {
            missing += scene.Weather.Day(date) is null ? 1 : 0;
            days.Add(scene.Weather.Day(date) ?? SeasonWindow.Usual(date, scene.Place.Climate, scene.Place.Place.LatitudeDeg));
        }

        var sky = BedWeather.Of(days, scene.Place.Place, scene.Place.Climate, SoilHeatConstants.Shipped);
        foreach (var gauge in Mine<LogEntry.Rained>(scene, scene.Today))
        {
            Replace(sky.RainMm, Hour(scene, gauge), gauge.Caught.Millimeters, 24 * today);
        }

        var (given, assumed) = Given(scene, today);
        return new WaterKnown(sky, given, today, assumed, missing);
    }

    /// <summary>Hour of the season in which an entry was written.</summary>
    internal static int Hour(DailyScene scene, LogEntry entry) => (24 * (entry.Day.DayNumber - scene.Place.FirstDay.DayNumber)) + entry.At.Hour;

    /// <summary>Entries of one kind for this patch or the whole lawn, from seed-down to the beginning of today, or to another day.</summary>
    internal static IEnumerable<T> Mine<T>(DailyScene scene, DateOnly? last = null)
        where T : LogEntry =>
        scene.Log.During<T>(scene.SeedDown, last ?? scene.Today.AddDays(-1)).Where(e => e.PatchId is null || e.PatchId == scene.PatchId);

    /// <summary>Water by the hour; a run of a set that does not water this patch gave it none.</summary>
    private static (double[] GivenMm, bool Assumed) Given(DailyScene scene, int today)
    {
        var given = new double[24 * today];
        var watered = Mine<LogEntry.Watered>(scene).ToList();
        foreach (var entry in watered)
        {
            // A patch written down beside a set of another name, renamed since perhaps, was watered all the same.
            var set = scene.Sets.FirstOrDefault(s => entry.Set is null || s.Name == entry.Set) ?? (entry.PatchId is null ? null : scene.Sets[0]);
            if (set is null)
            {
                continue;
            }

            given[Hour(scene, entry)] += Math.Min(MostMm, entry.Given?.Millimeters ?? entry.Minutes!.Value / 60.0 * set.RateMmh);
        }

        var down = scene.SeedDown.DayNumber - scene.Place.FirstDay.DayNumber;
        for (var day = down; watered.Count == 0 && day < today; day++)
        {
            foreach (var start in scene.Starts)
            {
                given[(24 * day) + start] = scene.FixedMm;
            }
        }

        return (given, watered.Count == 0 && today > down);
    }

    /// <summary>
    /// Puts what a gauge caught in place of the 24 hours' rain before, in the same hours where it rained, else evenly. What one read today
    /// caught counts as fallen before today began, so that it is not watered again.
    /// </summary>
    private static void Replace(double[] rain, int hour, double caughtMm, int end)
    {
        var last = Math.Min(hour, end - 1);
        var hours = rain.AsSpan(Math.Clamp(hour - 23, 0, last)..(last + 1));
        var sum = 0.0;
        foreach (var mm in hours)
        {
            sum += mm;
        }

        foreach (ref var mm in hours)
        {
            mm = sum > 0.0 ? mm * caughtMm / sum : caughtMm / hours.Length;
        }
    }
}
