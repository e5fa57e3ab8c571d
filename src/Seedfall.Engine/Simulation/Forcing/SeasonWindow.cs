using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>
/// The consecutive days one season's simulation needs: a run-up that only smoothed weather and soil remember, then the
/// season itself.
/// </summary>
/// <param name="Year">Calendar year of the season the later days come from.</param>
/// <param name="Days">Run-up and season, no day missing.</param>
/// <param name="RunUpDays">Days before the season's first.</param>
public sealed record SeasonWindow(int Year, WeatherDay[] Days, int RunUpDays)
{
    /// <summary>Days of run-up cut where the caller has no wish of their own.</summary>
    public const int UsualRunUpDays = 45;

    private const double FadeDays = 4.5;
    private const int AnomalyDays = 3;

    /// <summary>Days in the season.</summary>
    public int SeasonDays => Days.Length - RunUpDays;

    /// <summary>
    /// Cuts the days up to <paramref name="last"/>, ending early at the first day missing on or after <paramref name="needed"/>;
    /// days missing before that are bridged with the usual year.
    /// </summary>
    /// <param name="history">Weather of the place.</param>
    /// <param name="year">Calendar year the window is named for.</param>
    /// <param name="first">First day of the season, run-up not counted.</param>
    /// <param name="needed">Day from which none may be missing, at or after <paramref name="first"/>.</param>
    /// <param name="last">Last day wanted.</param>
    /// <param name="climate">The usual year.</param>
    /// <param name="latitudeDeg">Degrees north.</param>
    public static SeasonWindow Cut(WeatherHistory history, int year, DateOnly first, DateOnly needed, DateOnly last, PlaceClimate climate, double latitudeDeg)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(needed, first);
        ArgumentOutOfRangeException.ThrowIfLessThan(last, first);
        var days = new List<WeatherDay>(last.DayNumber - first.DayNumber + 1 + UsualRunUpDays);
        for (var date = first.AddDays(-UsualRunUpDays); date <= last; date = date.AddDays(1))
        {
            if (history.Day(date) is { } day)
            {
                days.Add(day);
            }
            else if (date < needed)
            {
                days.Add(ConsecutiveDays.UsualDay(date, climate, latitudeDeg));
            }
            else
            {
                break;
            }
        }

        return new SeasonWindow(year, [.. days], UsualRunUpDays);
    }

    /// <summary>A day of the usual year, without rain.</summary>
    public static WeatherDay Usual(DateOnly date, PlaceClimate climate, double latitudeDeg) => ConsecutiveDays.UsualDay(date, climate, latitudeDeg);

    /// <summary>
    /// This season as far as it is known, gone on with as a past one went. After the last known day the air keeps what this
    /// season was warmer or colder than usual, fading to a third in 4.5 days.
    /// </summary>
    /// <param name="known">This season's days, from the same day of the year on; at least as long as its run-up.</param>
    /// <param name="climate">The usual year.</param>
    /// <param name="latitudeDeg">Degrees north.</param>
    public SeasonWindow After(SeasonWindow known, PlaceClimate climate, double latitudeDeg)
    {
        ArgumentNullException.ThrowIfNull(known);
        if (known.RunUpDays != RunUpDays || known.Days.Length > Days.Length)
        {
            throw new ArgumentException($"a window of the same run-up and at most {Days.Length} days is needed", nameof(known));
        }

        var days = new WeatherDay[Days.Length];
        known.Days.CopyTo(days, 0);
        var count = known.Days.Length;
        var warmer = count == 0 ? 0.0 : Anomaly(known, climate, latitudeDeg);
        var first = known.Days.Length > 0 ? known.Days[0].Date : Days[0].Date;
        for (var d = count; d < days.Length; d++)
        {
            days[d] = Shifted(Days[d], first.AddDays(d), warmer * Math.Exp((count - 1 - d) / FadeDays));
        }

        return this with { Days = days };
    }

    /// <summary>How much warmer than the usual year the last known days were, degC.</summary>
    private static double Anomaly(SeasonWindow known, PlaceClimate climate, double latitudeDeg)
    {
        var last = known.Days.AsSpan(Math.Max(0, known.Days.Length - AnomalyDays));
        var sum = 0.0;
        foreach (var day in last)
        {
            sum += day.AverageC - climate.SmoothedC(SeasonAngle.Rad(day.Date, latitudeDeg), 0.0);
        }

        return sum / last.Length;
    }

    private static WeatherDay Shifted(WeatherDay day, DateOnly date, double warmerC) => day with
    {
        Date = date,
        TmaxC = day.TmaxC + warmerC,
        TminC = day.TminC + warmerC,
        MeanC = day.MeanC + warmerC,
    };
}
