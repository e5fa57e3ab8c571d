namespace Seedfall.Engine.Weather;

/// <summary>
/// Daily weather of one place: days in order, each date at most once, gaps of up to three days filled and marked,
/// longer gaps absent. Built by the weather readers; the planning core only reads it.
/// </summary>
/// <param name="Station">Where it was measured, as the file says; null where the file does not say.</param>
/// <param name="StationName">Name or id in the file.</param>
/// <param name="Days">Days in ascending order of date, no date twice.</param>
/// <param name="Sources">One line per file read, for the plan's sources.</param>
/// <param name="Notes">What was assumed, filled or dropped, in plain sentences.</param>
public sealed record WeatherHistory(
    Place? Station,
    string StationName,
    IReadOnlyList<WeatherDay> Days,
    IReadOnlyList<string> Sources,
    IReadOnlyList<string> Notes)
{
    private readonly WeatherDay[] _days = [.. Days];

    private readonly Dictionary<int, int> _indexByDayNumber = BuildIndex(Days);

    /// <summary>Days in ascending order of date, no date twice; throws where they do not ascend.</summary>
    public IReadOnlyList<WeatherDay> Days
    {
        get => _days;
        init => (_days, _indexByDayNumber) = ([.. value], BuildIndex(value));
    }

    /// <summary>The day, or null where it is missing.</summary>
    public WeatherDay? Day(DateOnly date) => _indexByDayNumber.TryGetValue(date.DayNumber, out var i) ? _days[i] : null;

    /// <summary>The days from first to last inclusive, or null where any is missing.</summary>
    public IReadOnlyList<WeatherDay>? Span(DateOnly first, DateOnly last)
    {
        if (last < first)
        {
            throw new ArgumentOutOfRangeException(nameof(last), last, $"must not be before {first:yyyy-MM-dd}");
        }

        var count = last.DayNumber - first.DayNumber + 1;
        if (!_indexByDayNumber.TryGetValue(first.DayNumber, out var start) || start + count > _days.Length || _days[start + count - 1].Date != last)
        {
            return null;
        }

        return new ArraySegment<WeatherDay>(_days, start, count);
    }

    /// <summary>Calendar years with at least one day, ascending.</summary>
    public IReadOnlyList<int> Years => [.. _days.Select(d => d.Date.Year).Distinct()];

    /// <summary>The same with every day after today marked as forecast.</summary>
    public WeatherHistory WithDaysAheadForecast(DateOnly today) =>
        _days.Length == 0 || _days[^1].Date <= today ? this : this with { Days = [.. _days.Select(d => d.Date > today ? d with { Quality = DayQuality.Forecast } : d)] };

    /// <summary>The days to today, then the days ahead another history gives, marked as forecast; what this one says of days ahead is left out.</summary>
    /// <param name="ahead">Holds the forecast.</param>
    /// <param name="today">Last day taken as it was.</param>
    public WeatherHistory WithForecast(WeatherHistory ahead, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(ahead);
        return this with
        {
            Days = [.. _days.TakeWhile(d => d.Date <= today), .. ahead._days.Where(d => d.Date > today).Select(d => d with { Quality = DayQuality.Forecast })],
            Sources = [.. Sources, .. ahead.Sources.Select(source => $"Forecast: {source}")],
            Notes = [.. Notes, .. ahead.Notes],
        };
    }

    private static Dictionary<int, int> BuildIndex(IReadOnlyList<WeatherDay> days)
    {
        var index = new Dictionary<int, int>(days.Count);
        for (var i = 0; i < days.Count; i++)
        {
            if (i > 0 && days[i].Date <= days[i - 1].Date)
            {
                throw new ArgumentException($"days must ascend: {days[i].Date:yyyy-MM-dd} follows {days[i - 1].Date:yyyy-MM-dd}", nameof(days));
            }

            index.Add(days[i].Date.DayNumber, i);
        }

        return index;
    }
}
