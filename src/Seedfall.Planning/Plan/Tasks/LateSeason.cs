using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>When growth slows and stops in the late season.</summary>
/// <param name="LateFeed">Median date by which the 10-day mean air temperature has fallen to 50 degF.</param>
/// <param name="LastMow">Median date by which it has fallen to 45 degF.</param>
public sealed record LateSeason(Figure LateFeed, Figure LastMow)
{
    private const int SmoothingDays = 10;
    private const double FeedC = 10.0;
    private const double MowC = 7.2;

    /// <summary>Medians over the past seasons; a calendar fallback where no season is known.</summary>
    public static LateSeason Of(WeatherHistory weather, int season, bool south)
    {
        var start = new DateOnly(season, south ? 3 : 9, 1);
        return new(
            Figure("timing.late-feed", "Late-fall feeding", weather, start, season, FeedC, 75),
            Figure("timing.last-mow", "Last mowing", weather, start, season, MowC, 90));
    }

    private static Figure Figure(string id, string label, WeatherHistory weather, DateOnly start, int season, double thresholdC, int fallbackDays)
    {
        var offsets = Enumerable.Range(weather.Years.Count == 0 ? season : weather.Years[0], weather.Years.Count == 0 ? 0 : weather.Years[^1] - weather.Years[0] + 1)
            .Where(year => year != season)
            .Select(year => DaysToFall(weather, new DateOnly(year, start.Month, start.Day), thresholdC))
            .OfType<int>()
            .Order()
            .ToList();
        var known = offsets.Count > 0;
        var days = known ? offsets[offsets.Count / 2] : fallbackDays;
        var working = new Working(
            known ? "median over past seasons of the first day whose 10-day mean air temperature is at or below T" : "usual date: no past season reached it or none is known",
            [new("T", "threshold", thresholdC, "degC"), new("n", "past seasons", offsets.Count, "")],
            "common practice, no source read: top growth of cool-season grass slows near 50 degF and stops near 45 degF",
            Sureness.CommonPractice);
        return new Figure(id, label, QuantityKind.Date, start.AddDays(days).DayNumber, working);
    }

    /// <summary>Days after start of the first day whose 10-day mean is at or below the threshold; null where unknown within 150 days.</summary>
    private static int? DaysToFall(WeatherHistory weather, DateOnly start, double thresholdC)
    {
        var sum = 0.0;
        for (var offset = 1 - SmoothingDays; offset <= 150; offset++)
        {
            if (weather.Day(start.AddDays(offset)) is not { } day)
            {
                return null;
            }

            sum += day.AverageC;
            if (offset < 0)
            {
                continue;
            }

            if (sum / SmoothingDays <= thresholdC)
            {
                return offset;
            }

            sum -= weather.Day(start.AddDays(offset + 1 - SmoothingDays))!.AverageC;
        }

        return null;
    }
}
