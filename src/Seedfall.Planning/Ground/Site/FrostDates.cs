using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Ground;

/// <summary>One kind of frost date over the years: early, middle, late.</summary>
/// <param name="Years">Years it is known in.</param>
/// <param name="Median">Middle date, told as a day of <see cref="ClimateFacts.ShownYear"/>.</param>
/// <param name="Early">One year in ten is earlier.</param>
/// <param name="Late">One year in ten is later.</param>
public sealed record FrostDates(int Years, Figure Median, DateOnly Early, DateOnly Late)
{
    // What prints as -2.2 degC is at 28 degF.
    private const double RoundingC = 0.05;

    /// <summary>First night of autumn at or below a threshold; null where fewer than three years are known.</summary>
    public static FrostDates? Autumn(WeatherHistory weather, bool south, Temperature threshold, string id, string label) =>
        Of(weather, south, autumn: true, threshold, id, label);

    /// <summary>Last night of spring at or below a threshold.</summary>
    public static FrostDates? Spring(WeatherHistory weather, bool south, Temperature threshold, string id, string label) =>
        Of(weather, south, autumn: false, threshold, id, label);

    private static FrostDates? Of(WeatherHistory weather, bool south, bool autumn, Temperature threshold, string id, string label)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var half = Half(south, autumn, ClimateFacts.ShownYear);
        List<double> found = [];
        foreach (var year in weather.Years)
        {
            var (first, last) = Half(south, autumn, year);
            if (weather.Span(first, last) is { } days && (autumn ? days.FirstOrDefault(Frosty) : days.LastOrDefault(Frosty)) is { } night)
            {
                found.Add(night.Date.DayNumber - first.DayNumber);
            }
        }

        if (found.Count < 3)
        {
            return null;
        }

        double[] offsets = [.. found.Order()];
        var middle = At(0.5);
        return new FrostDates(offsets.Length, new Figure(id, label, QuantityKind.Date, middle.DayNumber, new Working(
            autumn ? "median over the years of the first night at or below T" : "median over the years of the last night at or below T",
            [new("T", "threshold", threshold.Fahrenheit, "degF"), new("n", "years with such a night and no day missing", offsets.Length, "")],
            "this place's weather history",
            Sureness.Computed,
            "In the shelter, at 5 to 6 ft; grass on a still night is several degrees colder. The year shown does not count.")), At(0.1), At(0.9));

        bool Frosty(WeatherDay day) => day.TminC <= threshold.Celsius + RoundingC;
        DateOnly At(double share) => half.First.AddDays((int)Math.Round(Spread.Percentile(offsets, share), MidpointRounding.AwayFromZero));
    }

    /// <summary>From midsummer to midwinter, or on to midsummer.</summary>
    private static (DateOnly First, DateOnly Last) Half(bool south, bool autumn, int year) =>
        autumn != south ? (new DateOnly(year, 7, 1), new DateOnly(year, 12, 31)) : (new DateOnly(year, 1, 1), new DateOnly(year, 6, 30));
}
